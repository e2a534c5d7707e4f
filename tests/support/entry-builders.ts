import type {
  CastingId,
  Celsius,
  DesignId,
  FlaskId,
  Grams,
  InjectedWaxId,
  InjectorId,
  Kilopascals,
  MasterId,
  Millimetres,
  MouldId,
  PeriodId,
  PlaceId,
  ThingId,
  WantId,
  WaxId,
  Year,
} from '../../src/domain/brand.ts';
import type { Entry, EntryKind, EntryOf, Recorded } from '../../src/domain/entry.ts';
import type { Noun } from '../../src/domain/noun.ts';
import { day, idAt, nextId, START_DAY, sha } from './builders.ts';

type Over<K extends EntryKind> = Partial<Omit<EntryOf<K>, 'kind'>>;

/** Made-up ids that entries refer to when a test does not say otherwise. */
export const SOME = {
  place: idAt(-101) as string as PlaceId,
  mould: idAt(-102) as string as MouldId,
  wax: idAt(-103) as string as WaxId,
  injector: idAt(-104) as string as InjectorId,
  injectedWax: idAt(-105) as string as InjectedWaxId,
  flask: idAt(-106) as string as FlaskId,
  casting: idAt(-107) as string as CastingId,
  design: idAt(-108) as string as DesignId,
  master: idAt(-109) as string as MasterId,
  period: idAt(-110) as string as PeriodId,
  want: idAt(-111) as string as WantId,
} as const;

function common() {
  return { id: nextId(), on: START_DAY };
}

/** A new thing; its id is the entry's. */
export function aRecorded<N extends Noun>(
  noun: N,
  fields: Recorded<N>['fields'] = {} as Recorded<N>['fields'],
  over: Partial<Omit<Recorded<N>, 'kind' | 'noun' | 'fields'>> = {},
): Recorded<N> {
  return { ...common(), kind: 'recorded', noun, fields, ...over } as Recorded<N>;
}

export function aCorrected(
  of: { readonly id: string; readonly noun: Noun },
  fields: object,
  over: Over<'corrected'> & Partial<Pick<Extract<EntryOf<'corrected'>, { of: unknown }>, 'without' | 'first'>> = {},
): EntryOf<'corrected'> {
  return { ...common(), kind: 'corrected', noun: of.noun, of: of.id, fields, ...over } as EntryOf<'corrected'>;
}

export function aStudioCorrected(fields: object, over: Over<'corrected'> = {}): EntryOf<'corrected'> {
  return { ...common(), kind: 'corrected', noun: 'studio', fields, ...over } as EntryOf<'corrected'>;
}

export function aMoved(over: Over<'moved'> = {}): EntryOf<'moved'> {
  return { ...common(), kind: 'moved', things: [SOME.mould], to: SOME.place, ...over };
}

export function anInjected(over: Over<'injected'> = {}): EntryOf<'injected'> {
  return {
    ...common(),
    kind: 'injected',
    mould: SOME.mould,
    shots: 11,
    rejects: { bubbles: 3, 'short fill': 2 },
    good: 39,
    wax: SOME.wax,
    injector: SOME.injector,
    waxC: 67 as Celsius,
    pressureKpa: 52 as Kilopascals,
    holdS: 7,
    grams: 92 as Grams,
    to: SOME.place,
    ...over,
  };
}

export function anInspected(over: Over<'inspected'> = {}): EntryOf<'inspected'> {
  return { ...common(), kind: 'inspected', of: SOME.mould, grade: 'watch', faults: ['flash'], next: day('2024-06-21'), ...over };
}

export function aFailed(over: Over<'failed'> = {}): EntryOf<'failed'> {
  return { ...common(), kind: 'failed', of: SOME.mould, faults: ['torn gate', 'curled'], ...over };
}

export function aRetired(over: Over<'retired'> = {}): EntryOf<'retired'> {
  return { ...common(), kind: 'retired', of: SOME.mould, reason: 'torn', ...over };
}

export function aReceived(over: Over<'received'> = {}): EntryOf<'received'> {
  return { ...common(), kind: 'received', wax: SOME.wax, grams: 1250 as Grams, lot: 'lot 88', ...over };
}

export function aWeighed(over: Over<'weighed'> = {}): EntryOf<'weighed'> {
  return { ...common(), kind: 'weighed', wax: SOME.wax, grams: 1830 as Grams, ...over };
}

export function aCounted(over: Over<'counted'> = {}): EntryOf<'counted'> {
  return { ...common(), kind: 'counted', of: SOME.injectedWax, pieces: 29, ...over };
}

export function aDressed(over: Over<'dressed'> = {}): EntryOf<'dressed'> {
  return { ...common(), kind: 'dressed', from: SOME.injectedWax, good: 16, scrapped: 4, to: SOME.place, ...over };
}

export function anInvested(over: Over<'invested'> = {}): EntryOf<'invested'> {
  const waxes = [{ from: SOME.injectedWax, pieces: 9 }];
  return { ...common(), kind: 'invested', flask: SOME.flask, waxes, powderGrams: 1400 as Grams, waterGrams: 560 as Grams, ...over };
}

