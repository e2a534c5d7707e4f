import type { PlaceId, ThingId } from '../brand.ts';
import type { Desk } from '../desk.ts';
import type { Entry } from '../entry.ts';
import { isProblem, type Problem, problem } from '../problem.ts';
import type { Shelf } from '../shelf.ts';
import { titleOf } from '../title.ts';
import { movable } from './move.ts';
import { allWritten } from './written.ts';

const UNCHANGED = 'Nothing was changed.';

/** Makes the place where each thing stands now its usual one: one entry for each place. Those that stand where they belong are left out. */
export function planSetUsual(shelf: Shelf, desk: Desk, ids: readonly ThingId[]): readonly Entry[] | Problem {
  const things = movable(shelf, ids);
  if (isProblem(things)) return things;
  const byPlace = new Map<PlaceId, ThingId[]>();
  for (const thing of things) {
    if (thing.noun === 'place' || thing.at === undefined || thing.usual === undefined || thing.usual === thing.at) continue;
    if (shelf.things.place.get(thing.at)?.kind === 'away')
      return problem(
        `${titleOf(shelf, thing)} is away: nobody’s hands are a usual place.`,
        `${UNCHANGED} Take it off the list, or put it back first.`,
      );
    byPlace.set(thing.at, [...(byPlace.get(thing.at) ?? []), thing.id]);
  }
  if (byPlace.size === 0) return problem('They stand in their usual places already.', UNCHANGED);
  return allWritten([...byPlace].map(([to, settled]) => ({ ...desk.entry(), kind: 'moved', things: settled, to })));
}
