import { useEffect, useRef, useState } from 'preact/hooks';
import type { Delimiter } from '../../domain/csv/delimiter.ts';
import { guessColumns, guessTarget } from '../../domain/csv/guess.ts';
import type { ImportPlan, Reading } from '../../domain/csv/plan.ts';
import { TARGETS } from '../../domain/csv/targets.ts';
import { sayNumber } from '../../domain/measure-words.ts';
import { isProblem } from '../../domain/problem.ts';
import { headOfList, type ListHead, type Progress, previewImport, type RunningJob } from '../../views/import-preview.ts';
import { Button } from '../parts/button.tsx';
import { ImportColumns } from '../parts/import-columns.tsx';
import { type Choices, ImportPreview } from '../parts/import-preview.tsx';
import { type ChosenList, ImportSource } from '../parts/import-source.tsx';
import { ProblemNote } from '../parts/note.tsx';
import { Screen } from '../parts/screen.tsx';
import { useDeps } from '../studio.tsx';
import '../styles/bring-in.css';

const FORM = 'bring-in';

interface Draft {
  readonly list: ChosenList;
  readonly reading?: Reading;
  readonly choices?: Choices;
}

/** A list from a spreadsheet: choose it, say what its columns are, look at what each row becomes, and only then bring it in. */
export function BringInScreen() {
  const deps = useDeps();
  const [found] = useState(() => deps.drafts.read(FORM));
  const [draft, setDraft] = useState(isProblem(found) ? undefined : (found?.values as Draft | undefined));
  const [head, setHead] = useState<ListHead>();
  const [plan, setPlan] = useState<ImportPlan>();
  const [progress, setProgress] = useState<Progress>();
  const [problem, setProblem] = useState(isProblem(found) ? found : undefined);
  const job = useRef<RunningJob<unknown> | undefined>(undefined);
  useEffect(() => () => job.current?.cancel(), []);

  const list = draft?.list;
  const change = (next: Draft | undefined) => {
    setDraft(next);
    if (next) deps.drafts.keep(FORM, next);
    else deps.drafts.clear(FORM);
  };
  const startAgain = () => {
    job.current?.cancel();
    change(undefined);
    setHead(undefined);
    setPlan(undefined);
    setProgress(undefined);
    setProblem(undefined);
  };

  useEffect(() => {
    if (!list) return;
    const running = headOfList(list);
    job.current = running;
    void running.answer.then((answer) => {
      if (answer === undefined) return;
      if (isProblem(answer)) {
        startAgain();
        setProblem(answer);
        return;
      }
      setHead(answer);
      const headings = answer.rows[0]?.cells ?? [];
      const isFitting = draft?.reading?.mapping.length === headings.length;
      const target = guessTarget(headings, TARGETS);
      if (!isFitting) change({ list, reading: { target, mapping: guessColumns(headings, target), hasHeadings: true } });
    });
  }, [list?.text, list?.delimiter]);

  const look = async () => {
    if (!list || !draft?.reading) return;
    setProblem(undefined);
    setPlan(undefined);
    setProgress({ done: 0, total: head?.total ?? 0 });
    const running = previewImport(deps.keeper.shelf(), list, draft.reading, deps.today(), setProgress);
    job.current = running;
    const answer = await running.answer;
    setProgress(undefined);
    if (isProblem(answer)) setProblem(answer);
    else if (answer) setPlan(answer);
  };

  if (plan && !progress) {
    return (
      <ImportPreview
        plan={plan}
        problem={problem}
        choices={draft?.choices}
        onChoices={(choices) => draft && change({ ...draft, choices })}
        onColumns={() => setPlan(undefined)}
        onKept={() => deps.drafts.clear(FORM)}
        onOld={async (why) => {
          await look();
          setProblem(why);
        }}
        onAgain={startAgain}
      />
    );
  }
  const isReady = head !== undefined && draft?.reading !== undefined && !progress;
  return (
    <Screen
      title="Bring in my list"
      actions={
        isReady ? (
          <>
            <Button onClick={startAgain}>Another list</Button>
            <Button look="main" disabled={!draft.reading?.mapping.some((field) => field !== null)} onClick={() => void look()}>
              See what each row becomes
            </Button>
          </>
        ) : undefined
      }
    >
      {problem && <ProblemNote problem={problem} />}
      {!list && <ImportSource onList={(chosen) => change({ list: chosen })} onProblem={setProblem} />}
      {progress && <Working progress={progress} onCancel={() => job.current?.cancel()} />}
      {list && !head && <p class="wait">Reading the list…</p>}
      {isReady && draft.reading && (
        <ImportColumns
          list={draft.list}
          head={head}
          reading={draft.reading}
          onReading={(reading) => change({ list: draft.list, reading })}
          onDelimiter={(delimiter: Delimiter) => {
            setHead(undefined);
            change({ list: { ...draft.list, delimiter } });
          }}
        />
      )}
    </Screen>
  );
}

function Working({ progress: { done, total }, onCancel }: { progress: Progress; onCancel: () => void }) {
  return (
    <section class="card" aria-live="polite">
      <label class="import-progress">
        <span>
          Looking at row {sayNumber(done)} of {sayNumber(total)}
        </span>
        <progress value={done} max={Math.max(total, 1)} />
      </label>
      <p class="field-hint">Nothing is kept yet, and Stop leaves everything as it is.</p>
      <Button onClick={onCancel}>Stop</Button>
    </section>
  );
}