export function aCast(over: Over<'cast'> = {}): EntryOf<'cast'> {
  return {
    ...common(),
    kind: 'cast',
    flask: SOME.flask,
    metal: 'bronze',
    mould: SOME.mould,
    sound: 8,
    scrap: { porosity: 1 },
    metalGrams: 210 as Grams,
    to: SOME.place,
    ...over,
  };
}

export function aMeasured(over: Over<'measured'> = {}): EntryOf<'measured'> {
  return {
    ...common(),
    kind: 'measured',
    of: SOME.master,
    sizes: [{ name: 'length', mm: 14.8 as Millimetres }],
    grams: 6.3 as Grams,
    roomC: 19 as Celsius,
    ...over,
  };
}

export function anIssued(over: Over<'issued'> = {}): EntryOf<'issued'> {
  return { ...common(), kind: 'issued', of: SOME.casting, pieces: 5, to: 'the lighthouse museum', reason: 'sold', ...over };
}

export function aWithdrawn(entry: { readonly id: string }, over: Over<'withdrawn'> = {}): EntryOf<'withdrawn'> {
  return { ...common(), kind: 'withdrawn', entry: entry.id, ...over } as EntryOf<'withdrawn'>;
}

/** A small studio in which everything happens once: all nouns, all kinds of entries, the last one takes an earlier one back. */
export function aJournal(): Entry[] {
  const room = aRecorded('place', { name: 'Workshop', kind: 'room' });
  const cabinet = aRecorded('place', { name: 'Cabinet A', kind: 'cabinet', in: placed(room), widthMm: 905, heightMm: 1207 });
  const box = { x: 5, y: 10, w: 431, h: 119 };
  const drawer = aRecorded('place', { name: 'Drawer A1', kind: 'drawer', in: placed(cabinet), for: 'moulds', capacity: 44, box });
  const tray = aRecorded('place', { name: 'Tray A2', kind: 'drawer', in: placed(cabinet), for: 'injected waxes', capacity: 300 });
  const period = aRecorded('period', { name: 'Hellenistic', from: -322 as Year, to: -30 as Year });
  const sizes = [{ label: 'small', mm: 14.5 as Millimetres }];
  const design = aRecorded('design', { name: 'Dolphin toggle', periods: [ref<PeriodId>(period)], sizes, keep: 12 });
  const named = { design: ref<DesignId>(design), size: 'small' };
  const master = aRecorded('master', { ...named, kind: 'carved', state: 'sound' }, { at: placed(drawer) });
  const mould = aRecorded('mould', { ...named, master: ref<MasterId>(master), rubber: 'natural', cavities: 4 }, { at: placed(drawer) });
  const wax = aRecorded('wax', { name: 'Green', roomLowC: 13 as Celsius, roomHighC: 27 as Celsius }, { grams: 500 as Grams });
  const injector = aRecorded('injector', { name: 'Big pot', pressure: 'low', holds: ref<WaxId>(wax) });
  const flask = aRecorded('flask', { name: 'Flask 5', diameterMm: 101 as Millimetres });
  const want = aRecorded('want', { ...named, pieces: 58, due: day('2024-05-17') });
  const counts = aRecorded('casting', { ...named, metal: 'pewter' }, { pieces: 6, at: placed(tray) });
  const spare = aRecorded('injectedWax', { ...named, state: 'raw' }, { pieces: 3, at: placed(tray) });
  const run = anInjected({
    mould: ref<MouldId>(mould),
    wax: ref<WaxId>(wax),
    injector: ref<InjectorId>(injector),
    to: placed(tray),
    pictures: [sha(1)],
  });
  const pile = ref<InjectedWaxId>(run);
  const dressed = aDressed({ from: pile, to: placed(tray) });
  const poured = aCast({ flask: ref<FlaskId>(flask), mould: ref<MouldId>(mould), to: placed(tray) });
  const failed = aFailed({ of: ref<ThingId>(mould), note: 'Torn where the sprue comes out' });
  return [
    room,
    cabinet,
    drawer,
    tray,
    period,
    design,
    master,
    mould,
    wax,
    injector,
    flask,
    want,
    counts,
    spare,
    aStudioCorrected({ name: 'The test bench', months: { '3': { lowC: 9, highC: 17 } } }),
    aReceived({ wax: ref<WaxId>(wax) }),
    aWeighed({ wax: ref<WaxId>(wax) }),
    run,
    dressed,
    anInvested({ flask: ref<FlaskId>(flask), waxes: [{ from: ref<InjectedWaxId>(dressed), pieces: 9 }] }),
    poured,
    aCounted({ of: ref<ThingId>(spare) }),
    anIssued({ of: ref<ThingId>(poured) }),
    aMeasured({ of: ref<ThingId>(master) }),
    anInspected({ of: ref<ThingId>(mould) }),
    aMoved({ things: [ref<ThingId>(mould)], to: placed(tray), usual: 'kept' }),
    aCorrected(thingOf(design), { name: 'Dolphin toggle, leaping', keep: 20 }),
    aRetired({ of: ref<ThingId>(counts), reason: 'given away' }),
    failed,
    aWithdrawn(failed),
  ];
}

function ref<T extends string>(entry: { readonly id: string }): T {
  return entry.id as T;
}

function placed(entry: { readonly id: string }): PlaceId {
  return entry.id as PlaceId;
}

function thingOf(entry: Recorded): { id: string; noun: Noun } {
  return { id: entry.id, noun: entry.noun };
}
