import { useRef, useState } from 'preact/hooks';
import { type BackupStep, handOver, type MadeBackup, makeBackup } from '../../actions/make-backup.ts';
import { saveJournal } from '../../actions/save-journal.ts';
import { sayCount, sayNumber } from '../../domain/measure-words.ts';
import { isProblem, type Problem } from '../../domain/problem.ts';
import { sayEntries } from '../backup-words.ts';
import { useDeps } from '../studio.tsx';
import { LastBackupFacts } from './backup-facts.tsx';
import { Button } from './button.tsx';
import { ProblemNote } from './note.tsx';
import { say } from './toast.tsx';
import { Working } from './working.tsx';

const DOING: Readonly<Record<BackupStep['doing'], string>> = { writing: 'Writing the backup…', checking: 'Reading it back to make sure…' };

/** Makes a backup of the whole studio and hands it over. */
export function MakeBackup() {
  const deps = useDeps();
  const [step, setStep] = useState<BackupStep | undefined>();
  const [made, setMade] = useState<MadeBackup | undefined>();
  const [problem, setProblem] = useState<Problem | undefined>();
  const [noted, setNoted] = useState(0);
  const isOff = useRef(false);

  async function make(): Promise<void> {
    isOff.current = false;
    setProblem(undefined);
    setMade(undefined);
    const outcome = await makeBackup(deps, setStep, () => isOff.current);
    setStep(undefined);
    if (outcome === undefined) say('No backup was made.');
    else if (isProblem(outcome)) setProblem(outcome);
    else if (outcome.isPlaced || navigator.userActivation?.isActive !== false) await over(outcome);
    // The share sheet opens only right after a tap, and the last one is too long ago.
    else setMade(outcome);
  }

  async function over(backup: MadeBackup): Promise<void> {
    if (!(await handOver(deps, backup))) {
      setMade(backup);
      return;
    }
    setMade(undefined);
    const holds = `${sayEntries(backup.entries)} and ${sayCount(backup.pictures, 'picture')}, ${sayNumber(backup.file.size / 1e6, 1)} MB`;
    const absent =
      backup.absent > 0 ? ` ${sayCount(backup.absent, 'picture')} that is not on this device, or damaged, could not be put in.` : '';
    say(`The backup was made and read back: ${holds}.${absent}`);
    setNoted(noted + 1);
  }

  async function saveText(): Promise<void> {
    const outcome = await saveJournal(deps);
    setProblem(isProblem(outcome) ? outcome : undefined);
    if (isProblem(outcome)) return;
    say(outcome === undefined ? 'No copy was saved.' : `A journal of ${sayEntries(outcome)} was handed over.`);
    setNoted(noted + 1);
  }

  return (
    <section class="card">
      <h2>Make a backup</h2>
      <p>
        One file with every entry and every picture. Keep it somewhere else than on this device: a phone that falls into the pickle takes
        its shelves with it.
      </p>
      <LastBackupFacts key={noted} />
      {problem && <ProblemNote problem={problem} />}
      {step && (
        <Working
          says={DOING[step.doing]}
          done={step.done}
          total={step.total}
          onStop={
            step.doing === 'writing'
              ? () => {
                  isOff.current = true;
                }
              : undefined
          }
        />
      )}
      {made && <p role="status">The backup is ready: {sayNumber(made.file.size / 1e6, 1)} MB. It is not kept anywhere yet.</p>}
      <div class="button-row" aria-busy={step !== undefined}>
        {made ? (
          <Button look="main" onClick={() => void over(made)}>
            Send or save it
          </Button>
        ) : (
          <Button look="main" disabled={step !== undefined} onClick={() => void make()}>
            Make a backup
          </Button>
        )}
        <Button disabled={step !== undefined} onClick={() => void saveText()}>
          Save the journal as text
        </Button>
      </div>
      <p class="field-hint">As text there are no pictures in it, but every program can read it, and phones’ share sheets take it.</p>
    </section>
  );
}
