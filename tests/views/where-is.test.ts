import { expect, test } from 'vitest';
import type { Year } from '../../src/domain/brand.ts';
import { namesText } from '../../src/domain/nesting.ts';
import { ANSWERS_MAX, allPeriods, rehearsals, whereIs } from '../../src/views/where-is.ts';
import { aDesign, aMaster, aMould, aPeriod, aPlace, aShelf, codeOf } from '../support/builders.ts';

const minoan = aPeriod({ name: 'Minoan', from: -2699 as Year, to: -1099 as Year, order: 1 });
const hellenistic = aPeriod({ name: 'Hellenistic', from: -322 as Year, to: -30 as Year, order: 2 });
const chest = aPlace({ kind: 'cabinet', name: 'Plan chest' });
const kept = aPlace({ label: 'A3', in: chest.id, periods: [minoan.id] });
const other = aPlace({ label: 'B1', in: chest.id });
const bench = aPlace({ kind: 'box', name: 'Bench box' });
const bull = aDesign({ name: 'Bull seal', periods: [minoan.id] });
const code = codeOf('mould', 5);
const mould = aMould({ name: 'Bull seal 2', design: bull.id, at: kept.id, code });
const master = aMaster({ name: 'Bull, carved', design: bull.id, at: bench.id });
const shelf = aShelf([
  minoan,
  hellenistic,
  chest,
  kept,
  other,
  bench,
  bull,
  mould,
  master,
  aMould({ name: 'Bull seal 1', design: bull.id, at: other.id }),
  aMould({ name: 'Bull seal 3', design: bull.id, at: other.id }),
]);

test('four letters of a period show it with the drawers that keep it, then those where things of it stand', () => {
  const { periods, corrections } = whereIs(shelf, 'mino');
  expect(corrections).toEqual([]);
  expect(periods).toHaveLength(1);
  expect(periods[0]).toMatchObject({ name: 'Minoan', span: '2700–1100 BC' });
  expect(periods[0]?.places.map(({ names, isAssigned, pieces, front }) => [namesText(names), isAssigned, pieces, front?.drawer])).toEqual([
    ['Plan chest › A3', true, 1, kept.id],
    ['Plan chest › B1', false, 2, other.id],
    ['Bench box', false, 1, undefined],
  ]);
});

test('a year gives the periods that hold it, and is said in words', () => {
  const { periods, years, corrections } = whereIs(shelf, 'c. 150 BC');
  expect([periods.map(({ name }) => name), years, corrections]).toEqual([['Hellenistic'], 'In 150 BC:', []]);
  expect(whereIs(shelf, '1250')).toMatchObject({ periods: [], years: 'No period of yours holds 1250.' });
});

test.each([
  ['12th century BC', ['Minoan'], '1 period overlaps the 12th century BC:'],
  ['the fourth century bc', ['Hellenistic'], '1 period overlaps the 4th century BC:'],
  ['350-320 BC', ['Hellenistic'], '1 period overlaps 350–320 BC:'],
  ['1100 BC to 323 BC', ['Hellenistic', 'Minoan'], '2 periods overlap 1100–323 BC:'],
  ['8th century BC', [], 'No period of yours overlaps the 8th century BC.'],
  ['13th century', [], 'No period of yours overlaps the 13th century.'],
  ['1250s', [], 'No period of yours overlaps the 1250s.'],
])('“%s” gives the periods that overlap it', (typed, names, says) => {
  const { periods, years } = whereIs(shelf, typed);
  expect([periods.map(({ name }) => name), years]).toEqual([names, says]);
});

test('a period that is named as a year but has no years is not contradicted by what is said above it', () => {
  const named = aShelf([aPeriod({ name: 'c. 1800 BC' }), aPeriod({ name: '8th century BC' }), minoan]);
  expect(whereIs(aShelf([aPeriod({ name: 'c. 1800 BC' })]), '1800 BC')).toMatchObject({
    periods: [{ name: 'c. 1800 BC' }],
    years: 'No period’s years hold 1800 BC; found by name or note:',
  });
  expect(whereIs(named, '8th century BC').years).toBe('No period’s years overlap the 8th century BC; found by name or note:');
  expect(whereIs(named, '1800 BC')).toMatchObject({ periods: [{ name: 'Minoan' }, { name: 'c. 1800 BC' }], years: 'In 1800 BC:' });
});

test('all periods of a long span are shown, not the first few', () => {
  const many = aShelf(
    Array.from({ length: 11 }, (_, at) => aPeriod({ name: `Period ${at}`, from: (at * 10) as Year, to: (at * 10 + 25) as Year })),
  );
  const { periods, years } = whereIs(many, '1st century');
  expect([periods.length, years]).toEqual([11, '11 periods overlap the 1st century:']);
});

test('a thing is answered with its drawer on the front', () => {
  const [first] = whereIs(shelf, 'bull seal 2').things;
  expect(first).toMatchObject({ id: mould.id, place: 'Plan chest › A3', front: { cabinet: chest.id, drawer: kept.id } });
  expect(whereIs(shelf, 'carved').things[0]).toMatchObject({ place: 'Bench box', front: null });
});

test('a code typed whole, in any case and with O for 0, is that one thing before all others', () => {
  const { things, corrections } = whereIs(shelf, ` ${code.toLowerCase().replaceAll('0', 'o')} `);
  expect([things[0]?.id, corrections]).toEqual([mould.id, []]);
});

test('a misspelt period is found, and what was shown instead is said', () => {
  const { periods, corrections } = whereIs(shelf, 'minaon');
  expect([periods.map(({ name }) => name), corrections]).toEqual([['Minoan'], [{ typed: 'minaon', instead: ['minoan'] }]]);
});

test('at most sixty are listed, and how many more there are is said', () => {
  const many = aShelf(Array.from({ length: 75 }, (_, at) => aMaster({ name: `Finial ${at}` })));
  const { things, more } = whereIs(many, 'finial');
  expect([things.length, more]).toEqual([ANSWERS_MAX, 15]);
});

test('all periods come in the studio’s order', () => {
  expect(allPeriods(shelf).map(({ name }) => name)).toEqual(['Minoan', 'Hellenistic']);
});

test('what is rehearsed has something to show, each in its own way', () => {
  const answers = rehearsals(shelf).map((query) => whereIs(shelf, query));
  expect(answers.length).toBeGreaterThanOrEqual(5);
  expect(answers.filter(({ periods, things }) => periods.length + things.length > 0).length).toBeGreaterThanOrEqual(answers.length - 1);
  expect(answers.some(({ corrections }) => (corrections[0]?.instead.length ?? 0) > 0)).toBe(true);
  expect(answers.some(({ years }) => years !== undefined)).toBe(true);
  expect(rehearsals(aShelf([]))).toEqual([]);
});
