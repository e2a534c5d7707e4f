import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { writeNumber, writeSizes } from '../../../src/domain/csv/exact-cell.ts';
import { guessColumns, guessTarget } from '../../../src/domain/csv/guess.ts';
import { knownOf } from '../../../src/domain/csv/known.ts';
import { readNamed, writeNamed } from '../../../src/domain/csv/named.ts';
import { decimalMarkOf, numberCell } from '../../../src/domain/csv/number-cell.ts';
import type { Reading } from '../../../src/domain/csv/plan.ts';
import { sizesCell } from '../../../src/domain/csv/sizes-cell.ts';
import { studioLists } from '../../../src/domain/csv/studio-lists.ts';
import { TARGETS, type Target } from '../../../src/domain/csv/targets.ts';
import { guardedWhole, unguarded } from '../../../src/domain/csv/write.ts';
import { METALS, ROUTES } from '../../../src/domain/design.ts';
import type { Entry } from '../../../src/domain/entry.ts';
import { FIELDS } from '../../../src/domain/fields.ts';
import { foldAll } from '../../../src/domain/fold.ts';
import { MASTER_KINDS, MASTER_STATES } from '../../../src/domain/master.ts';
import { PURPOSES, RUBBERS } from '../../../src/domain/mould.ts';
import { PLACE_FOR, PLACE_KINDS } from '../../../src/domain/place.ts';
import { REASONS } from '../../../src/domain/retirement.ts';
import { EMPTY_SHELF, type Shelf, type Thing, thingOf } from '../../../src/domain/shelf.ts';
import { WAX_PRESSURES, WAX_USES } from '../../../src/domain/wax.ts';
import { respelt } from '../../../src/ui/words.ts';
import { shelf as demoShelf } from '../../demo-data/read-demo.ts';
import { codeOf } from '../../support/builders.ts';
import { entriesOfPlan, IMPORT_DAY, planImport, tableOf } from '../../support/import.ts';
import { idOf, type Made, shelfOf } from '../../support/shelf-of.ts';

const TEXTS = [
  '=1+1',
  '-',
  '-5',
  '+x',
  '@sum',
  'none',
  '?',
  "'none",
  "'",
  'He said "no"',
  'a, b; c/d|e',
  'x [DABC] y',
  'Ram’s  head',
  'rams head',
  'two\nlines',
  '  ',
  '1,5',
  '\u202eoverturned',
  'Größe ½',
  '🜚',
  'sep=;',
  '“',
  '18 mm',
  'M = 4 mm',
  '2024-01-01',
  'Cabinet 3 › B',
  '__proto__',
];
const words = (max: number) =>
  fc
    .oneof(fc.constantFrom(...TEXTS), fc.string({ maxLength: 20 }), fc.string({ unit: 'grapheme', maxLength: 12 }))
    .map((each) =>
      each
        .replace(/(?![\t\n])\p{Cc}|\p{Cs}/gu, '')
        .trim()
        .slice(0, max)
        .trim(),
    )
    .filter((each) => each !== '');
const figure = (low: number, high: number) =>
  fc
    .oneof(
      fc.double({ min: low, max: high, noNaN: true }),
      fc.integer({ min: Math.ceil(low), max: Math.floor(high) }),
      fc.constantFrom(...[1.234, 1000.5, 0.001, 31.1034768, 25.4].filter((each) => each >= low && each <= high)),
    )
    .map((each) => (each === 0 ? 0 : each));
const whole = (low: number, high: number) => fc.integer({ min: low, max: high });
const someOf = (list: readonly string[]) => fc.uniqueArray(fc.constantFrom(...list), { minLength: 1 });
const day = fc
  .date({ min: new Date('1950-01-01'), max: new Date('2026-11-01'), noInvalidDate: true })
  .map((each) => each.toISOString().slice(0, 10));
const ids = (noun: string, count: number) => Array.from({ length: count }, (_, i) => idOf(`${noun}${i}`));
const oneId = (noun: string) => fc.constantFrom(...ids(noun, 3));
const someIds = (noun: string) => fc.uniqueArray(fc.constantFrom(...ids(noun, 3)), { minLength: 1 });

