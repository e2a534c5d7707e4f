import { describe, expect, test } from 'vitest';
import type { Day } from '../../../src/domain/brand.ts';
import { dayCell, dayOrderOf } from '../../../src/domain/csv/day-cell.ts';
import { decimalMarkOf, numberCell, rangeCell } from '../../../src/domain/csv/number-cell.ts';
import { sizesCell } from '../../../src/domain/csv/sizes-cell.ts';
import { unitOfHeading } from '../../../src/domain/csv/unit-words.ts';
import { gradeCell, metalsCell, rubberCell } from '../../../src/domain/csv/word-cell.ts';

const ways = { today: '2026-11-25' as Day };

describe('figures', () => {
  const grams = numberCell('grams');
  test.each([
    ['12,5 g', 12.5],
    ['12.5', 12.5],
    ['1.234,5 g', 1234.5],
    ['1,234.5', 1234.5],
    ['2,5 kg', 2500],
    ['1 250', 1250],
    ["1'250", 1250],
    ['0,125', 0.125],
    ['0', 0],
    ['2 lb', 907.1847],
    ['1.234.567', 1_234_567],
    ['10 dwt', 15.5517],
    ['1 oz t', 31.1035],
    ['+3', 3],
  ])('%s', (cell, value) => expect(grams(cell, ways)).toEqual({ value }));
  test('“1,234” is doubtful unless the list shows its decimal mark', () => {
    expect(grams('1,234', ways)).toMatchObject({ doubt: expect.stringContaining('1.234') });
    expect(grams('1,234', { ...ways, decimal: ',' })).toEqual({ value: 1.234 });
    expect(grams('1,234', { ...ways, decimal: '.' })).toEqual({ value: 1234 });
    expect(numberCell('count')('1,234', ways)).toEqual({ value: 1234 });
  });
  test('the unit in the heading holds where the cell names none', () => {
    expect(grams('2,5', { ...ways, unit: 'kg' })).toEqual({ value: 2500 });
    expect(grams('250 g', { ...ways, unit: 'kg' })).toEqual({ value: 250 });
    expect([unitOfHeading('Stock (kg)'), unitOfHeading('Length mm'), unitOfHeading('Mould no'), unitOfHeading('Made in')]).toEqual([
      'kg',
      'mm',
      undefined,
      undefined,
    ]);
  });
  test('about, less than nothing, not a number, not whole', () => {
    expect(grams('ca. 40 g', ways)).toMatchObject({ value: 40, doubt: expect.anything() });
    expect(grams('-5 g', ways)).toMatchObject({ problem: true });
    expect(grams('a lot', ways)).toEqual({ doubt: '“a lot” is not a number.' });
    expect(grams('5 furlongs', ways)).not.toHaveProperty('value');
    expect(numberCell('count')('2.5', ways)).toMatchObject({ problem: true });
  });
  test('°F and psi become °C and kPa', () => {
    expect(numberCell('celsius')('160 F', ways)).toEqual({ value: 71.1111 });
    expect(numberCell('kpa')('10 psi', ways)).toEqual({ value: 68.9476 });
    expect(numberCell('celsius')('-5', ways)).toEqual({ value: -5 });
  });
  test('ranges', () => {
    const room = rangeCell('celsius', 'low', 'high');
    expect(room('18–26 °C', ways)).toEqual({ value: { low: 18, high: 26 } });
    expect(room('-2 to 15', ways)).toEqual({ value: { low: -2, high: 15 } });
    expect(room('26-18', ways)).toMatchObject({ problem: true });
    expect(room('warm', ways)).toEqual({ doubt: '“warm” is not a range like 18–26.' });
  });
  test('the decimal mark of a list', () => {
    expect(decimalMarkOf(['12,5', 'x', '3'])).toBe(',');
    expect(decimalMarkOf(['12.5', '1,200.25'])).toBe('.');
    expect(decimalMarkOf(['12,5', '12.5'])).toBeUndefined();
    expect(decimalMarkOf(['1,234'])).toBeUndefined();
  });
});

