import type { PlaceId } from './brand.ts';
import type { Place, Shelf, Thing } from './shelf.ts';
import { titleOf } from './title.ts';

/** A place and the places around it, outermost first. A ring of places (two devices can make one) is cut, not followed for ever. */
export function placesAround(shelf: Shelf, id: PlaceId | undefined): readonly Place[] {
  const path: Place[] = [];
  const seen = new Set<PlaceId>();
  for (let next = id; next !== undefined && !seen.has(next); ) {
    const place = shelf.things.place.get(next);
    if (!place) break;
    seen.add(next);
    path.unshift(place);
    next = place.in;
  }
  return path;
}

/** Where a place is in words, the room left out when a cabinet says enough: “North cabinet, drawer 3”. */
export function placeInWords(shelf: Shelf, id: PlaceId | undefined): string | undefined {
  const path = placesAround(shelf, id);
  if (path.length === 0) return undefined;
  const inside = path.length > 1 && path[0]?.kind === 'room' ? path.slice(1) : path;
  return inside.map((place) => titleOf(shelf, place)).join(', ');
}

/** Where a thing stands in words, or that nobody has said. */
export function standsInWords(shelf: Shelf, thing: Thing): string {
  return placeInWords(shelf, thing.at) ?? 'no place yet';
}

/** Whether a place lies within another, or is it. */
export function isWithin(shelf: Shelf, inner: PlaceId | undefined, outer: PlaceId): boolean {
  return placesAround(shelf, inner).some((place) => place.id === outer);
}
