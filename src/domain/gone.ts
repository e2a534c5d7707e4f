import { piecesIn } from './filling.ts';
import { placesWithin } from './nesting.ts';
import type { Place, Shelf } from './shelf.ts';

/** A place taken out of use, with nothing left in it: it is shown no more. */
export function isGone(shelf: Shelf, place: Place): boolean {
  return place.retired !== undefined && placesWithin(shelf, place.id).every((within) => piecesIn(shelf, within) === 0);
}
