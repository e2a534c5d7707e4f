import type { Day, Grams, WaxId } from '../brand.ts';
import type { Desk } from '../desk.ts';
import type { Entry } from '../entry.ts';
import { formProblem } from '../form-problem.ts';
import type { Problem } from '../problem.ts';
import type { Shelf } from '../shelf.ts';
import { noSuchWax, wrongGrams } from './wax-checks.ts';
import { allWritten, notAhead } from './written.ts';

export interface ReceiveWax {
  readonly wax: WaxId;
  readonly grams: number | undefined;
  readonly lot?: string | undefined;
  readonly note?: string | undefined;
  readonly on?: Day | undefined;
}

/** Wax that came in, added to what is in the tub. */
export function planReceiveWax(shelf: Shelf, desk: Desk, { wax, grams, lot, note, on }: ReceiveWax): readonly Entry[] | Problem {
  if (!shelf.things.wax.has(wax)) return noSuchWax;
  const wrong = wrongGrams(grams) ?? notAhead(on, desk.today);
  if (wrong) return wrong;
  if (grams === 0) return formProblem({ grams: 'Say how much came in.' });
  const said = { lot: lot?.trim() || undefined, note: note?.trim() || undefined };
  return allWritten([{ ...desk.entry(), ...(on ? { on } : {}), kind: 'received', wax, grams: grams as Grams, ...said }]);
}
