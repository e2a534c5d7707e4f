import { useState } from 'preact/hooks';
import { type ListFile, openList, saveSample } from '../../actions/list-files.ts';
import type { Delimiter } from '../../domain/csv/delimiter.ts';
import { isProblem, type Problem } from '../../domain/problem.ts';
import { useDraft } from '../use-draft.ts';
import { Button } from './button.tsx';
import { Field } from './field.tsx';
import { ProblemNote } from './note.tsx';

/** A list to bring in: from a file, or pasted. */
export interface ChosenList {
  readonly text: string;
  readonly name?: string;
  readonly encoding?: ListFile['encoding'];
  readonly delimiter?: Delimiter;
}

/** Where the list comes from. */
export function ImportSource({
  onList,
  onProblem,
}: {
  onList: (list: ChosenList) => void;
  onProblem: (problem: Problem | undefined) => void;
}) {
  const { values, set, clear, problem } = useDraft('bring-in-pasted', () => ({ pasted: '' }));
  const [isBusy, setBusy] = useState(false);
  const open = async (file: File | undefined) => {
    if (!file) return;
    setBusy(true);
    const opened = await openList(file);
    setBusy(false);
    onProblem(isProblem(opened) ? opened : undefined);
    if (!isProblem(opened)) onList(opened);
  };
  return (
    <>
      {problem && <ProblemNote problem={problem} />}
      <p>A list of moulds, masters, designs, waxes or places, one to a line. You see what each row becomes before anything is kept.</p>
      <section class="card">
        <h2>A file</h2>
        <label class="button button-main import-file">
          {isBusy ? 'Reading…' : 'Choose a CSV file'}
          <input
            type="file"
            class="unseen"
            accept=".csv,.tsv,.tab,.txt,text/csv,text/plain,text/tab-separated-values,text/comma-separated-values"
            disabled={isBusy}
            onChange={(event) => {
              const input = event.currentTarget;
              void open(input.files?.[0]);
              // So that the same file can be chosen again after it was mended.
              input.value = '';
            }}
          />
        </label>
        <p class="field-hint">In a spreadsheet: “Save as” or “Export”, then CSV.</p>
      </section>
      <section class="card">
        <h2>Or paste it</h2>
        <Field
          label="Cells copied from a spreadsheet, headings included"
          value={values.pasted}
          onInput={(pasted) => set({ pasted })}
          lines={6}
        />
        <Button
          disabled={values.pasted.trim() === ''}
          onClick={() => {
            onList({ text: values.pasted });
            clear();
          }}
        >
          Use what I pasted
        </Button>
      </section>
      <section class="card">
        <h2>How one may look</h2>
        <p>A short list of an invented studio. Two of its lines have slips in them, to show what happens then.</p>
        <div class="button-row">
          <Button onClick={() => void saveSample()}>Download the sample list</Button>
        </div>
      </section>
    </>
  );
}