describe('days', () => {
  test.each([
    ['2024-02-29', '2024-02-29'],
    ['2024-2-9', '2024-02-09'],
    ['2024-02-29T10:00:00Z', '2024-02-29'],
    ['3.4.2019', '2019-04-03'],
    ['31/12/2019', '2019-12-31'],
    ['12/31/2019', '2019-12-31'],
    ['5/5/19', '2019-05-05'],
    ['14 March 2019', '2019-03-14'],
    ['Mar 14, 2019', '2019-03-14'],
    ['14-Mar-19', '2019-03-14'],
    ['1.6.98', '1998-06-01'],
  ])('%s', (cell, value) => expect(dayCell(cell, ways)).toEqual({ value }));
  test('day and month that could be either way round are doubtful, unless the list shows which is which', () => {
    expect(dayCell('3/4/2019', ways)).toMatchObject({ value: '2019-04-03', doubt: expect.stringContaining('day first') });
    expect(dayCell('3/4/2019', { ...ways, dayOrder: 'month first' })).toEqual({ value: '2019-03-04' });
    expect(dayOrderOf(['3/4/2019', '25/4/2019'])).toBe('day first');
    expect(dayOrderOf(['3/4/2019', '4/25/2019'])).toBe('month first');
    expect(dayOrderOf(['25/4/2019', '4/25/2019'])).toBeUndefined();
  });
  test('parts of a day, and days to come, are doubtful', () => {
    expect(dayCell('2019', ways)).toMatchObject({ value: '2019-01-01', doubt: expect.anything() });
    expect(dayCell('June 2019', ways)).toMatchObject({ value: '2019-06-01', doubt: expect.anything() });
    expect(dayCell('2030-01-01', ways)).toMatchObject({ doubt: expect.stringContaining('not come') });
    expect(dayCell('43831', ways)).toMatchObject({ value: '2020-01-01', doubt: expect.anything() });
  });
  test.each(['2021-02-30', '31.4.2020', '29/2/2023', '2020-13-01'])('%s does not exist', (cell) =>
    expect(dayCell(cell, ways)).toMatchObject({ problem: true }),
  );
  test('words that are no day', () => expect(dayCell('long ago', ways)).toEqual({ doubt: '“long ago” is not a day.' }));
});

describe('words', () => {
  test('rubbers and grades by the words lists use', () => {
    expect(rubberCell('Natural rubber', ways)).toEqual({ value: 'natural' });
    expect(rubberCell('RTV (platinum)', ways)).toMatchObject({ value: 'platinum silicone' });
    expect(rubberCell('blue stuff', ways)).toEqual({ doubt: '“blue stuff” is no rubber known here.' });
    expect(gradeCell('OK', ways)).toEqual({ value: 'sound' });
    expect(gradeCell('dud', ways)).toEqual({ value: 'retired:dud' });
  });
  test('several metals', () =>
    expect(metalsCell('Sterling, pewter & tinfoil', ways)).toMatchObject({
      value: ['silver', 'pewter'],
      doubt: expect.stringContaining('pewter'),
    }));
  test('sizes', () => {
    expect(sizesCell('S 18 mm; M 24,5 mm; L')).toEqual({ value: [{ label: 'S', mm: 18 }, { label: 'M', mm: 24.5 }, { label: 'L' }] });
    const endless = `S ${'9'.repeat(400)} mm`;
    expect(sizesCell(`${endless}; M 24 mm`)).toEqual({ value: [{ label: endless }, { label: 'M', mm: 24 }] });
    expect(sizesCell('"S" = 1.2.3 mm')).toEqual({ value: [{ label: '"S" = 1.', mm: 2.3 }] });
    expect(sizesCell('52/54/56')).toEqual({ value: [{ label: '52' }, { label: '54' }, { label: '56' }] });
  });
});
