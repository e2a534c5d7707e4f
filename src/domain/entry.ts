import type {
  CastingId,
  Celsius,
  DesignId,
  EntryId,
  FlaskId,
  Grams,
  InjectedWaxId,
  InjectorId,
  Millimetres,
  MouldId,
  PlaceId,
  Sha256,
  ThingId,
  WaxId,
} from './brand.ts';
import { parseEntryId } from './clock.ts';
import { METALS, SIZE_MAX } from './design.ts';
import { CASTING_FAULTS, MOULD_FAULTS, WAX_FAULTS } from './fault.ts';
import {
  type Check,
  type Checks,
  day,
  type FieldsOf,
  listOf,
  NAME_MAX,
  NOTE_MAX,
  number,
  oneOf,
  recordOf,
  ref,
  sha256,
  shape,
  text,
  whole,
} from './field.ts';
import type { Changes, Fields } from './fields.ts';
import { GRADES } from './grade.ts';
import { WAX_STATES } from './injected-wax.ts';
import { INJECTION_FIELDS } from './mould.ts';
import type { Noun } from './noun.ts';
import type { Problem } from './problem.ts';
import { RETIREMENTS } from './retirement.ts';
import type { STUDIO_FIELDS } from './studio.ts';

/** Everything that can happen in the studio. */
export const ENTRY_KINDS = [
  'recorded',
  'corrected',
  'moved',
  'injected',
  'inspected',
  'failed',
  'retired',
  'received',
  'weighed',
  'counted',
  'dressed',
  'invested',
  'cast',
  'measured',
  'issued',
  'withdrawn',
] as const;
export type EntryKind = (typeof ENTRY_KINDS)[number];

/** Why something left the studio, or the wax tub. */
export const ISSUE_REASONS = ['sold', 'sent', 'given', 'discarded', 'lost', 'kept as master'] as const;

/** What calls for attention; a flag on a thing can be set aside until a day. */
export const FLAG_KINDS = [
  'failed',
  'doubtful',
  'worn',
  'faults',
  'old shots',
  'old rubber',
  'rejects',
  'look due',
  'wax low',
  'wax wrong',
  'over-full',
  'stray',
  'out late',
  'stock low',
  'master unsound',
] as const;
export type FlagKind = (typeof FLAG_KINDS)[number];

const PIECES_MAX = 1_000_000;
export const pieces = whole(0, PIECES_MAX);
const somePieces = whole(1, PIECES_MAX);
export const grams = number<Grams>(0, 10_000_000);
const note = text(NOTE_MAX);
export const thing = ref<ThingId>();

/** Pictures one entry may name. */
export const PICTURES_MAX = 40;

/** What every entry carries: its id, the day it happened, and perhaps who, why and with which pictures. */
export const COMMON = {
  id: parseEntryId as Check<EntryId>,
  on: day,
  by: text(NAME_MAX),
  note,
  pictures: listOf(sha256, PICTURES_MAX),
  /** Id of the first entry of the action this one was made in; absent on that first entry itself. An action is withdrawn whole. */
  step: parseEntryId as Check<EntryId>,
} as const;

const INJECTED = {
  mould: ref<MouldId>(),
  shots: whole(1, 100_000),
  /** Waxes thrown out, by fault; never more than shots × cavities. */
  rejects: recordOf(WAX_FAULTS, somePieces),
  /** Good waxes. Written down so that a later correction of the mould's cavities does not change the past. */
  good: pieces,
  wax: ref<WaxId>(),
  injector: ref<InjectorId>(),
  ...INJECTION_FIELDS,
  /** Wax used, estimated from the mould's grams a shot. */
  grams,
  /** The pile the good waxes went on; without it they make a new pile, whose id is this entry's, at `to`. */
  onto: ref<InjectedWaxId>(),
  to: ref<PlaceId>(),
} as const;

const INSPECTED = { of: thing, grade: oneOf(GRADES), faults: listOf(oneOf(MOULD_FAULTS), 20), next: day } as const;

const LOTS = listOf(shape({ from: ref<InjectedWaxId>(), pieces: somePieces }, ['from', 'pieces']), 200);

