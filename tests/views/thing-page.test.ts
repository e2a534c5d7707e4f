import { expect, test } from 'vitest';
import type { Grams, Millimetres, Year } from '../../src/domain/brand.ts';
import { SI_UNITS } from '../../src/domain/units.ts';
import { thingPage } from '../../src/views/thing-page.ts';
import { aCasting, aDesign, aMaster, aMould, anInjector, aPeriod, aPlace, aShelf, aWax, day, nextId } from '../support/builders.ts';

const period = aPeriod({ name: 'Ottoman', from: 1453 as Year, to: 1922 as Year });
const drawer = aPlace({ name: 'Drawer A2', label: 'A2', periods: [period.id] });
const design = aDesign({
  name: 'Tulip clasp',
  periods: [period.id],
  sizes: [{ label: 'large', mm: 41.5 as Millimetres }],
  waxGrams: 3.25 as Grams,
});
const original = aMaster({ name: 'Tulip, original', kind: 'original', design: design.id, at: drawer.id });
const copy = aMaster({ name: 'Tulip, dressed', kind: 'dressed wax', design: design.id, from: [original.id], made: day('2024-01-09') });
const failed = aMould({ name: 'Tulip 1', design: design.id, master: original.id, at: drawer.id, grade: 'failed' });
const sound = aMould({ name: 'Tulip 2', design: design.id, master: original.id, at: drawer.id, grade: 'sound' });
const wax = aWax({ name: 'Cold green', grams: 2310 });
const shelf = aShelf([
  period,
  drawer,
  design,
  original,
  copy,
  failed,
  sound,
  wax,
  anInjector({ name: 'Pot', holds: wax.id }),
  aCasting({ design: design.id, pieces: 0 }),
]);
const page = (id: string, units = SI_UNITS) => thingPage(shelf, id, units, () => []);

test('a design shows its fields in words and its moulds with state and place, the sound one first', () => {
  const of = page(design.id);
  expect(of?.facts).toEqual(
    expect.arrayContaining([
      { name: 'Periods', says: 'Ottoman' },
      { name: 'Sizes', says: 'large, 41.5 mm' },
      { name: 'Wax in one piece', says: '3.3 g' },
    ]),
  );
  const moulds = of?.related.find(({ heading }) => heading === 'Moulds')?.rows;
  expect(moulds?.map(({ title, place, states }) => [title, place, states[0]?.word])).toEqual([
    ['Tulip 2', 'A2', 'sound'],
    ['Tulip 1', 'A2', 'failed'],
  ]);
  expect(of?.related.map(({ heading }) => heading)).toEqual(['Moulds', 'Masters']);
  expect(of?.stands).toBeUndefined();
});

test('a master tells what it was made from and what came of it', () => {
  expect(page(copy.id)?.facts).toContainEqual({ name: 'Came from', says: 'Tulip, original' });
  expect(page(copy.id)?.facts).toContainEqual({ name: 'Made on', says: '9 January 2024' });
  expect(page(original.id)?.related.map(({ heading, rows }) => [heading, rows.length])).toEqual([
    ['Of the design', 1],
    ['Moulds made from it', 2],
    ['Masters made from it', 1],
  ]);
  expect(page(original.id)?.stands).toEqual({ path: 'A2', front: null });
});

test('a period tells its span and its drawers', () => {
  expect(page(period.id)?.facts).toEqual([{ name: 'Span', says: '1453–1922' }]);
  expect(page(period.id)?.related.map(({ heading }) => heading)).toEqual(['Drawers that keep it', 'Designs']);
});

test('a wax is weighed in the studio’s units', () => {
  expect(page(wax.id, { ...SI_UNITS, mass: 'oz' })?.facts[0]).toEqual({ name: 'Left', says: '81.5 oz' });
  expect(page(wax.id)?.related[0]).toMatchObject({ heading: 'In the injector', rows: [{ title: 'Pot' }] });
});

test('there is no page of what is not recorded', () => {
  expect(page(nextId())).toBeUndefined();
});
