import type { Day, ThingId } from '../brand.ts';
import { addDays } from '../day.ts';
import type { Desk } from '../desk.ts';
import { type Entry, FLAG_KINDS, type FlagKind } from '../entry.ts';
import { formProblem } from '../form-problem.ts';
import { type Problem, problem } from '../problem.ts';
import { type Shelf, thingOf } from '../shelf.ts';
import { allWritten } from './written.ts';

export interface SetAside {
  readonly of: ThingId;
  readonly kind: FlagKind;
  /** It counts again from that day on; `null` brings it back now. */
  readonly until: Day | null;
  readonly note?: string | undefined;
}

/** Setting aside is putting off, not forgetting: no further than this. */
const DAYS_MOST = 730;

/** Puts a flag off until a day, or brings one back. */
export function planSetAside(shelf: Shelf, desk: Desk, { of, kind, until, note }: SetAside): readonly Entry[] | Problem {
  const thing = thingOf(shelf, of);
  if (!thing) return problem('This is no longer recorded.', 'Nothing was changed.');
  if (!FLAG_KINDS.includes(kind)) return problem('There is nothing like that to set aside.', 'Nothing was changed.');
  if (until !== null && until <= desk.today) return formProblem({ until: 'Choose a day to come.' });
  if (until !== null && until > addDays(desk.today, DAYS_MOST))
    return formProblem({ until: 'That is more than two years ahead. Choose a nearer day.' });
  if (until === null && thing.aside?.[kind] === undefined) return [];
  return allWritten([
    { ...desk.entry(), kind: 'corrected', noun: thing.noun, of, fields: {}, aside: { [kind]: until }, note: note?.trim() || undefined },
  ]);
}
