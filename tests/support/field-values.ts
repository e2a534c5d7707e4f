import type { ThingId } from '../../src/domain/brand.ts';
import { METALS, ROUTES } from '../../src/domain/design.ts';
import { CASTING_FAULTS, MOULD_FAULTS, WAX_FAULTS } from '../../src/domain/fault.ts';
import { FIELDS } from '../../src/domain/fields.ts';
import { WAX_STATES } from '../../src/domain/injected-wax.ts';
import { INJECTOR_PRESSURES } from '../../src/domain/injector.ts';
import { MASTER_KINDS, MASTER_STATES } from '../../src/domain/master.ts';
import { PURPOSES, RUBBERS } from '../../src/domain/mould.ts';
import type { Noun } from '../../src/domain/noun.ts';
import { PLACE_FOR, PLACE_KINDS } from '../../src/domain/place.ts';
import { ALLOWANCE_KEYS, HEMISPHERES, MONTHS } from '../../src/domain/studio.ts';
import { WAX_PRESSURES, WAX_USES } from '../../src/domain/wax.ts';
import { codeOf } from './builders.ts';

/** Draws of one entry: seeded chance, and the things its device knows. */
export class Draw {
  private readonly next: () => number;
  private readonly known: ReadonlyMap<Noun, readonly ThingId[]>;

  constructor(next: () => number, known: ReadonlyMap<Noun, readonly ThingId[]>) {
    this.next = next;
    this.known = known;
  }

  whole(low: number, high: number): number {
    return low + Math.floor(this.next() * (high - low + 1));
  }

  tenths(low: number, high: number): number {
    return this.whole(low * 10, high * 10) / 10;
  }

  is(likely = 0.5): boolean {
    return this.next() < likely;
  }

  one<T>(list: readonly T[]): T {
    return list[this.whole(0, list.length - 1)] as T;
  }

  some<T>(list: readonly T[], most = 3): T[] {
    return list.filter(() => this.is()).slice(0, most);
  }

  /** A thing of the noun, or undefined while there is none. */
  thing(...nouns: readonly Noun[]): ThingId | undefined {
    const all = nouns.flatMap((noun) => this.known.get(noun) ?? []);
    return all.length > 0 ? this.one(all) : undefined;
  }

  things(most: number, ...nouns: readonly Noun[]): ThingId[] {
    return this.some(
      nouns.flatMap((noun) => this.known.get(noun) ?? []),
      most,
    );
  }

  day(): string {
    return `202${this.whole(2, 5)}-0${this.whole(1, 9)}-${this.whole(10, 28)}`;
  }

  tally(keys: readonly string[]): Record<string, number> {
    return Object.fromEntries(this.some(keys).map((key) => [key, this.whole(1, 9)]));
  }

  words(): string {
    return this.one(['Dolphin', 'Ram’s head', '<b>bold</b>', '“quoted”\nnext line', 'Größe ½', '__proto__', '2024-01-01', '0']);
  }
}

const mm = (draw: Draw) => draw.tenths(1, 400);
const kpa = (draw: Draw) => draw.whole(1, 400);
const hot = (draw: Draw) => draw.tenths(50, 90);
const room = (draw: Draw) => draw.tenths(-10, 40);
const big = (draw: Draw) => draw.whole(1, 5000);
const noun =
  (...nouns: Noun[]) =>
  (draw: Draw) =>
    draw.thing(...nouns);
const nouns =
  (...all: Noun[]) =>
  (draw: Draw) =>
    draw.things(3, ...all);
const of = (list: readonly string[]) => (draw: Draw) => draw.one(list);

type Values = Record<string, (draw: Draw) => unknown>;

