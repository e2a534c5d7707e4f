import { expect, test } from 'vitest';
import { SI_UNITS } from '../../src/domain/units.ts';
import { detailOf } from '../../src/views/detail.ts';
import { aCasting, aDesign, aMaster, aMould, aPlace, aShelf, aWax } from '../support/builders.ts';

test('a wax says how much is left, in the units asked for', () => {
  const wax = aWax({ grams: 640 });
  const shelf = aShelf([wax]);
  expect(detailOf(shelf, wax)).toContain('640 g');
  expect(detailOf(shelf, wax, { ...SI_UNITS, mass: 'oz' })).toContain('22.6 oz');
});

test('a place says how many pieces stand in it, those of its drawers among them', () => {
  const chest = aPlace({ kind: 'cabinet', name: 'Plan chest' });
  const drawer = aPlace({ kind: 'drawer', label: 'A3', in: chest.id });
  const shelf = aShelf([chest, drawer, aMould({ at: drawer.id }), aCasting({ at: drawer.id, pieces: 5 }), aMould({ at: chest.id })]);
  expect(detailOf(shelf, chest)).toEqual(['cabinet', '7 pieces']);
  expect(detailOf(shelf, drawer)).toEqual(['drawer', '6 pieces']);
  expect(detailOf(aShelf([chest, drawer]), chest)).toEqual(['cabinet', 'empty']);
});

const omega = aDesign({ name: 'Omega brooch' });

test.each([
  ['M-002', ['mould', 'Omega brooch', 'large']],
  ['Omega Brooch 2', ['mould', 'large']],
  [undefined, ['mould']],
])('a mould called %s says its design where its name does not', (name, says) => {
  const mould = aMould({ name: name as never, design: omega.id, size: 'large' });
  expect(detailOf(aShelf([omega, mould]), mould)).toEqual(says);
});

test('so does whatever else is made to a design, and nothing does that has none', () => {
  const [master, pile, loose] = [aMaster({ name: 'W-7', design: omega.id }), aCasting({ name: 'Tray 3', design: omega.id }), aMould({})];
  const shelf = aShelf([omega, master, pile, loose]);
  expect(detailOf(shelf, master)).toContain('Omega brooch');
  expect(detailOf(shelf, pile)).toContain('Omega brooch');
  expect(detailOf(shelf, loose)).toEqual(['mould', 'small']);
});
