import { computed, signal } from '@preact/signals';
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

let goes: ReturnType<typeof setTimeout> | undefined;

/** Its time is set going here and not by an effect: that would ask for a frame of its own while the message waits for its. */
function show(next: Toast | null): void {
  if (goes !== undefined) clearTimeout(goes);
  goes = next && !next.isProblem ? setTimeout(show, SHOWN_MS, null) : undefined;
  toast.value = next;
}

/** Says what was done, with Undo; or what went wrong and what was kept. */
export function say(says: string, done?: readonly Entry[]): void {
  const first = done?.[0];
  show(first ? { says, undo: first } : { says });
}

export function sayProblem(problem: Problem): void {
  show({ says: `${problem.says} ${problem.kept}`.trim(), isProblem: true });
}

/** Shows the outcome of an action; true when it was done. */
export function sayOutcome(outcome: readonly Entry[] | Problem, says: string): outcome is readonly Entry[] {
  if (isProblem(outcome)) sayProblem(outcome);
  else say(says, outcome);
  return !isProblem(outcome);
}

function classOf(shown: Toast | null): string {
  if (!shown) return 'toast-place';
  return shown.isProblem ? 'toast-place toast toast-problem' : 'toast-place toast';
}

// Each bound to its own part of what is drawn: an outcome changes words where they stand, and no component is drawn again for it.
const look = computed(() => classOf(toast.value));
/** Never empty: a text that changes is sooner on the glass than one that comes. */
const says = computed(() => toast.value?.says ?? '\u00a0');
const undoSays = computed(() => (toast.value?.undo?.kind === 'withdrawn' ? 'Do it again' : 'Undo'));
/** Without a message its place is kept as for one with Undo, as most are. */
const hasNoUndo = computed(() => toast.value !== null && !toast.value.undo);
const isTaking = computed(() => toast.value !== null && taking.value === toast.value);

/** The message's place is there before any message, unseen: that is sooner on the glass than one made when it is needed. */
export function ToastPart() {
  const deps = useDeps();
  async function takeBack(): Promise<void> {
    const shown = toast.value;
    if (!shown?.undo || taking.value === shown) return;
    taking.value = shown;
    const outcome = await withdraw(deps, shown.undo.id);
    if (isProblem(outcome)) sayProblem(outcome);
    else say(shown.undo.kind === 'withdrawn' ? 'Done again.' : 'Taken back.', outcome);
  }
  return (
    <div class="toast-space" role="status" aria-live="polite">
      <div class={look}>
        <p>{says}</p>
        <div class="toast-buttons">
          <button
            type="button"
            class="button button-quiet toast-undo"
            hidden={hasNoUndo}
            disabled={isTaking}
            onClick={() => void takeBack()}
          >
            {undoSays}
          </button>
          <button type="button" class="icon-button" aria-label="Close" onClick={() => show(null)}>
            <Icon name="close" />
          </button>
        </div>
      </div>
    </div>
  );
}
