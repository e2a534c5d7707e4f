import { expect, test } from 'vitest';
import { SI_UNITS } from '../../src/domain/units.ts';
import { detailOf } from '../../src/views/detail.ts';
import { aShelf, aWax } from '../support/builders.ts';

test('a wax says how much is left, in the units asked for', () => {
  const wax = aWax({ grams: 640 });
  const shelf = aShelf([wax]);
  expect(detailOf(shelf, wax)).toContain('640 g');
  expect(detailOf(shelf, wax, { ...SI_UNITS, mass: 'oz' })).toContain('22.6 oz');
});
