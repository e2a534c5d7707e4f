import { useState } from 'preact/hooks';
import { isProblem } from '../../domain/problem.ts';
import { useDeps } from '../studio.tsx';
import { Button } from './button.tsx';
import { say, sayProblem } from './toast.tsx';

/** Sums the whole journal afresh. */
export function RepairCard() {
  const { keeper } = useDeps();
  const [isBusy, setBusy] = useState(false);

  async function repair(): Promise<void> {
    setBusy(true);
    const outcome = await keeper.refold();
    setBusy(false);
    if (isProblem(outcome)) sayProblem(outcome);
    else say('The journal is added up afresh.');
  }

  return (
    <section class="card">
      <h2>Repair</h2>
      <p>Adds the whole journal up again, in case a count on the shelf looks wrong. Nothing is lost by it.</p>
      <Button disabled={isBusy} onClick={() => void repair()}>
        {isBusy ? 'Adding up…' : 'Add up the journal afresh'}
      </Button>
    </section>
  );
}