/** Values for fields that mean the same for every noun. */
const ANY: Values = {
  name: (draw) => draw.words(),
  note: (draw) => draw.words(),
  also: (draw) => draw.words(),
  size: of(['small', 'large', 'M']),
  design: noun('design'),
  mould: noun('mould'),
  master: noun('master'),
  masters: nouns('master'),
  flask: noun('flask'),
  wax: noun('wax'),
  holds: noun('wax'),
  periods: nouns('period'),
  metal: of(METALS),
  metals: (draw) => draw.some(METALS),
  route: of(ROUTES),
  made: (draw) => draw.day(),
  labelled: (draw) => draw.day(),
  due: (draw) => draw.day(),
  order: (draw) => draw.tenths(-50, 50),
  keep: big,
  pieces: big,
  capacity: big,
  cavities: (draw) => draw.whole(1, 12),
  expectedShots: big,
  shotGrams: mm,
  waxGrams: mm,
  keepGrams: big,
  deliveryDays: (draw) => draw.whole(0, 90),
  lengthMm: mm,
  diameterMm: mm,
  heightMm: mm,
  widthMm: mm,
  doubt: (draw) => {
    const mould = draw.thing('mould');
    return mould && { mould, on: draw.day(), least: draw.whole(0, 3), most: draw.whole(3, 9) };
  },
  box: (draw) => ({ x: draw.whole(0, 900), y: draw.whole(0, 900), w: mm(draw), h: mm(draw) }),
  label: of(['A1', 'B2']),
  in: noun('place'),
  for: of(PLACE_FOR),
  open: (draw) => draw.is(),
  holder: (draw) => draw.words(),
  who: (draw) => draw.words(),
  sort: of(['toggle', 'seal']),
  material: of(['boxwood', 'wax']),
  colour: of(['green', 'violet']),
  behaviour: of(['bends well', 'snaps when cold']),
  use: of(WAX_USES),
  purpose: of(PURPOSES),
  rubber: of(RUBBERS),
  roomLowC: room,
  roomHighC: room,
  injectLowC: hot,
  injectHighC: hot,
  pressureLowKpa: kpa,
  pressureHighKpa: kpa,
  maxKpa: kpa,
  injection: (draw) => ({ waxC: hot(draw), pressureKpa: kpa(draw), holdS: draw.whole(1, 30) }),
  sizes: (draw) => [{ label: 'small', mm: mm(draw) }, { label: 'large' }].filter(() => draw.is()),
};

const BY_NOUN: { readonly [N in Noun]?: Values } = {
  place: { kind: of(PLACE_KINDS) },
  period: { from: (draw) => draw.whole(-900, 0), to: (draw) => draw.whole(1, 1900) },
  master: { kind: of(MASTER_KINDS), state: of(MASTER_STATES), from: nouns('mould', 'master', 'casting') },
  wax: { pressure: of(WAX_PRESSURES) },
  injector: { pressure: of(INJECTOR_PRESSURES) },
  injectedWax: { state: of(WAX_STATES) },
};

/** One field's value; undefined when it would name a thing that is not there yet. */
function valueFor(draw: Draw, of: Noun, field: string): unknown {
  if (field === 'code') return codeOf(of, draw.whole(0, 5000));
  const make = BY_NOUN[of]?.[field] ?? ANY[field];
  if (!make) throw new Error(`no values for the field ${of}.${field}: add some`);
  return make(draw);
}

/** Some fields of a noun, each with a value; with `clearable`, some are cleared. */
export function fieldsFor(draw: Draw, of: Noun, likely: number, clearable = false): Record<string, unknown> {
  const fields: Record<string, unknown> = {};
  for (const field of Object.keys(FIELDS[of])) {
    if (!draw.is(likely)) continue;
    const value = clearable && draw.is(0.2) ? null : valueFor(draw, of, field);
    if (value !== undefined) fields[field] = value;
  }
  return fields;
}

export function studioFieldsFor(draw: Draw): Record<string, unknown> {
  const all = {
    name: draw.words(),
    hemisphere: draw.one(HEMISPHERES),
    months: Object.fromEntries(draw.some(MONTHS).map((month) => [month, { lowC: room(draw), highC: room(draw) }])),
    life: Object.fromEntries(draw.some(RUBBERS).map((rubber) => [rubber, { shots: big(draw) }])),
    allowance: Object.fromEntries(draw.some(ALLOWANCE_KEYS).map((key) => [key, { percent: draw.tenths(0, 9), spread: draw.tenths(1, 3) }])),
    lookDays: draw.whole(1, 400),
    labelAddress: 'https://example.org/keep/',
    usesLinks: draw.is(),
  };
  return Object.fromEntries(Object.entries(all).filter(() => draw.is()));
}

export const FAULTS = { mould: MOULD_FAULTS, wax: WAX_FAULTS, casting: CASTING_FAULTS } as const;
