import fc from 'fast-check';
import type { EntryId, ThingId } from '../../src/domain/brand.ts';
import { CLOCK_ZERO, type Clock, clockOf, makeEntryId, tick } from '../../src/domain/clock.ts';
import { METALS } from '../../src/domain/design.ts';
import { ENTRY_KINDS, type Entry, type EntryKind, FLAG_KINDS, ISSUE_REASONS } from '../../src/domain/entry.ts';
import { GRADES } from '../../src/domain/grade.ts';
import { WAX_STATES } from '../../src/domain/injected-wax.ts';
import { NOUNS, type Noun } from '../../src/domain/noun.ts';
import { parseEntry } from '../../src/domain/parse-entry.ts';
import { isProblem } from '../../src/domain/problem.ts';
import { RETIREMENTS } from '../../src/domain/retirement.ts';
import { START_MS, sha } from './builders.ts';
import { chance } from './chance.ts';
import { Draw, FAULTS, fieldsFor, studioFieldsFor } from './field-values.ts';

const DEVICES = ['AAAAAA', 'BBBBBB', 'CCCCCC'] as const;

/** One thing that happens: on which device, whether as a further step of that device's last action, and after hearing of the others. */
interface Turn {
  readonly kind: EntryKind;
  readonly device: number;
  readonly isStep: boolean;
  readonly isHeard: boolean;
  readonly gapMs: number;
  readonly seed: number;
}

/** What one device knows and where its clock stands; it can only speak of what it has heard of. */
interface Device {
  readonly entries: Map<EntryId, Entry>;
  clock: Clock;
  action: EntryId | undefined;
}

function thingsOf(entries: Iterable<Entry>): Map<Noun, ThingId[]> {
  const things = new Map<Noun, ThingId[]>(NOUNS.map((noun) => [noun, []]));
  for (const entry of entries) {
    const id = entry.id as string as ThingId;
    if (entry.kind === 'recorded') things.get(entry.noun)?.push(id);
    if ((entry.kind === 'injected' || entry.kind === 'dressed') && !entry.onto && entry.good > 0) things.get('injectedWax')?.push(id);
    if (entry.kind === 'cast' && !entry.onto) things.get('casting')?.push(id);
  }
  return things;
}

/** What an entry of each kind says; undefined fields are left out, and so is the entry when a field it needs is. */
function bodyOf(draw: Draw, kind: EntryKind, entries: readonly Entry[]): Record<string, unknown> {
  const any = () => draw.thing(...NOUNS);
  const grams = draw.tenths(1, 900);
  const to = draw.is(0.7) ? draw.thing('place') : undefined;
  switch (kind) {
    case 'recorded': {
      const noun = draw.one(NOUNS);
      return {
        noun,
        fields: fieldsFor(draw, noun, 0.5),
        at: to,
        pieces: draw.is() ? draw.whole(0, 60) : undefined,
        grams: draw.is() ? grams : undefined,
      };
    }
    case 'corrected': {
      if (draw.is(0.15)) return { noun: 'studio', fields: studioFieldsFor(draw) };
      const noun = draw.one(NOUNS);
      const aside = draw.is(0.3) ? { [draw.one(FLAG_KINDS)]: draw.is(0.3) ? null : draw.day() } : undefined;
      const without = draw.is(0.2) ? [sha(draw.whole(1, 9)), sha(draw.whole(1, 9))] : undefined;
      const first = draw.is(0.2) ? sha(draw.whole(1, 9)) : undefined;
      return { noun, of: draw.thing(noun), fields: fieldsFor(draw, noun, 0.2, true), aside, without, first };
    }
    case 'moved': {
      const things = draw.things(4, ...NOUNS).filter((thing) => thing !== to);
      return { things, to, until: draw.is(0.2) ? draw.day() : undefined, usual: draw.is() ? draw.one(['kept', 'changed']) : undefined };
    }
    case 'injected': {
      const shots = draw.whole(1, 30);
      const onto = draw.is(0.3) ? draw.thing('injectedWax') : undefined;
      const settings = draw.is() ? { waxC: draw.tenths(50, 90), pressureKpa: draw.whole(10, 200), holdS: draw.whole(1, 20) } : {};
      const made = {
        mould: draw.thing('mould'),
        shots,
        good: draw.whole(0, shots),
        rejects: draw.is() ? draw.tally(FAULTS.wax) : undefined,
      };
      return {
        ...made,
        ...settings,
        wax: draw.thing('wax'),
        injector: draw.thing('injector'),
        grams: draw.is() ? grams : undefined,
        onto,
        to,
      };
    }
    case 'inspected':
      return {
        of: any(),
        grade: draw.one(GRADES),
        faults: draw.is() ? draw.some(FAULTS.mould) : undefined,
        next: draw.is() ? draw.day() : undefined,
      };
    case 'failed':
      return { of: any(), faults: draw.some(FAULTS.mould) };
    case 'retired':
      return { of: any(), reason: draw.one(RETIREMENTS) };
    case 'received':
      return { wax: draw.thing('wax'), grams, lot: draw.is() ? 'lot 88' : undefined };
    case 'weighed':
      return { wax: draw.thing('wax'), grams };
    case 'counted':
      return { of: any(), pieces: draw.whole(0, 90) };
    case 'dressed': {
      const onto = draw.is(0.3) ? draw.thing('injectedWax') : undefined;
      const state = draw.is(0.2) ? draw.one(WAX_STATES) : undefined;
      return { from: draw.thing('injectedWax'), good: draw.whole(0, 9), scrapped: draw.whole(0, 3), onto, to, state };
    }
    case 'invested': {
      const waxes = draw.things(3, 'injectedWax').map((from) => ({ from, pieces: draw.whole(1, 9) }));
      return {
        flask: draw.thing('flask'),
        waxes,
        powderGrams: draw.is() ? grams : undefined,
        waterGrams: draw.is() ? grams / 2 : undefined,
      };
    }
    case 'cast': {
      const onto = draw.is(0.3) ? draw.thing('casting') : undefined;
      const from = { flask: draw.is() ? draw.thing('flask') : undefined, mould: draw.is() ? draw.thing('mould') : undefined };
      const pieces = { sound: draw.whole(0, 9), scrap: draw.is() ? draw.tally(FAULTS.casting) : undefined };
      return {
        ...from,
        ...pieces,
        metal: draw.one(METALS),
        design: draw.thing('design'),
        metalGrams: draw.is() ? grams : undefined,
        onto,
        to,
      };
    }
    case 'measured':
      return {
        of: any(),
        sizes: draw.is() ? draw.some(['length', 'Length', 'width', 'band']).map((name) => ({ name, mm: draw.tenths(1, 90) })) : undefined,
        grams: draw.is() ? grams : undefined,
      };
    case 'issued':
      return {
        of: any(),
        reason: draw.one(ISSUE_REASONS),
        pieces: draw.is() ? draw.whole(1, 9) : undefined,
        grams: draw.is() ? grams : undefined,
      };
    case 'withdrawn':
      return { entry: entries.length > 0 ? draw.one(entries.slice(-12)).id : undefined };
  }
}

