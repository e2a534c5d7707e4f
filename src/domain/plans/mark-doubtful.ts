import type { MouldId, ThingId } from '../brand.ts';
import type { Desk } from '../desk.ts';
import type { Entry } from '../entry.ts';
import { type Problem, problem } from '../problem.ts';
import { type Shelf, thingOf } from '../shelf.ts';
import { allWritten } from './written.ts';

export interface MarkDoubtful {
  readonly mould: MouldId;
  readonly things: readonly { readonly id: ThingId; readonly least: number; readonly most: number }[];
}

/** Marks piles and flasks for a look, all in one action. */
export function planMarkDoubtful(shelf: Shelf, desk: Desk, { mould, things }: MarkDoubtful): readonly Entry[] | Problem {
  const marked = things.flatMap(({ id, least, most }) => {
    const noun = thingOf(shelf, id)?.noun;
    if (noun !== 'injectedWax' && noun !== 'casting' && noun !== 'flask') return [];
    return [{ ...desk.entry(), kind: 'corrected', noun, of: id, fields: { doubt: { mould, on: desk.today, least, most } } }];
  });
  if (marked.length === 0) return problem('There is nothing on hand to mark.', 'Nothing was changed.');
  return allWritten(marked);
}

/** Somebody looked at what was marked: it is in doubt no more. */
export function planLookedAt(
  shelf: Shelf,
  desk: Desk,
  { of, note }: { of: ThingId; note?: string | undefined },
): readonly Entry[] | Problem {
  const thing = thingOf(shelf, of);
  if (!thing || !('doubt' in thing) || !thing.doubt) return [];
  return allWritten([
    { ...desk.entry(), kind: 'corrected', noun: thing.noun, of, fields: { doubt: null }, note: note?.trim() || undefined },
  ]);
}
