import { useRef, useState } from 'preact/hooks';
import type { Entry } from '../domain/entry.ts';
import { stillWrong } from '../domain/form-problem.ts';
import { isProblem, type Problem } from '../domain/problem.ts';
import { say } from './parts/toast.tsx';
import { refusal } from './refused.ts';

type Outcome = readonly Entry[] | Problem;

export interface Save {
  /** What stands in the way, to be shown with the form: of what was refused, that which was not changed since. */
  readonly problem: Problem | undefined;
  /** All that was refused last. */
  readonly refused: Problem | undefined;
  readonly isBusy: boolean;
  /** Runs an action; what stands in its way is kept for the form, and it can be run again as confirmed. */
  readonly run: (
    action: (confirmed: boolean) => Promise<Outcome>,
    done: (entries: readonly Entry[]) => string | undefined,
  ) => Promise<void>;
  /** Does it all the same, after a warning. */
  readonly confirm: () => void;
  readonly show: (problem: Problem | undefined) => void;
}

const SLOW_MS = 150;

const NOTHING = {};

/**
 * Saving from a form: one at a time, with warnings to confirm, and a toast with Undo once it is written. `held` is what its fields hold, by the
 * names that problems have for them.
 */
export function useSave(held: object = NOTHING): Save {
  const [last, setLast] = useState<{ readonly refused: Problem; readonly held: object } | undefined>();
  const refuse = (refused: Problem | undefined, of: object) => setLast(refused && { refused, held: of });
  const [isBusy, setBusy] = useState(false);
  const again = useRef<() => void>(() => undefined);
  const running = useRef(false);

  async function attempt(
    action: (confirmed: boolean) => Promise<Outcome>,
    done: (entries: readonly Entry[]) => string | undefined,
    confirmed: boolean,
  ) {
    if (running.current) return;
    const refused = refusal();
    if (refused) return refuse(refused, held);
    running.current = true;
    // Said only when it takes long: drawing the form again at once would hold up the saving.
    const slow = setTimeout(() => setBusy(true), SLOW_MS);
    again.current = () => void attempt(action, done, true);
    try {
      const outcome = await action(confirmed);
      if (isProblem(outcome)) return refuse(outcome, held);
      setLast(undefined);
      const says = done(outcome);
      if (says !== undefined) say(says, outcome);
    } finally {
      running.current = false;
      clearTimeout(slow);
      setBusy(false);
    }
  }

  return {
    problem: last && stillWrong(last.refused, last.held, held),
    refused: last?.refused,
    isBusy,
    run: (action, done) => attempt(action, done, false),
    confirm: () => again.current(),
    show: (problem) => refuse(problem, held),
  };
}
