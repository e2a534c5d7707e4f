import type { DesignId, PlaceId } from './brand.ts';
import type { Noun } from './noun.ts';
import { LEFT } from './retirement.ts';
import type { Shelf, Thing } from './shelf.ts';

/** What can stand in a place and takes room there. */
export const STANDING = ['mould', 'master', 'injectedWax', 'casting', 'wax', 'injector', 'flask'] as const satisfies readonly Noun[];
export type StandingNoun = (typeof STANDING)[number];

/** Whether things of a noun stand somewhere. A place goes into a place, and a period, a design or a want is nowhere. */
export function isStanding(noun: Noun): noun is StandingNoun {
  return STANDING.some((each) => each === noun);
}

/** Whether a thing takes room where it stands: what was lost, sold or given away does not, though its record says where it was. */
export function takesRoom(thing: Thing): boolean {
  return thing.at !== undefined && !(thing.retired && LEFT.includes(thing.retired.reason));
}

/** Pieces a thing counts for: a pile of waxes or castings its pieces, anything else one. */
export function piecesOf(thing: Thing): number {
  return thing.noun === 'injectedWax' || thing.noun === 'casting' ? Math.max(0, thing.pieces) : 1;
}

type ByPlace = ReadonlyMap<PlaceId, number>;

/** One noun's tallies are made again only when a thing of that noun changed. */
const designTallies = new WeakMap<object, ReadonlyMap<DesignId, ByPlace>>();

function add(tally: Map<PlaceId, number>, place: PlaceId, count: number): void {
  const sum = (tally.get(place) ?? 0) + count;
  if (sum === 0) tally.delete(place);
  else tally.set(place, sum);
}

interface PlaceTally {
  readonly map: unknown;
  readonly things: readonly Thing[];
  readonly tally: ByPlace;
}
/** Maps keep their order from shelf to shelf, so a tally is told from the last one by going down both lists side by side. */
const placeTallies = new Map<StandingNoun, PlaceTally>();

/** Pieces of a noun standing directly in each place. */
export function piecesByPlace(shelf: Shelf, noun: StandingNoun): ByPlace {
  const map = shelf.things[noun] as ReadonlyMap<string, Thing>;
  const before = placeTallies.get(noun);
  if (before?.map === map) return before.tally;
  const things = [...map.values()];
  const tally = new Map(before?.tally);
  const count = (thing: Thing | undefined, by: 1 | -1) => {
    if (thing && takesRoom(thing)) add(tally, thing.at as PlaceId, by * piecesOf(thing));
  };
  const length = Math.max(things.length, before?.things.length ?? 0);
  for (let i = 0; i < length; i++) {
    const was = before?.things[i];
    const is = things[i];
    if (was === is) continue;
    count(was, -1);
    count(is, 1);
  }
  placeTallies.set(noun, { map, things, tally });
  return tally;
}

/** Of each design, the pieces of a noun standing directly in each place. */
function byDesign(shelf: Shelf, noun: StandingNoun): ReadonlyMap<DesignId, ByPlace> {
  const things = shelf.things[noun] as ReadonlyMap<string, Thing>;
  const known = designTallies.get(things);
  if (known) return known;
  const tallies = new Map<DesignId, Map<PlaceId, number>>();
  for (const thing of things.values()) {
    const design = 'design' in thing ? thing.design : undefined;
    const count = design === undefined || !takesRoom(thing) ? 0 : piecesOf(thing);
    if (design === undefined || count === 0) continue;
    const tally = tallies.get(design) ?? new Map<PlaceId, number>();
    add(tally, thing.at as PlaceId, count);
    tallies.set(design, tally);
  }
  designTallies.set(things, tallies);
  return tallies;
}

/** Pieces of a design (moulds, masters, waxes and castings together) standing directly in each place, added to `into`. */
export function addPlacesOfDesign(shelf: Shelf, design: DesignId, into: Map<PlaceId, number>): void {
  for (const noun of STANDING) for (const [place, count] of byDesign(shelf, noun).get(design) ?? []) add(into, place, count);
}

/** Pieces standing directly in a place, boxes inside it not counted. */
export function piecesIn(shelf: Shelf, place: PlaceId): number {
  let sum = 0;
  for (const noun of STANDING) sum += piecesByPlace(shelf, noun).get(place) ?? 0;
  return sum;
}
