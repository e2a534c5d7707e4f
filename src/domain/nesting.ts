import type { PlaceId } from './brand.ts';
import type { Place, Shelf } from './shelf.ts';
import { titleOf } from './title.ts';
import { compareTitles } from './title-order.ts';
import { placeAround, placesAround } from './whereabouts.ts';

/** What a place is called on its own front: the short label where there is one. */
export function labelOf(shelf: Shelf, place: Place): string {
  return place.label ?? titleOf(shelf, place);
}

/** Names from the outermost place to the one meant: “Plan chest”, “A3”. Rooms are left out, unless the room itself is meant. Empty when there is no such place. */
export function pathNames(shelf: Shelf, id: PlaceId | undefined): readonly string[] {
  const path = placesAround(shelf, id);
  return path
    .filter((place, index) => place.kind !== 'room' || index === path.length - 1)
    .map((place) => (place.kind === 'cabinet' ? titleOf(shelf, place) : labelOf(shelf, place)));
}

/** “Plan chest › A3”. */
export function pathText(shelf: Shelf, id: PlaceId | undefined): string {
  return namesText(pathNames(shelf, id));
}

export function namesText(names: readonly string[]): string {
  return names.join(' › ');
}

/** What stands directly in each place; the places that stand in none are under `undefined`. In the studio's order, then by label. */
export function childrenOf(shelf: Shelf): ReadonlyMap<PlaceId | undefined, readonly Place[]> {
  const known = cached.get(shelf.things.place);
  if (known) return known;
  const children = new Map<PlaceId | undefined, Place[]>();
  for (const place of shelf.things.place.values()) {
    const within = placeAround(shelf, place);
    const list = children.get(within);
    if (list) list.push(place);
    else children.set(within, [place]);
  }
  for (const list of children.values()) list.sort(byOrder);
  cached.set(shelf.things.place, children);
  return children;
}

/** A place and every place inside it, itself first. */
export function placesWithin(shelf: Shelf, id: PlaceId): readonly PlaceId[] {
  const children = childrenOf(shelf);
  const within = new Set<PlaceId>([id]);
  for (const each of within) for (const child of children.get(each) ?? []) within.add(child.id);
  return [...within];
}

const cached = new WeakMap<Shelf['things']['place'], ReadonlyMap<PlaceId | undefined, readonly Place[]>>();

function byOrder(a: Place, b: Place): number {
  const order = (a.order ?? Number.MAX_VALUE) - (b.order ?? Number.MAX_VALUE);
  return order || compareTitles(a.label ?? a.name ?? '', b.label ?? b.name ?? '') || (a.id < b.id ? -1 : 1);
}
