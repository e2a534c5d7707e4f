import type { DesignId, PlaceId } from './brand.ts';
import type { Noun } from './noun.ts';
import type { Shelf, Thing } from './shelf.ts';

/** What can stand in a place and takes room there. */
export const STANDING = ['mould', 'master', 'injectedWax', 'casting', 'wax', 'injector', 'flask'] as const satisfies readonly Noun[];
export type StandingNoun = (typeof STANDING)[number];

/** Whether a thing takes room where it stands: what was lost or given away does not, though its record says where it was. */
export function takesRoom(thing: Thing): boolean {
  return thing.at !== undefined && thing.retired?.reason !== 'lost' && thing.retired?.reason !== 'given away';
}

/** Pieces a thing counts for: a pile of waxes or castings its pieces, anything else one. */
export function piecesOf(thing: Thing): number {
  return thing.noun === 'injectedWax' || thing.noun === 'casting' ? Math.max(0, thing.pieces) : 1;
}

interface Tally {
  /** Pieces of one noun standing directly in each place. */
  readonly pieces: ReadonlyMap<PlaceId, number>;
  /** For each design, the pieces of one noun standing directly in each place. */
  readonly byDesign: ReadonlyMap<DesignId, ReadonlyMap<PlaceId, number>>;
}

/** One noun's tally is made again only when a thing of that noun changed. */
const tallies = new WeakMap<object, Tally>();

function tallyOf(things: ReadonlyMap<string, Thing>): Tally {
  const known = tallies.get(things);
  if (known) return known;
  const pieces = new Map<PlaceId, number>();
  const byDesign = new Map<DesignId, Map<PlaceId, number>>();
  for (const thing of things.values()) {
    if (!takesRoom(thing)) continue;
    const at = thing.at as PlaceId;
    const count = piecesOf(thing);
    if (count === 0) continue;
    pieces.set(at, (pieces.get(at) ?? 0) + count);
    const design = 'design' in thing ? thing.design : undefined;
    if (design === undefined) continue;
    const places = byDesign.get(design);
    if (places) places.set(at, (places.get(at) ?? 0) + count);
    else byDesign.set(design, new Map([[at, count]]));
  }
  const tally = { pieces, byDesign };
  tallies.set(things, tally);
  return tally;
}

/** Pieces of a noun standing directly in each place. */
export function piecesByPlace(shelf: Shelf, noun: StandingNoun): ReadonlyMap<PlaceId, number> {
  return tallyOf(shelf.things[noun] as ReadonlyMap<string, Thing>).pieces;
}

/** Pieces of a design (moulds, masters, waxes and castings together) standing directly in each place, added to `into`. */
export function addPlacesOfDesign(shelf: Shelf, design: DesignId, into: Map<PlaceId, number>): void {
  for (const noun of STANDING) {
    const places = tallyOf(shelf.things[noun] as ReadonlyMap<string, Thing>).byDesign.get(design);
    for (const [place, count] of places ?? []) into.set(place, (into.get(place) ?? 0) + count);
  }
}

/** Pieces standing directly in a place, boxes inside it not counted. */
export function piecesIn(shelf: Shelf, place: PlaceId): number {
  let sum = 0;
  for (const noun of STANDING) sum += piecesByPlace(shelf, noun).get(place) ?? 0;
  return sum;
}
