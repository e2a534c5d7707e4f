import { useState } from 'preact/hooks';
import type { Drawing } from '../../domain/drawing/drawing.ts';
import { did, redone, type Steps, undone } from '../../domain/drawing/history.ts';
import { isProblem, type Problem } from '../../domain/problem.ts';

export type Step = (drawing: Drawing) => Drawing | Problem;

/** The drawing on the screen: what is chosen in it, and every way to change it. */
export interface Easel {
  readonly drawing: Drawing;
  /** Keys of the chosen fronts. */
  readonly picked: readonly string[];
  /** Where the arrow keys are. */
  readonly at: string;
  readonly isSeveral: boolean;
  /** The last thing that was done, or what stands in its way. */
  readonly told: { readonly says: string; readonly isWrong: boolean };
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  /** Chooses one front, or adds it to and takes it from the chosen ones. */
  pick(key: string, isAdding?: boolean): void;
  /** Chooses these, the arrow keys being at the last of them. */
  pickMore(keys: readonly string[]): void;
  pickAll(): void;
  pickNone(): void;
  setSeveral(isSeveral: boolean): void;
  /** Does it, as one step that can be undone; false when it was refused. */
  take(step: Step, says: string): boolean;
  undo(): void;
  redo(): void;
}

export function useDrawing(steps: Steps, keep: (steps: Steps) => void): Easel {
  const drawing = steps.now;
  const [chosen, setChosen] = useState<readonly string[]>([]);
  const [cursor, setCursor] = useState('');
  const [isSeveral, setSeveral] = useState(false);
  const [told, tell] = useState({ says: '', isWrong: false });
  const picked = chosen.filter((key) => drawing.fronts.some((front) => front.key === key));
  const at = drawing.fronts.some(({ key }) => key === cursor) ? cursor : (picked[0] ?? drawing.fronts[0]?.key ?? '');

  function choose(keys: readonly string[]): void {
    setChosen(keys);
    tell({ says: '', isWrong: false });
  }

  function go(next: Steps, says: string): void {
    keep(next);
    tell({ says, isWrong: false });
  }

  return {
    drawing,
    picked,
    at,
    isSeveral,
    told,
    canUndo: steps.past.length > 0,
    canRedo: steps.future.length > 0,
    pick(key, isAdding = isSeveral) {
      setCursor(key);
      choose(isAdding ? (picked.includes(key) ? picked.filter((each) => each !== key) : [...picked, key]) : [key]);
    },
    pickMore(keys) {
      setCursor(keys.at(-1) ?? at);
      choose([...new Set(keys)]);
    },
    pickAll: () => choose(drawing.fronts.map(({ key }) => key)),
    pickNone: () => choose([]),
    setSeveral,
    take(step, says) {
      const next = step(drawing);
      if (isProblem(next)) {
        tell({ says: next.says, isWrong: true });
        return false;
      }
      // New fronts are chosen together with what they were made from, so that the next cut or word is for all of them.
      const added = next.fronts.filter(({ key }) => !drawing.fronts.some((front) => front.key === key)).map(({ key }) => key);
      setChosen([...picked, ...added]);
      go(did(steps, next), says);
      return true;
    },
    undo: () => steps.past.length > 0 && go(undone(steps), 'Undone.'),
    redo: () => steps.future.length > 0 && go(redone(steps), 'Done again.'),
  };
}
