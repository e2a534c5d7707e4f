import type { Celsius, Code, Day, EntryId, Grams, Kilopascals, Millimetres, Sha256, Year } from '../../src/domain/brand.ts';
import { CLOCK_ZERO, makeEntryId } from '../../src/domain/clock.ts';
import { toBase32 } from '../../src/domain/crockford.ts';
import { type Desk, type DeskStart, makeDesk } from '../../src/domain/desk.ts';
import { makeCode } from '../../src/domain/label.ts';
import { NOUNS, type Noun } from '../../src/domain/noun.ts';
import {
  type Casting,
  contentsOf,
  type Design,
  EMPTY_SHELF,
  type InjectedWax,
  type Injector,
  type Master,
  type Mould,
  type Period,
  type Place,
  type Shelf,
  type Thing,
  type Things,
  type Wax,
} from '../../src/domain/shelf.ts';
import { chance } from './chance.ts';

/** 5 March 2024, 08:00 UTC. */
export const START_MS = 1_709_625_600_000;
export const START_DAY = '2024-03-05' as Day;
export const DEVICE = 'TEST00';

let made = 0;

/** The id of something that happened `minutes` after the start. */
export function idAt(minutes: number, device = DEVICE): EntryId {
  return makeEntryId({ ms: START_MS + minutes * 60_000, count: 0 }, device);
}

/** An id not given out before in this test file, a minute later than the one before. */
export function nextId<T extends string = EntryId>(): T {
  made += 1;
  return idAt(made) as string as T;
}

export function day(text: string): Day {
  return text as Day;
}

/** A picture's name, a different one for each number. */
export function sha(n: number): Sha256 {
  return n.toString(16).padStart(64, '0') as Sha256;
}

/** The n-th code that can be drawn for a noun. */
export function codeOf(noun: Noun, n: number): Code {
  for (let body = n * 7; ; body++) {
    const code = makeCode(noun, toBase32(body, 6));
    if (code) return code;
  }
}

/** What every builder gives its thing; `since` and the id differ from thing to thing. */
function begun<T extends string>() {
  return { id: nextId<T>(), since: START_DAY };
}

export function aPlace(over: Partial<Place> = {}): Place {
  return {
    ...begun<Place['id']>(),
    noun: 'place',
    name: 'Drawer A2',
    kind: 'drawer',
    capacity: 61,
    widthMm: 403,
    heightMm: 117,
    order: 2,
    ...over,
  };
}

export function aPeriod(over: Partial<Period> = {}): Period {
  return { ...begun<Period['id']>(), noun: 'period', name: 'Hellenistic', from: -322 as Year, to: -30 as Year, order: 3, ...over };
}

export function aDesign(over: Partial<Design> = {}): Design {
  const sizes = [
    { label: 'small', mm: 14.5 as Millimetres },
    { label: 'large', mm: 22.5 as Millimetres },
  ];
  return {
    ...begun<Design['id']>(),
    noun: 'design',
    name: 'Dolphin toggle',
    sort: 'toggle',
    sizes,
    waxGrams: 1.9 as Grams,
    keep: 12,
    ...over,
  };
}

export function aMaster(over: Partial<Master> = {}): Master {
  const since = begun<Master['id']>();
  return {
    ...since,
    noun: 'master',
    name: 'Dolphin, carved',
    kind: 'carved',
    state: 'sound',
    size: 'small',
    lengthMm: 15.2 as Millimetres,
    ...over,
  };
}

export function aMould(over: Partial<Mould> = {}): Mould {
  return {
    ...begun<Mould['id']>(),
    noun: 'mould',
    name: 'Dolphin 1',
    purpose: 'production',
    rubber: 'natural',
    size: 'small',
    cavities: 4,
    made: day('2023-11-09'),
    shotGrams: 8.4 as Grams,
    shots: 137,
    good: 501,
    rejects: 47,
    ...over,
  };
}

export function aWax(over: Partial<Wax> = {}): Wax {
  return {
    ...begun<Wax['id']>(),
    noun: 'wax',
    name: 'Green',
    colour: 'green',
    use: 'injecting',
    pressure: 'any',
    roomLowC: 13 as Celsius,
    roomHighC: 27 as Celsius,
    injectLowC: 63 as Celsius,
    injectHighC: 71 as Celsius,
    deliveryDays: 18,
    keepGrams: 750 as Grams,
    grams: 2310,
    ...over,
  };
}

export function anInjector(over: Partial<Injector> = {}): Injector {
  return { ...begun<Injector['id']>(), noun: 'injector', name: 'Big pot', pressure: 'low', maxKpa: 145 as Kilopascals, ...over };
}

export function anInjectedWax(over: Partial<InjectedWax> = {}): InjectedWax {
  return { ...begun<InjectedWax['id']>(), noun: 'injectedWax', size: 'small', state: 'raw', pieces: 33, ...over };
}

export function aCasting(over: Partial<Casting> = {}): Casting {
  return { ...begun<Casting['id']>(), noun: 'casting', metal: 'bronze', size: 'small', pieces: 26, ...over };
}

/** A shelf that holds these things; its contents follow from where they say they stand. */
export function aShelf(things: readonly Thing[] = [], over: Partial<Shelf> = {}): Shelf {
  const byNoun = Object.fromEntries(
    NOUNS.map((noun) => [noun, new Map(things.filter((thing) => thing.noun === noun).map((thing) => [thing.id, thing]))]),
  ) as unknown as Things;
  const last = things.reduce<EntryId | ''>((newest, { id }) => (id > newest ? (id as string as EntryId) : newest), '');
  return { ...EMPTY_SHELF, things: byNoun, contents: contentsOf(byNoun), last, entries: things.length, ...over };
}

/** A desk whose time, ids and codes are the same in every run. Its entries come after everything built so far. */
export function aDesk(over: Partial<DeskStart> = {}): Desk {
  const draw = chance(29);
  return makeDesk({
    today: START_DAY,
    nowMs: START_MS + (made + 1) * 60_000,
    clock: CLOCK_ZERO,
    device: DEVICE,
    bytes: (count) => Uint8Array.from({ length: count }, () => Math.floor(draw() * 256)),
    isTaken: () => false,
    ...over,
  });
}
