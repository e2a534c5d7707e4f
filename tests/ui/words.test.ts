import { expect, test } from 'vitest';
import { respelt } from '../../src/ui/words.ts';

test('our own sentences are spelt the other way, the product’s name is not', () => {
  expect(respelt('Mould, moulds, moulding, MOULD: colour, Coloured.', [])).toBe('Mold, molds, molding, MOLD: color, Colored.');
  expect(respelt('Record a mould – Mouldkeep', [])).toBe('Record a mold – Mouldkeep');
  expect(respelt('Which wax, today?', [])).toBe('Which wax, today?');
});

test('what the studio wrote stands in them as it was written', () => {
  const own = ['Colour test mould', 'mould of the owl'];
  expect(respelt('Colour test mould: 140 shots. Make a new mould.', own)).toBe('Colour test mould: 140 shots. Make a new mold.');
  expect(respelt('The mould of the owl and this mould', own)).toBe('The mould of the owl and this mold');
  expect(respelt('mould of the owl', own)).toBe('mould of the owl');
});