/** Values for each field that a list carries. */
const VALUES: Readonly<Record<Target, Readonly<Record<string, fc.Arbitrary<unknown>>>>> = {
  place: {
    name: words(120),
    kind: fc.constantFrom(...PLACE_KINDS),
    label: words(24),
    periods: someIds('period'),
    for: fc.constantFrom(...PLACE_FOR),
    capacity: whole(0, 100_000),
    widthMm: figure(1, 20_000),
    heightMm: figure(1, 20_000),
    box: fc.record({ x: figure(0, 20_000), y: figure(0, 20_000), w: figure(1, 20_000), h: figure(1, 20_000) }),
    order: figure(-1e6, 1e6),
    holder: words(120),
    open: fc.boolean(),
    labelled: day,
    note: words(200),
  },
  design: {
    name: words(120),
    sort: words(60),
    periods: someIds('period'),
    sizes: fc.uniqueArray(fc.record({ label: words(40), mm: figure(0.1, 5000) }, { requiredKeys: ['label'] }), {
      minLength: 1,
      maxLength: 5,
      selector: ({ label }) => label,
    }),
    metals: someOf(METALS),
    route: fc.constantFrom(...ROUTES),
    waxGrams: figure(0, 100_000),
    keep: whole(0, 1_000_000),
    also: words(200),
    labelled: day,
    note: words(200),
  },
  master: {
    name: words(120),
    design: oneId('design'),
    size: words(40),
    kind: fc.constantFrom(...MASTER_KINDS),
    state: fc.constantFrom(...MASTER_STATES),
    material: words(60),
    made: day,
    lengthMm: figure(0.1, 5000),
    labelled: day,
    note: words(200),
  },
  wax: {
    name: words(120),
    colour: words(40),
    behaviour: words(200),
    use: fc.constantFrom(...WAX_USES),
    pressure: fc.constantFrom(...WAX_PRESSURES),
    roomLowC: figure(-30, 60),
    roomHighC: figure(-30, 60),
    injectLowC: figure(20, 150),
    injectHighC: figure(20, 150),
    pressureLowKpa: figure(0, 1000),
    pressureHighKpa: figure(0, 1000),
    deliveryDays: whole(0, 730),
    keepGrams: figure(0, 10_000_000),
    labelled: day,
    note: words(200),
  },
  mould: {
    name: words(120),
    design: oneId('design'),
    size: words(40),
    master: oneId('master'),
    masters: someIds('master'),
    purpose: fc.constantFrom(...PURPOSES),
    rubber: fc.constantFrom(...RUBBERS),
    cavities: whole(1, 500),
    made: day,
    shotGrams: figure(0, 100_000),
    wax: oneId('wax'),
    injection: fc
      .record({ waxC: figure(20, 150), pressureKpa: figure(0, 1000), holdS: figure(0, 600) }, { requiredKeys: [] })
      .filter((each) => Object.keys(each).length > 0),
    expectedShots: whole(1, 1_000_000),
    labelled: day,
    note: words(200),
  },
};
/** What the lists leave to the backup. */
const LEFT_OUT: Readonly<Partial<Record<Target, readonly string[]>>> = { master: ['from'] };

const thing = (noun: Target, i: number): fc.Arbitrary<Made> => {
  const above = i === 0 ? fc.constant(undefined) : fc.option(fc.constantFrom(...ids('place', i)), { nil: undefined });
  return fc
    .record({
      fields: fc.record(VALUES[noun], { requiredKeys: [] }),
      above,
      at: fc.option(fc.constantFrom('place0', 'place1', 'place2'), { nil: undefined }),
      retired: fc.option(fc.record({ on: day, reason: fc.constantFrom(...REASONS[noun]) }), { nil: undefined }),
      grams: figure(0.5, 90_000),
      shots: whole(0, 1900),
    })
    .map(({ fields, above: around, at, retired, grams, shots }) => ({
      noun,
      is: `${noun}${i}`,
      ...fields,
      code: codeOf(noun, i + 1),
      ...(noun === 'place' && around ? { in: around } : {}),
      ...(at && ['master', 'mould', 'wax'].includes(noun) ? { at } : {}),
      ...(retired ? { retired } : {}),
      ...(noun === 'wax' ? { grams } : {}),
      ...(noun === 'mould' ? { shots } : {}),
    }));
};
const shelves = fc
  .tuple(fc.uniqueArray(words(60), { minLength: 3, maxLength: 3 }), ...TARGETS.flatMap((noun) => [0, 1, 2].map((i) => thing(noun, i))))
  .map(([periods, ...things]) => shelfOf([...periods.map((name, i) => ({ noun: 'period' as const, is: `period${i}`, name })), ...things]));

const american = (text: string) => respelt(text, []);

