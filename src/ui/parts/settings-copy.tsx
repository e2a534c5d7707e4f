import { useState } from 'preact/hooks';
import { type OpenedJournal, openJournal } from '../../actions/join-journal.ts';
import { saveJournal } from '../../actions/save-journal.ts';
import { sayCount } from '../../domain/measure-words.ts';
import { isProblem, type Problem } from '../../domain/problem.ts';
import { useDeps } from '../studio.tsx';
import { Button } from './button.tsx';
import { JoinSheet } from './join-sheet.tsx';
import { ProblemNote } from './note.tsx';
import { say } from './toast.tsx';

/** A copy of the journal off this device, and a saved one joined into it. */
export function CopyCard({ onSaved }: { onSaved: () => void }) {
  const deps = useDeps();
  const [busy, setBusy] = useState<'saving' | 'reading' | undefined>();
  const [problem, setProblem] = useState<Problem | undefined>();
  const [opened, setOpened] = useState<OpenedJournal | undefined>();

  async function save(): Promise<void> {
    setBusy('saving');
    const outcome = await saveJournal(deps);
    setBusy(undefined);
    setProblem(isProblem(outcome) ? outcome : undefined);
    if (isProblem(outcome)) return;
    say(outcome === undefined ? 'No copy was saved.' : `A journal of ${sayCount(outcome, 'entry', 'entries')} was handed over.`);
    onSaved();
  }

  async function read(file: File): Promise<void> {
    setBusy('reading');
    const outcome = await openJournal(deps, file);
    setBusy(undefined);
    setProblem(isProblem(outcome) ? outcome : undefined);
    if (!isProblem(outcome)) setOpened(outcome);
  }

  return (
    <section class="card">
      <h2>A copy elsewhere</h2>
      <p>
        The journal holds every entry, as text. Photographs are not in it yet. Keep a copy off this device: a lost phone takes its shelves
        with it.
      </p>
      {problem && <ProblemNote problem={problem} />}
      <div class="button-row" aria-busy={busy !== undefined}>
        <Button disabled={busy !== undefined} onClick={() => void save()}>
          {busy === 'saving' ? 'Saving…' : 'Save the journal'}
        </Button>
        <label class="button button-plain file-button">
          {busy === 'reading' ? 'Reading the journal…' : 'Join a saved journal'}
          <input
            type="file"
            accept=".txt,.jsonl,text/plain"
            disabled={busy !== undefined}
            onChange={(event) => {
              const file = event.currentTarget.files?.[0];
              event.currentTarget.value = '';
              if (file) void read(file);
            }}
          />
        </label>
      </div>
      {opened && <JoinSheet journal={opened} onClose={() => setOpened(undefined)} />}
    </section>
  );
}
