import type { Entry } from '../domain/entry.ts';
import type { Problem } from '../domain/problem.ts';
import { useDraft } from './use-draft.ts';

type Typed = Readonly<Record<string, string>>;

/** Figures of the studio typed into a table and not yet written down, by cell; `kept` clears them once they are, and says so. */
export function useTypedFigures(draft: string): {
  readonly typed: Typed;
  readonly type: (cell: string, text: string) => void;
  readonly kept: (entries: readonly Entry[]) => string;
  /** What was kept of them cannot be read. */
  readonly lost: Problem | undefined;
} {
  const { values, set, clear, problem: lost } = useDraft<{ typed: Typed }>(draft, () => ({ typed: {} }));
  const { typed } = values;
  return {
    typed,
    lost,
    type: (cell, text) => set({ typed: { ...typed, [cell]: text } }),
    kept: (entries) => {
      set({ typed: {} });
      clear();
      return entries.length > 0 ? 'The studio’s figures are written down.' : 'These are the studio’s figures already.';
    },
  };
}
