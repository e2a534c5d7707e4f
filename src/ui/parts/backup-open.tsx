import { useEffect, useRef, useState } from 'preact/hooks';
import { takeLaunchedFile } from '../../actions/launched-file.ts';
import { type OpenedBackup, type Opening, openBackup, type Progress } from '../../actions/open-backup.ts';
import { isProblem, type Problem } from '../../domain/problem.ts';
import { useDeps } from '../studio.tsx';
import { ProblemNote } from './note.tsx';
import { RestoreSheet } from './restore-sheet.tsx';
import { Working } from './working.tsx';

/** Chooses a backup, looks through it, and shows what it would bring. */
export function OpenBackup({ onRestored }: { onRestored: () => void }) {
  const deps = useDeps();
  const [progress, setProgress] = useState<Progress | undefined>();
  const [problem, setProblem] = useState<Problem | undefined>();
  const [opened, setOpened] = useState<OpenedBackup | undefined>();
  const opening = useRef<Opening | undefined>(undefined);
  useEffect(() => () => opening.current?.cancel(), []);

  async function read(file: File): Promise<void> {
    setProblem(undefined);
    setProgress({ done: 0, total: 1 });
    opening.current = openBackup(deps, file, setProgress);
    const outcome = await opening.current.answer;
    opening.current = undefined;
    setProgress(undefined);
    setProblem(isProblem(outcome) ? outcome : undefined);
    if (outcome && !isProblem(outcome)) setOpened(outcome);
  }

  // The app was opened with it.
  useEffect(() => {
    const file = takeLaunchedFile();
    if (file) void read(file);
  }, []);

  return (
    <section class="card">
      <h2>Open a backup</h2>
      <p>A backup, or a journal saved as text. You see what is in it first; nothing is changed until you say so.</p>
      {problem && <ProblemNote problem={problem} />}
      {progress && (
        <Working
          says="Reading it, and checking every part…"
          done={progress.done}
          total={progress.total}
          onStop={() => opening.current?.cancel()}
        />
      )}
      <div class="button-row" aria-busy={progress !== undefined}>
        <label class="button button-plain file-button">
          {progress ? 'Reading…' : 'Choose a file'}
          <input
            type="file"
            accept=".zip,.txt,.jsonl,application/zip,text/plain"
            disabled={progress !== undefined}
            onChange={(event) => {
              const file = event.currentTarget.files?.[0];
              event.currentTarget.value = '';
              if (file) void read(file);
            }}
          />
        </label>
      </div>
      {opened && (
        <RestoreSheet
          opened={opened}
          onClose={() => setOpened(undefined)}
          onDone={() => {
            setOpened(undefined);
            onRestored();
          }}
        />
      )}
    </section>
  );
}
