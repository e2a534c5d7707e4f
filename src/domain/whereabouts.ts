import type { PlaceId } from './brand.ts';
import type { Place, Shelf } from './shelf.ts';

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

/** Whether a place lies within another, or is it. */
export function isWithin(shelf: Shelf, inner: PlaceId | undefined, outer: PlaceId): boolean {
  return placesAround(shelf, inner).some((place) => place.id === outer);
}