/** Fields of each kind besides the common ones, and which of them must be there. `recorded` and `corrected` are checked apart, by noun. */
export const KINDS = {
  moved: {
    checks: { things: listOf(thing, 2000), to: ref<PlaceId>(), until: day, usual: oneOf(['kept', 'changed']) },
    needed: ['things', 'to'],
  },
  injected: { checks: INJECTED, needed: ['mould', 'shots', 'good'] },
  inspected: { checks: INSPECTED, needed: ['of', 'grade'] },
  failed: { checks: { of: thing, faults: listOf(oneOf(MOULD_FAULTS), 20) }, needed: ['of', 'faults'] },
  retired: { checks: { of: thing, reason: oneOf(RETIREMENTS) }, needed: ['of', 'reason'] },
  received: { checks: { wax: ref<WaxId>(), grams, lot: text(60) }, needed: ['wax', 'grams'] },
  weighed: { checks: { wax: ref<WaxId>(), grams }, needed: ['wax', 'grams'] },
  counted: { checks: { of: thing, pieces }, needed: ['of', 'pieces'] },
  dressed: {
    checks: {
      from: ref<InjectedWaxId>(),
      good: pieces,
      scrapped: pieces,
      onto: ref<InjectedWaxId>(),
      to: ref<PlaceId>(),
      state: oneOf(WAX_STATES),
    },
    needed: ['from', 'good', 'scrapped'],
  },
  invested: {
    checks: { flask: ref<FlaskId>(), waxes: LOTS, powderGrams: grams, waterGrams: grams },
    needed: ['flask', 'waxes'],
  },
  cast: {
    checks: {
      flask: ref<FlaskId>(),
      metal: oneOf(METALS),
      design: ref<DesignId>(),
      size: text(SIZE_MAX),
      mould: ref<MouldId>(),
      sound: pieces,
      scrap: recordOf(CASTING_FAULTS, somePieces),
      metalGrams: grams,
      onto: ref<CastingId>(),
      to: ref<PlaceId>(),
    },
    needed: ['metal', 'sound'],
  },
  measured: {
    checks: {
      of: thing,
      /** Named dimensions, mm. */
      sizes: listOf(shape({ name: text(60), mm: number<Millimetres>(0.01, 10_000) }, ['name', 'mm']), 40),
      grams,
      roomC: number<Celsius>(-40, 60),
    },
    needed: ['of'],
  },
  issued: {
    checks: { of: thing, pieces: somePieces, grams, to: text(NAME_MAX), reason: oneOf(ISSUE_REASONS) },
    needed: ['of', 'reason'],
  },
  withdrawn: { checks: { entry: parseEntryId as Check<EntryId> }, needed: ['entry'] },
} as const satisfies Partial<Record<EntryKind, { checks: Checks; needed: readonly string[] }>>;

export type Common = { readonly id: EntryId; readonly on: Day } & Omit<FieldsOf<typeof COMMON>, 'id' | 'on'>;
type Day = Exclude<ReturnType<typeof day>, Problem>;
type PlainKind = keyof typeof KINDS;
type Body<K extends PlainKind> = FieldsOf<(typeof KINDS)[K]['checks']> & {
  readonly [F in (typeof KINDS)[K]['needed'][number]]: F extends keyof (typeof KINDS)[K]['checks']
    ? Exclude<ReturnType<Extract<(typeof KINDS)[K]['checks'][F], Check<unknown>>>, Problem>
    : never;
};

export type Recorded<N extends Noun = Noun> = {
  [M in N]: Common & {
    readonly kind: 'recorded';
    readonly noun: M;
    readonly fields: Fields<M>;
    readonly at?: PlaceId;
    readonly pieces?: number;
    readonly grams?: Grams;
  };
}[N];
/**
 * Some fields of a thing; `studio` is the studio itself, which has no id. `aside` puts flags off until a day, `null` brings one back.
 * `without` takes pictures off the thing (their bytes stay: undo and backups need them), `first` makes one of its pictures its portrait.
 */
export type Corrected =
  | {
      [M in Noun]: Common & {
        readonly kind: 'corrected';
        readonly noun: M;
        readonly of: ThingId;
        readonly fields: Changes<M>;
        readonly aside?: { readonly [K in FlagKind]?: Day | null };
        readonly without?: readonly Sha256[];
        readonly first?: Sha256;
      };
    }[Noun]
  | (Common & { readonly kind: 'corrected'; readonly noun: 'studio'; readonly fields: FieldsOf<typeof STUDIO_FIELDS> });
export type EntryOf<K extends EntryKind> = K extends 'recorded'
  ? Recorded
  : K extends 'corrected'
    ? Corrected
    : K extends PlainKind
      ? Common & { readonly kind: K } & Body<K>
      : never;
export type Entry = { [K in EntryKind]: EntryOf<K> }[EntryKind];
/** An entry before it has its id, as a plan makes it. */
export type Draft<E extends Entry = Entry> = E extends Entry ? Omit<E, 'id' | 'step'> : never;
