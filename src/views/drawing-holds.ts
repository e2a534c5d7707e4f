import type { PlaceId } from '../domain/brand.ts';
import type { Drawing } from '../domain/drawing/drawing.ts';
import { STANDING, type StandingNoun } from '../domain/filling.ts';
import { sayCount } from '../domain/measure-words.ts';
import { leftIn } from '../domain/plans/emptied.ts';
import type { Shelf } from '../domain/shelf.ts';
import { front } from './front.ts';
import { countsInWords } from './front-words.ts';

/** What would have to go elsewhere. */
export interface Held {
  readonly pieces: number;
  /** “14 moulds, 2 masters, 1 place that can be carried”; empty when nothing stands there. */
  readonly says: string;
}

const NO_MARKS = new Map();

/** What stands in places, in the boxes in them too. */
export function heldIn(shelf: Shelf, ids: readonly PlaceId[]): Held {
  const counts: { [N in StandingNoun]?: number } = {};
  let [pieces, carried] = [0, 0];
  for (const id of ids) {
    const place = shelf.things.place.get(id);
    if (!place) continue;
    const fill = front(shelf, place, NO_MARKS);
    for (const noun of STANDING) if (fill.counts[noun]) counts[noun] = (counts[noun] ?? 0) + fill.counts[noun];
    pieces += fill.pieces;
    carried += leftIn(shelf, place).places.length;
  }
  const parts = [
    ...(pieces > 0 ? [countsInWords({ counts })] : []),
    ...(carried > 0 ? [sayCount(carried, 'box or cabinet', 'boxes or cabinets')] : []),
  ];
  return { pieces, says: parts.join(', ') };
}

/** What stands in fronts of a drawing, with what other fronts already gone leave to them. */
export function heldInFronts(shelf: Shelf, { fronts, gone }: Drawing, keys: readonly string[]): Held {
  const own = fronts.flatMap(({ key, of }) => (of !== undefined && keys.includes(key) ? [of] : []));
  return heldIn(shelf, [...own, ...gone.flatMap(({ of, to }) => (to !== undefined && keys.includes(to) ? [of] : []))]);
}