function happen(devices: readonly Device[], turn: Turn, nowMs: number): Entry | undefined {
  const device = devices[turn.device] as Device;
  if (turn.isHeard) {
    device.action = undefined;
    for (const other of devices) {
      for (const entry of other.entries.values()) device.entries.set(entry.id, entry);
      // As a shelf's newest id does it: what comes next is reckoned from the later of both.
      const { ms, count } = other.clock;
      if (ms > device.clock.ms || (ms === device.clock.ms && count > device.clock.count)) device.clock = other.clock;
    }
  }
  const entries = [...device.entries.values()].sort((a, b) => (a.id < b.id ? -1 : 1));
  const draw = new Draw(chance(turn.seed), thingsOf(entries));
  const step = turn.isStep ? device.action : undefined;
  const older = step === undefined ? entries : entries.filter((entry) => entry.id < step);
  const clock = tick(device.clock, nowMs);
  const id = makeEntryId(clock, DEVICES[turn.device] as string);
  const extra = { by: draw.is(0.1) ? 'Ines' : undefined, note: draw.is(0.2) ? draw.words() : undefined };
  const pictures = draw.is(0.1) ? [sha(draw.whole(1, 9))] : undefined;
  const raw = { kind: turn.kind, id, on: draw.day(), step, ...extra, pictures, ...bodyOf(draw, turn.kind, older) };
  const entry = parseEntry(JSON.parse(JSON.stringify(raw)));
  // What needs a thing there is none of yet, or a place in itself, does not happen; anything else refused is a fault of this file.
  if (isProblem(entry)) {
    if (/ is missing\.$| inside itself\.$/.test(entry.says)) return undefined;
    throw new Error(`${entry.says} ${JSON.stringify(raw)}`);
  }
  device.clock = clock;
  device.action = step ?? id;
  device.entries.set(id, entry);
  return entry;
}

function play(turns: readonly Turn[]): Entry[] {
  const devices: Device[] = DEVICES.map(() => ({ entries: new Map(), clock: CLOCK_ZERO, action: undefined }));
  // Their wall clocks do not agree.
  const skewMs = [0, -90_000, 45_000];
  let nowMs = START_MS;
  const journal: Entry[] = [];
  for (const turn of turns) {
    nowMs += turn.gapMs;
    const entry = happen(devices, turn, nowMs + (skewMs[turn.device] as number));
    if (entry) journal.push(entry);
  }
  return journal;
}

const kinds = fc.oneof(
  { weight: 5, arbitrary: fc.constant<EntryKind>('recorded') },
  { weight: 2, arbitrary: fc.constantFrom<EntryKind>('moved', 'corrected', 'withdrawn') },
  { weight: 8, arbitrary: fc.constantFrom<EntryKind>(...ENTRY_KINDS) },
);

/**
 * Journals of up to `most` entries as three devices with unlike clocks would write them: all nouns, all kinds, taking-backs of
 * anything, actions of several steps. Entries come in the order they happened, which is not always that of their ids.
 */
export function histories(most = 60): fc.Arbitrary<Entry[]> {
  const turn = fc.record({
    kind: kinds,
    device: fc.nat({ max: DEVICES.length - 1 }),
    isStep: fc.nat({ max: 5 }).map((n) => n === 5),
    isHeard: fc.nat({ max: 2 }).map((n) => n > 0),
    gapMs: fc.constantFrom(0, 0, 1, 40_000, 3_600_000),
    seed: fc.nat({ max: 1_000_000 }),
  });
  return fc.array(turn, { minLength: 1, maxLength: most, size: 'max' }).map(play);
}

/** An entry's id that comes after all of these. */
export function idAfter(entries: readonly Entry[], device = 'ZZZZZZ'): EntryId {
  const newest =
    entries
      .map((entry) => entry.id)
      .sort()
      .at(-1) ?? makeEntryId({ ms: START_MS, count: 0 }, device);
  return makeEntryId(tick(clockOf(newest), 0), device);
}
