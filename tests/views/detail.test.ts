import { expect, test } from 'vitest';
import { SI_UNITS } from '../../src/domain/units.ts';
import { detailOf } from '../../src/views/detail.ts';
import { aCasting, aMould, aPlace, aShelf, aWax } from '../support/builders.ts';

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
