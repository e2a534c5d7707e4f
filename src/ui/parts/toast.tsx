import { signal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { withdraw } from '../../actions/withdraw.ts';
import type { Entry } from '../../domain/entry.ts';
import { isProblem, type Problem } from '../../domain/problem.ts';
import { useDeps } from '../studio.tsx';
import { Icon } from './icon.tsx';

interface Toast {
  readonly says: string;
  readonly undo?: Entry;
  readonly isProblem?: boolean;
}

const toast = signal<Toast | null>(null);
/** The message whose Undo has been tapped: a second tap would take it back twice. */
const taking = signal<Toast | null>(null);
/** Long enough to read and reach for, and there is always *Undo* in the history afterwards. */
const SHOWN_MS = 9000;

/** Says what was done, with Undo; or what went wrong and what was kept. */
export function say(says: string, done?: readonly Entry[]): void {
  const first = done?.[0];
  toast.value = first ? { says, undo: first } : { says };
}

export function sayProblem(problem: Problem): void {
  toast.value = { says: `${problem.says} ${problem.kept}`.trim(), isProblem: true };
}

/** Shows the outcome of an action; true when it was done. */
export function sayOutcome(outcome: readonly Entry[] | Problem, says: string): outcome is readonly Entry[] {
  if (isProblem(outcome)) sayProblem(outcome);
  else say(says, outcome);
  return !isProblem(outcome);
}

export function ToastPart() {
  const deps = useDeps();
  const current = toast.value;
  useEffect(() => {
    if (!current || current.isProblem) return undefined;
    const timer = setTimeout(() => {
      if (toast.value === current) toast.value = null;
    }, SHOWN_MS);
    return () => clearTimeout(timer);
  }, [current]);
  const undo = current?.undo;
  async function takeBack(shown: Toast, entry: Entry): Promise<void> {
    if (taking.value === shown) return;
    taking.value = shown;
    const outcome = await withdraw(deps, entry.id);
    if (isProblem(outcome)) sayProblem(outcome);
    else say(entry.kind === 'withdrawn' ? 'Done again.' : 'Taken back.', outcome);
  }
  return (
    <div class="toast-space" role="status" aria-live="polite">
      {current && (
        <div class={current.isProblem ? 'toast toast-problem' : 'toast'}>
          <p>{current.says}</p>
          <div class="toast-buttons">
            {undo && (
              <button
                type="button"
                class="button button-quiet toast-undo"
                disabled={taking.value === current}
                onClick={() => void takeBack(current, undo)}
              >
                {undo.kind === 'withdrawn' ? 'Do it again' : 'Undo'}
              </button>
            )}
            <button
              type="button"
              class="icon-button"
              aria-label="Close"
              onClick={() => {
                toast.value = null;
              }}
            >
              <Icon name="close" />
            </button>
          </div>
        </div>
      )}
    </div>
  );
}
