import { expect, test } from 'vitest';
import { sayPressure, sayPressures } from '../../src/domain/measure-words.ts';
import { SI_UNITS } from '../../src/domain/units.ts';

const bar = { ...SI_UNITS, pressure: 'bar' } as const;
const psi = { ...SI_UNITS, pressure: 'psi' } as const;

test('a small pressure keeps two figures that count, in every unit', () => {
  expect([0.6, 0.9, 0.04, 5.5, 9.96, 12.4, 68.9476, 400, 0].map((kpa) => sayPressure(kpa))).toEqual([
    '0.6 kPa',
    '0.9 kPa',
    '0.04 kPa',
    '5.5 kPa',
    '10 kPa',
    '12 kPa',
    '69 kPa',
    '400 kPa',
    '0 kPa',
  ]);
  expect([0.6, 60, 400].map((kpa) => sayPressure(kpa, bar))).toEqual(['0.006 bar', '0.6 bar', '4 bar']);
  expect([0.6, 68.9476].map((kpa) => sayPressure(kpa, psi))).toEqual(['0.087 psi', '10 psi']);
});

test('and so does a range that begins with one', () => {
  expect(sayPressures(0.6, 0.9)).toBe('0.6–0.9 kPa');
  expect(sayPressures(0, 80)).toBe('0–80 kPa');
  expect(sayPressures(35, 80)).toBe('35–80 kPa');
});