/** How columns with such headings are guessed. */
const guessed = new Map<string, Reading>();
function readingOf(headings: readonly string[]): Reading {
  const key = headings.join();
  const known = guessed.get(key);
  if (known) return known;
  const target = guessTarget(headings, TARGETS);
  const reading = { target, mapping: guessColumns(headings, target), hasHeadings: true };
  guessed.set(key, reading);
  return reading;
}

/** Brings the numbered lists in, one after the other. */
function broughtIn(lists: ReturnType<typeof studioLists>, start: Shelf): { readonly shelf: Shelf; readonly states: readonly string[] } {
  let shelf = start;
  const entries: Entry[] = [];
  const states: string[] = [];
  for (const { text } of lists.filter((list) => /^\d/.test(list.name))) {
    const table = tableOf(text);
    const plan = planImport(knownOf(shelf), table, readingOf(table.rows[0]?.cells ?? []), IMPORT_DAY);
    states.push(...plan.rows.map((row) => (row.state === 'unreadable' ? `unreadable: ${row.says.join(' ')}` : row.state)));
    entries.push(...entriesOfPlan(plan, shelf));
    if (start === EMPTY_SHELF) shelf = foldAll(entries);
  }
  return { shelf, states };
}

/** A thing's fields with what they name told by code or name, as far as the lists carry them. */
function told(shelf: Shelf, each: Thing): Record<string, unknown> {
  const call = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(call);
    const other = typeof value === 'string' ? thingOf(shelf, value) : undefined;
    return other ? (other.noun === 'period' ? other.name : other.code) : value;
  };
  const all = each as unknown as Record<string, unknown>;
  const keys = Object.keys(FIELDS[each.noun]).filter((key) => !LEFT_OUT[each.noun as Target]?.includes(key) && all[key] !== undefined);
  return {
    ...Object.fromEntries(keys.map((key) => [key, call(all[key])])),
    at: call(each.at),
    retired: each.retired,
    ...('grams' in each ? { grams: each.grams } : {}),
    ...('shots' in each ? { shots: each.shots } : {}),
  };
}

const toldAll = (shelf: Shelf) =>
  TARGETS.flatMap((noun) => [...(shelf.things[noun] as ReadonlyMap<string, Thing>).values()].map((each) => told(shelf, each))).sort(
    (a, b) => (String(a['code']) < String(b['code']) ? -1 : 1),
  );

describe('the whole studio as lists', () => {
  test('every field of the five nouns is carried, or said to be left out', () => {
    for (const noun of TARGETS)
      expect([...Object.keys(VALUES[noun]), 'code', ...(noun === 'place' ? ['in'] : []), ...(LEFT_OUT[noun] ?? [])].sort()).toEqual(
        Object.keys(FIELDS[noun]).sort(),
      );
  });

  test.each([
    ['mould, colour', (text: string) => text],
    ['mold, color', american],
  ])('the headings are known again, each for its own column, spelt as in %s', (_, spell) => {
    for (const { name, text } of studioLists(shelfOf([]), spell)) {
      const headings = tableOf(text).rows[0]?.cells ?? [];
      if (!/^\d/.test(name)) continue;
      const { target, mapping } = readingOf(headings);
      expect(name).toMatch(new RegExp(`^\\d-${spell(target)}e?s\\.csv$`));
      expect(mapping).not.toContain(null);
      expect(new Set(mapping).size).toBe(headings.length);
    }
  });

  test('brought into an empty studio gives the same things', () => {
    fc.assert(
      fc.property(shelves, (shelf) => {
        const { shelf: back, states } = broughtIn(studioLists(shelf), EMPTY_SHELF);
        expect(states.filter((state) => state !== 'new' && state !== 'doubtful')).toEqual([]);
        expect(toldAll(back)).toEqual(toldAll(shelf));
      }),
      { numRuns: 60 },
    );
  });

  test('brought into the same studio changes nothing', () => {
    fc.assert(
      fc.property(shelves, (shelf) => {
        expect(new Set(broughtIn(studioLists(shelf), shelf).states)).toEqual(new Set(['exists']));
      }),
      { numRuns: 30 },
    );
  });
});

