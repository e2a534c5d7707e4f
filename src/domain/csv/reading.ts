import type { Day } from '../brand.ts';
import type { Problem } from '../problem.ts';

/** What a whole list tells about how its cells are to be read. */
export interface Ways {
  readonly today: Day;
  /** The mark before the decimals, where the list shows it. */
  readonly decimal?: ',' | '.' | undefined;
  /** Order in dates written with numbers only, where the list shows it. */
  readonly dayOrder?: 'day first' | 'month first' | undefined;
  /** Unit named in the column's heading. */
  readonly unit?: string | undefined;
}

/**
 * A cell read. Without `value` its words could not be placed, and stay with the thing as a note. A Problem is something that
 * cannot be: a day that does not exist, a count below nothing.
 */
export type Reading = { readonly value?: unknown; readonly doubt?: string } | Problem;
export type ReadCell = (cell: string, ways: Ways) => Reading;

export function shownCell(cell: string): string {
  const trimmed = cell.trim();
  return `“${trimmed.length > 40 ? `${trimmed.slice(0, 40)}…` : trimmed}”`;
}

const NOTHING = new Set('-|--|–|—|?|??|.|/|n/a|na|n.a.|none|nil|unknown|not known|#n/a|null|'.split('|'));

/** Whether a cell says that there is nothing to say. */
export function isNothing(cell: string): boolean {
  return NOTHING.has(cell.trim().toLowerCase());
}
