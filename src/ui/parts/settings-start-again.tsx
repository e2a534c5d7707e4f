import { useState } from 'preact/hooks';
import { isBackedUpToday, startAgain } from '../../actions/start-again.ts';
import type { Problem } from '../../domain/problem.ts';
import { go } from '../router.ts';
import { useDeps } from '../studio.tsx';
import { Button, LinkButton } from './button.tsx';
import { Field } from './field.tsx';
import { ProblemNote } from './note.tsx';
import { Sheet } from './sheet.tsx';
import { say } from './toast.tsx';

/** What has to be typed where no backup was made today. */
const WORDS = 'start again';

/** Empties the studio, after a backup or in so many words. */
export function StartAgainCard() {
  const [isOpen, setOpen] = useState(false);
  return (
    <section class="card">
      <h2>Start again</h2>
      <p>Empties the shelves on this device, for instance after trying things out.</p>
      <Button look="danger" onClick={() => setOpen(true)}>
        Start again…
      </Button>
      {isOpen && <StartAgainSheet onClose={() => setOpen(false)} />}
    </section>
  );
}

function StartAgainSheet({ onClose }: { onClose: () => void }) {
  const deps = useDeps();
  const isSafe = isBackedUpToday(deps);
  const [typed, setTyped] = useState('');
  const [isBusy, setBusy] = useState(false);
  const [problem, setProblem] = useState<Problem | undefined>();
  const isMeant = isSafe || typed.trim().toLowerCase() === WORDS;

  async function empty(): Promise<void> {
    setBusy(true);
    const outcome = await startAgain(deps);
    setBusy(false);
    if (outcome) return setProblem(outcome);
    onClose();
    go('#/');
    say('The shelves are empty. What was there is kept aside: bring it back under Backup.');
  }

  return (
    <Sheet title="Start again" onClose={onClose}>
      <p>
        Every thing and every entry goes from the shelves. What was there is kept aside on this device, until you let it go under Backup.
      </p>
      {isSafe ? (
        <p>A backup was made today.</p>
      ) : (
        <>
          <p>No backup was made today. Make one first, or type the words below.</p>
          <LinkButton href="#/backup">Make a backup</LinkButton>
          <Field label={`Type “${WORDS}”`} value={typed} onInput={setTyped} />
        </>
      )}
      {problem && <ProblemNote problem={problem} />}
      <div class="button-row">
        <Button look="danger" disabled={!isMeant || isBusy} onClick={() => void empty()}>
          {isBusy ? 'Emptying…' : 'Empty the shelves'}
        </Button>
        <Button onClick={onClose}>Leave it</Button>
      </div>
    </Sheet>
  );
}
