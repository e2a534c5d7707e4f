import type { PlaceId } from '../brand.ts';
import type { Desk } from '../desk.ts';
import type { Entry } from '../entry.ts';
import { type Problem, problem } from '../problem.ts';
import type { Shelf } from '../shelf.ts';
import { allWritten } from './written.ts';

/** Puts places, such as the cabinets of a room, in this order. Only those whose number changes are written down. */
export function planOrderPlaces(shelf: Shelf, desk: Desk, ids: readonly PlaceId[]): readonly Entry[] | Problem {
  if (ids.some((id) => !shelf.things.place.has(id)) || new Set(ids).size < ids.length)
    return problem('One of these places is no longer recorded.', 'The order is as it was.');
  const changed = ids.flatMap((id, at) => (shelf.things.place.get(id)?.order === at + 1 ? [] : [{ id, order: at + 1 }]));
  return allWritten(changed.map(({ id, order }) => ({ ...desk.entry(), kind: 'corrected', noun: 'place', of: id, fields: { order } })));
}
