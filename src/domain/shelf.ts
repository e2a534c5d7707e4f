import type { Celsius, Day, EntryId, InjectorId, Kilopascals, PlaceId, Sha256, ThingId, WaxId } from './brand.ts';
import type { FlagKind, ISSUE_REASONS } from './entry.ts';
import type { CastingFault, MouldFault, WaxFault } from './fault.ts';
import type { Fields } from './fields.ts';
import type { Grade } from './grade.ts';
import { type IdOf, NOUNS, type Noun } from './noun.ts';
import type { Retirement } from './retirement.ts';
import type { Reading } from './size/reading.ts';
import type { StudioFields } from './studio.ts';

/** What every thing on the shelf has besides its fields. A field that is not filled in is undefined, or not there. */
interface Standing<N extends Noun> {
  readonly id: IdOf[N];
  readonly noun: N;
  /** Day it was recorded. */
  readonly since: Day;
  /** Where it stands, since when, and its usual place when that is another. */
  readonly at?: PlaceId;
  readonly atSince?: Day;
  readonly usual?: PlaceId;
  /** Lent out until then. */
  readonly until?: Day;
  /** Pictures of the thing, given when it was recorded or put right; the first is its portrait. */
  readonly pictures?: readonly Sha256[];
  /** Pictures of what happened to it: a torn gate, a run's rejects. */
  readonly looks?: readonly Sha256[];
  readonly retired?: { readonly on: Day; readonly reason: Retirement };
  readonly aside?: { readonly [K in FlagKind]?: Day };
  /** The last reading of each named dimension, and of the weight; `on` is the day of the last of them. */
  readonly measured?: {
    readonly on: Day;
    readonly sizes?: readonly Reading[];
    readonly grams?: number;
  };
}

export interface Run {
  readonly on: Day;
  readonly good: number;
  readonly rejects: number;
  readonly wax?: WaxId;
  readonly injector?: InjectorId;
  readonly waxC?: Celsius;
  readonly pressureKpa?: Kilopascals;
  readonly holdS?: number;
}

/** A rise of a mould's rejects that is being watched: since when, waxes and rejects since then, and how strong the signs are. */
export interface Drift {
  readonly since: Day;
  readonly waxes: number;
  readonly rejects: number;
  readonly sign: number;
}

interface Graded {
  /** Last judgement, by inspection or failure. */
  readonly grade?: Grade;
  readonly gradeOn?: Day;
  readonly gradeNote?: string;
  readonly faults?: readonly MouldFault[];
  readonly nextLook?: Day;
}

interface MouldTallies extends Graded {
  readonly shots: number;
  readonly good: number;
  readonly rejects: number;
  readonly byFault?: { readonly [K in WaxFault]?: number };
  /** The last run, and before it the last that went well when the last did not. */
  readonly runs?: readonly Run[];
  readonly drift?: Drift;
  /** Castings sound and scrap known to have come from it. */
  readonly sound?: number;
  readonly scrap?: number;
}

interface WaxTallies {
  readonly grams: number;
  /** Grams used in each month, `YYYY-MM`, the last MONTHS_KEPT months with any. */
  readonly used?: { readonly [month: string]: number };
  readonly weighedOn?: Day;
}

interface Pieces {
  readonly pieces: number;
  readonly countedOn?: Day;
}

interface CastingTallies extends Pieces {
  readonly scrap?: { readonly [K in CastingFault]?: number };
  readonly issued?: { readonly [K in (typeof ISSUE_REASONS)[number]]?: number };
}

interface FlaskTallies {
  readonly invested?: { readonly on: Day; readonly waxes: readonly { readonly from: ThingId; readonly pieces: number }[] };
}

interface Tallies {
  place: object;
  period: object;
  design: object;
  master: Graded;
  mould: MouldTallies;
  wax: WaxTallies;
  injector: object;
  injectedWax: Pieces;
  casting: CastingTallies;
  flask: FlaskTallies;
  want: object;
}

export type Thing<N extends Noun = Noun> = { [M in N]: Standing<M> & Fields<M> & Tallies[M] }[N];
export type Place = Thing<'place'>;
export type Period = Thing<'period'>;
export type Design = Thing<'design'>;
export type Master = Thing<'master'>;
export type Mould = Thing<'mould'>;
export type Wax = Thing<'wax'>;
export type Injector = Thing<'injector'>;
export type InjectedWax = Thing<'injectedWax'>;
export type Casting = Thing<'casting'>;
export type Flask = Thing<'flask'>;
export type Want = Thing<'want'>;

export const MONTHS_KEPT = 14;
/** Raised when the same journal would fold to another shelf; stored shelves of another version are folded afresh. */
export const FOLD_VERSION = 6;

export type Things = { readonly [N in Noun]: ReadonlyMap<IdOf[N], Thing<N>> };

/** The sum of the journal up to and with the entry `last`. Immutable: a fold makes a new one that shares what did not change. */
export interface Shelf {
  readonly last: EntryId | '';
  /** Entries in force that it sums. */
  readonly entries: number;
  readonly studio: StudioFields;
  readonly things: Things;
  /** What stands directly in each place. */
  readonly contents: ReadonlyMap<PlaceId, ReadonlySet<ThingId>>;
}

export const EMPTY_SHELF: Shelf = {
  last: '',
  entries: 0,
  studio: {},
  things: Object.fromEntries(NOUNS.map((noun) => [noun, new Map()])) as unknown as Things,
  contents: new Map(),
};

/** The thing with this id, whatever its noun. */
export function thingOf(shelf: Shelf, id: string | undefined): Thing | undefined {
  if (id === undefined) return undefined;
  for (const noun of NOUNS) {
    const found = (shelf.things[noun] as ReadonlyMap<string, Thing>).get(id);
    if (found) return found;
  }
  return undefined;
}

/** Contents index of things read back from a stored shelf. */
export function contentsOf(things: Things): Map<PlaceId, Set<ThingId>> {
  const contents = new Map<PlaceId, Set<ThingId>>();
  for (const noun of NOUNS) {
    for (const thing of (things[noun] as ReadonlyMap<string, Thing>).values()) {
      if (!thing.at) continue;
      const set = contents.get(thing.at);
      if (set) set.add(thing.id);
      else contents.set(thing.at, new Set([thing.id]));
    }
  }
  return contents;
}
