import type { PlaceId } from '../domain/brand.ts';
import type { Flag, Rules } from '../domain/flag.ts';
import { furtherFlags, lookAt, plainFlags } from '../domain/flags.ts';
import { NOUNS, type Noun } from '../domain/noun.ts';
import type { Shelf, Thing } from '../domain/shelf.ts';
import type { Units } from '../domain/units.ts';

/** Nouns that can have flags at all. */
export const FLAGGED = NOUNS.filter((noun) => noun !== 'period' && noun !== 'want');

/** The flags of one noun's things, counted. */
export interface NounFlags {
  /** Flags of each thing in the noun's own order, those set aside included. */
  readonly flags: readonly (readonly Flag[])[];
  /** How many in force of each rank. */
  readonly counts: readonly number[];
  /** How many of each rank stand directly in a place, or are about the place itself. */
  readonly byPlace: ReadonlyMap<PlaceId, readonly number[]>;
}

interface Known extends NounFlags {
  readonly map: unknown;
  readonly things: readonly Thing[];
  readonly plain: readonly (readonly Flag[])[];
  readonly shared: readonly unknown[];
  readonly others: readonly unknown[];
}

/**
 * The last answer for each noun. A map keeps its order from shelf to shelf, so what changed is found by going down the old and the new
 * list side by side: looking up 20,000 things one by one costs fifty times as much.
 */
const last = new Map<Noun, Known>();
const NONE: readonly Flag[] = [];

/** What further flags of a noun rest on; nouns without an answer here have none. */
function othersOf(shelf: Shelf, units: Units, noun: Noun): readonly unknown[] | undefined {
  const { mould, master, injector, wax, injectedWax, casting, flask } = shelf.things;
  if (noun === 'place') return [mould, master, injectedWax, casting, wax, injector, flask];
  if (noun === 'design') return [casting];
  if (noun === 'master') return [mould];
  if (noun === 'wax') return [injector, units];
  return undefined;
}

const alike = (a: readonly unknown[] | undefined, b: readonly unknown[]) => a?.every((each, i) => each === b[i]) === true;

export function flagsOfNoun(shelf: Shelf, rules: Rules, units: Units, noun: Noun): NounFlags {
  const map = shelf.things[noun] as ReadonlyMap<string, Thing>;
  const shared = [rules, shelf.things.place, shelf.things.period, shelf.things.design];
  const further = othersOf(shelf, units, noun);
  const others = further ?? [];
  const before = last.get(noun);
  const isPlainSame = alike(before?.shared, shared);
  if (before && isPlainSame && before.map === map && alike(before.others, others)) return before;

  const look = lookAt(shelf, rules, units);
  const things = [...map.values()];
  const tally = new Tally(before);
  const plain: (readonly Flag[])[] = [];
  const flags: (readonly Flag[])[] = [];
  for (let i = 0; i < things.length; i++) {
    const thing = things[i] as Thing;
    const isSame = before !== undefined && before.things[i] === thing;
    const own = isSame && isPlainSame ? (before.plain[i] as readonly Flag[]) : plainFlags(thing, look);
    const all = further ? both(own, furtherFlags(thing, look)) : own;
    plain.push(own);
    flags.push(all);
    if (isSame && before.flags[i] === all) continue;
    if (before) tally.count(before.things[i], before.flags[i], -1);
    tally.count(thing, all, 1);
  }
  for (let i = things.length; before && i < before.things.length; i++) tally.count(before.things[i], before.flags[i], -1);
  const known = { map, things, plain, shared, others, flags, counts: tally.counts, byPlace: tally.byPlace };
  last.set(noun, known);
  return known;
}

function both(a: readonly Flag[], b: readonly Flag[]): readonly Flag[] {
  return b.length === 0 ? a : a.length === 0 ? b : [...a, ...b];
}

/** Counts of an earlier answer, changed without touching it. */
class Tally {
  readonly counts: number[];
  readonly byPlace: Map<PlaceId, readonly number[]>;
  private readonly fresh = new Set<PlaceId>();

  constructor(before: NounFlags | undefined) {
    this.counts = before ? [...before.counts] : [];
    this.byPlace = new Map(before?.byPlace);
  }

  count(thing: Thing | undefined, flags: readonly Flag[] = NONE, by: 1 | -1): void {
    if (!thing || flags.length === 0) return;
    const at = thing.noun === 'place' ? thing.id : thing.at;
    for (const flag of flags) {
      if (flag.asideUntil !== undefined) continue;
      this.counts[flag.rank] = (this.counts[flag.rank] ?? 0) + by;
      if (at === undefined) continue;
      const place = this.of(at);
      place[flag.rank] = (place[flag.rank] ?? 0) + by;
    }
  }

  private of(place: PlaceId): number[] {
    if (!this.fresh.has(place)) {
      this.byPlace.set(place, [...(this.byPlace.get(place) ?? [])]);
      this.fresh.add(place);
    }
    return this.byPlace.get(place) as number[];
  }
}
