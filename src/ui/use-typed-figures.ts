import type { Entry } from '../domain/entry.ts';
import { useDraft } from './use-draft.ts';

type Typed = Readonly<Record<string, string>>;

/** Figures of the studio typed into a table and not yet written down, by cell; `kept` clears them once they are, and says so. */
export function useTypedFigures(draft: string): {
  readonly typed: Typed;
  readonly type: (cell: string, text: string) => void;
  readonly kept: (entries: readonly Entry[]) => string;
} {
  const { values, set, clear } = useDraft<{ typed: Typed }>(draft, () => ({ typed: {} }));
  const { typed } = values;
  return {
    typed,
    type: (cell, text) => set({ typed: { ...typed, [cell]: text } }),
    kept: (entries) => {
      set({ typed: {} });
      clear();
      return entries.length > 0 ? 'The studio’s figures are written down.' : 'These are the studio’s figures already.';
    },
  };
}
