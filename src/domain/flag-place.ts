import { piecesIn } from './filling.ts';
import { type Flag, flagOn, type Rules } from './flag.ts';
import type { Place, Shelf } from './shelf.ts';

/** Whether more stands in a place than fits; boxes inside it are counted for themselves. */
export function placeFlags(shelf: Shelf, place: Place, rules: Rules): readonly Flag[] {
  if (place.retired || place.capacity === undefined) return [];
  const pieces = piecesIn(shelf, place.id);
  const over = pieces - place.capacity;
  if (over <= 0) return [];
  return [
    flagOn(
      place,
      rules,
      'over-full',
      'soon',
      `${pieces} pieces where ${place.capacity} fit: ${over} too many.`,
      'Move some to a drawer with room.',
    ),
  ];
}
