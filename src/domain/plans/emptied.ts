import type { Day, PlaceId, ThingId } from '../brand.ts';
import type { Desk } from '../desk.ts';
import { piecesOf, STANDING, takesRoom } from '../filling.ts';
import { childrenOf } from '../nesting.ts';
import { type Place, type Shelf, type Thing, thingOf } from '../shelf.ts';

/** Things that one entry may move. */
const MOVED_MAX = 2_000;

/** What is lost with a place when it is taken out: drawers and shelves are part of it; cabinets and boxes can be carried elsewhere. */
export function isBuiltIn(place: Place): boolean {
  return place.kind === 'drawer' || place.kind === 'shelf';
}

/** A place and the drawers and shelves that are part of it, the innermost first. Those taken out already are left out. */
export function takenWith(shelf: Shelf, place: Place): readonly Place[] {
  const parts = (childrenOf(shelf).get(place.id) ?? []).filter((inner) => isBuiltIn(inner) && !inner.retired);
  return [...parts.flatMap((part) => takenWith(shelf, part)), place];
}

/** What has to go elsewhere before a place can be taken out: the things in it and in the drawers that are part of it, and what can be carried. */
export function leftIn(shelf: Shelf, place: Place): { readonly things: readonly ThingId[]; readonly places: readonly Place[] } {
  const taken = takenWith(shelf, place);
  const children = childrenOf(shelf);
  return {
    things: taken.flatMap(({ id }) => [...(shelf.contents.get(id) ?? [])].filter((each) => isThere(thingOf(shelf, each)))),
    places: taken.flatMap(({ id }) => (children.get(id) ?? []).filter((inner) => !taken.includes(inner) && !inner.retired)),
  };
}

/** What was lost, sold or used up is not in a drawer any more, though its record says that it was. */
function isThere(thing: Thing | undefined): boolean {
  return thing !== undefined && thing.noun !== 'place' && takesRoom(thing) && piecesOf(thing) > 0;
}

/** Entries that take a place out, with the drawers that are part of it, and put what is in them at `to`, so that nothing points at what is gone. */
export function takenOut(shelf: Shelf, desk: Desk, place: Place, to: PlaceId | undefined, reason: string): readonly object[] {
  const taken = takenWith(shelf, place);
  const { things, places } = leftIn(shelf, place);
  return [
    ...(to === undefined ? [] : [...movedTo(desk, things, to), ...homesMoved(shelf, desk, new Set(taken.map(({ id }) => id)), to)]),
    ...places.map((inner) => ({
      ...desk.entry(),
      kind: 'corrected',
      noun: 'place',
      of: inner.id,
      fields: { in: to ?? null, ...(inner.box ? { box: null } : {}) },
    })),
    ...taken.filter(({ retired }) => !retired).map(({ id }) => ({ ...desk.entry(), kind: 'retired', of: id, reason })),
  ];
}

function movedTo(desk: Desk, things: readonly ThingId[], to: PlaceId): readonly object[] {
  return chunks(things).map((some) => ({ ...desk.entry(), kind: 'moved', things: some, to }));
}

/** What is lent and belongs in a place taken out comes back to the new one: said by putting it there and lending it again, as of the day it was lent. */
function homesMoved(shelf: Shelf, desk: Desk, taken: ReadonlySet<PlaceId>, to: PlaceId): readonly object[] {
  const loans = new Map<string, { readonly at: PlaceId; readonly until?: Day; readonly on?: Day; readonly things: ThingId[] }>();
  for (const noun of STANDING) {
    for (const thing of (shelf.things[noun] as ReadonlyMap<string, Thing>).values()) {
      if (thing.usual === undefined || thing.at === undefined || !taken.has(thing.usual) || taken.has(thing.at)) continue;
      const { at, until, atSince: on } = thing;
      const key = [at, until, on].join(' ');
      const loan = loans.get(key) ?? { at, ...(until ? { until } : {}), ...(on ? { on } : {}), things: [] };
      loan.things.push(thing.id);
      loans.set(key, loan);
    }
  }
  return [...loans.values()].flatMap(({ at, things, ...when }) =>
    chunks(things).flatMap((some) => [
      { ...desk.entry(), kind: 'moved', things: some, to },
      { ...desk.entry(), ...when, kind: 'moved', things: some, to: at, usual: 'kept' },
    ]),
  );
}

function chunks<T>(all: readonly T[]): readonly (readonly T[])[] {
  return Array.from({ length: Math.ceil(all.length / MOVED_MAX) }, (_, at) => all.slice(at * MOVED_MAX, (at + 1) * MOVED_MAX));
}
