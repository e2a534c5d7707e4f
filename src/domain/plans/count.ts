import type { ThingId } from '../brand.ts';
import type { Desk } from '../desk.ts';
import type { Entry } from '../entry.ts';
import { formProblem } from '../form-problem.ts';
import { type Problem, problem } from '../problem.ts';
import { type Shelf, thingOf } from '../shelf.ts';
import { allWritten } from './written.ts';

export interface Count {
  readonly of: ThingId;
  readonly pieces: number;
  readonly note?: string | undefined;
}

/** What was counted in a pile of waxes or castings, whatever was reckoned. */
export function planCount(shelf: Shelf, desk: Desk, { of, pieces, note }: Count): readonly Entry[] | Problem {
  const pile = thingOf(shelf, of);
  if (pile?.noun !== 'injectedWax' && pile?.noun !== 'casting') {
    return problem('Only injected waxes and castings are counted.', 'Nothing has been written down.');
  }
  if (!Number.isInteger(pieces) || pieces < 0) return formProblem({ pieces: 'A count is a whole number, none or more.' });
  return allWritten([{ ...desk.entry(), kind: 'counted', of, pieces, note: note?.trim() || undefined }]);
}
