import type { PlaceId } from './brand.ts';
import type { Place, Shelf } from './shelf.ts';

const knownCuts = new WeakMap<Shelf['things']['place'], ReadonlySet<PlaceId>>();

/**
 * Places that are said to stand in one another: two devices can make such a ring, each putting one into the other. The ring is cut at its
 * oldest place, which then counts as standing in none.
 */
function cutsOf(shelf: Shelf): ReadonlySet<PlaceId> {
  const places = shelf.things.place;
  const known = knownCuts.get(places);
  if (known) return known;
  const cuts = new Set<PlaceId>();
  const done = new Set<PlaceId>();
  for (const start of places.keys()) {
    const path = new Set<PlaceId>();
    let next: PlaceId | undefined = start;
    while (next !== undefined && !done.has(next) && !path.has(next)) {
      path.add(next);
      next = places.get(next)?.in;
    }
    if (next !== undefined && path.has(next)) {
      const ring = [...path].slice([...path].indexOf(next));
      cuts.add(ring.sort()[0] as PlaceId);
    }
    for (const each of path) done.add(each);
  }
  knownCuts.set(places, cuts);
  return cuts;
}

/** The place that a place stands in, when that is recorded; following it always comes to an end. */
export function placeAround(shelf: Shelf, place: Place): PlaceId | undefined {
  return place.in !== undefined && shelf.things.place.has(place.in) && !cutsOf(shelf).has(place.id) ? place.in : undefined;
}

/** A place and the places around it, outermost first. */
export function placesAround(shelf: Shelf, id: PlaceId | undefined): readonly Place[] {
  const path: Place[] = [];
  for (let next = id; next !== undefined; ) {
    const place = shelf.things.place.get(next);
    if (!place) break;
    path.unshift(place);
    next = placeAround(shelf, place);
  }
  return path;
}

/** Whether a place lies within another, or is it. */
export function isWithin(shelf: Shelf, inner: PlaceId | undefined, outer: PlaceId): boolean {
  return placesAround(shelf, inner).some((place) => place.id === outer);
}