test.each([
  ['mould, colour', (text: string) => text],
  ['mold, color', american],
])('the demo studio comes back whole, and into itself changes nothing, with headings spelt as in %s', (_, spell) => {
  const shelf = demoShelf;
  const lists = studioLists(shelf, spell);
  const headings = lists.map(({ name, text }) => name + text.slice(0, text.indexOf('\n'))).join();
  expect(/mould|colour/i.test(headings)).toBe(spell !== american);
  expect(new Set(broughtIn(lists, shelf).states)).toEqual(new Set(['exists']));
  const { shelf: back, states } = broughtIn(lists, EMPTY_SHELF);
  expect(states.filter((state) => state !== 'new' && state !== 'doubtful')).toEqual([]);
  for (const noun of TARGETS) expect(back.things[noun].size).toBe(shelf.things[noun].size);
  expect(toldAll(back)).toEqual(toldAll(shelf));
});

test('things without label codes are known again by what they are', () => {
  const made: Made[] = [
    { noun: 'period', is: 'e', name: 'La Tène' },
    { noun: 'place', is: 'cab', name: 'Cabinet A', kind: 'cabinet' },
    { noun: 'place', is: 'a1', name: 'A1', kind: 'drawer', in: idOf('cab'), periods: [idOf('e')] },
    { noun: 'design', is: 'd', name: 'Hare toggle', periods: [idOf('e')], sizes: [{ label: 'small', mm: 18 }] },
    { noun: 'master', is: 'm', design: idOf('d'), at: 'a1' },
    { noun: 'mould', is: 'k', design: idOf('d'), size: 'small', at: 'a1' },
    { noun: 'mould', is: 'l', design: idOf('d'), size: 'small', at: 'a1' },
    { noun: 'wax', is: 'w', name: 'Amber' },
  ];
  const shelf = shelfOf(made);
  expect(new Set(broughtIn(studioLists(shelf), shelf).states)).toEqual(new Set(['exists']));
  const { shelf: back } = broughtIn(studioLists(shelf), EMPTY_SHELF);
  for (const noun of [...TARGETS, 'period' as const]) expect(back.things[noun].size).toBe(shelf.things[noun].size);
  const [mould] = back.things.mould.values();
  expect(back.things.place.get(mould?.at as never)?.name).toBe('A1');
});

describe('cells that are read back as they were', () => {
  test('figures, whatever decimals the rest of the list has', () => {
    fc.assert(
      fc.property(figure(-1e6, 1e6), fc.constantFrom(',' as const, '.' as const, undefined), (value, decimal) => {
        expect(numberCell('order')(writeNumber(value), { today: '2026-01-01' as never, decimal })).toEqual({ value });
      }),
    );
    expect(decimalMarkOf([writeNumber(1234.5)])).toBe('.');
    expect([0, 5, 1.5, 1.234, 1e-7, 2e20, -0.5].map(writeNumber)).toEqual([
      '0',
      '5',
      '1.5',
      '1.2340',
      '0.0000001',
      '200000000000000000000',
      '-0.5',
    ]);
  });
  test('names with or without codes', () => {
    const named = fc.record(
      { name: words(40), code: fc.constantFrom(codeOf('design', 1), codeOf('design', 2)) },
      { requiredKeys: ['code'] },
    );
    fc.assert(
      fc.property(fc.array(named, { minLength: 1, maxLength: 4 }), (list) => {
        expect(readNamed(writeNamed(list))).toEqual(list);
      }),
    );
    expect(writeNamed([{ name: 'Owl seal', code: 'D' }, { name: 'a; b' }])).toBe('Owl seal [D]; "a; b"');
    for (const cell of ['Owl seal', 'Minoan; La Tène', 'Ring [large]', 'A "B" C', '']) expect(readNamed(cell)).toBeUndefined();
  });
  test('sizes', () => {
    expect(writeSizes([{ label: 'M', mm: 24 }, { label: 'L' }])).toBe('M 24 mm; L');
    expect(writeSizes([{ label: '18 mm' }])).toBe('"18 mm"');
    fc.assert(
      fc.property(VALUES.design['sizes'] as fc.Arbitrary<{ label: string }[]>, (sizes) => {
        expect(sizesCell(writeSizes(sizes))).toEqual({ value: sizes });
      }),
    );
  });
  test('what a spreadsheet would run and what a list would take for nothing', () => {
    fc.assert(
      fc.property(fc.oneof(fc.constantFrom(...TEXTS), fc.string()), (text) => {
        expect(unguarded(guardedWhole(text))).toBe(text);
      }),
    );
    for (const text of ['=1', '+1', '-1', '@a', '\ta', '\ra', '＝1', 'none', "'-1"]) expect(guardedWhole(text)).toBe(`'${text}`);
  });
});
