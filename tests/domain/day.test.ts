import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, daysBetween, monthOf, parseDay } from '../../src/domain/day.ts';
import { isProblem } from '../../src/domain/problem.ts';
import { day } from '../support/builders.ts';

describe('a day', () => {
  it.each(['2024-02-29', '2000-02-29', '1900-02-28', '2023-12-31', '2024-04-30', '0999-01-01'])('%s exists', (text) => {
    expect(parseDay(text)).toBe(text);
  });

  it.each([
    '2023-02-29',
    '1900-02-29',
    '2024-02-30',
    '2024-04-31',
    '2024-13-01',
    '2024-00-10',
    '2024-01-00',
    '2024-01-32',
    '2024-1-1',
    '24-01-01',
    ' 2024-01-01',
    '2024-01-01T00:00',
    '２０２４-01-01',
    '',
    20240101,
    null,
    undefined,
    new Date(0),
    { toString: null },
  ])('%j does not', (raw) => {
    expect(isProblem(parseDay(raw))).toBe(true);
  });

  it('is counted on, back and between over leap days and changes of the clock', () => {
    expect(addDays(day('2024-02-28'), 2)).toBe('2024-03-01');
    expect(addDays(day('2024-03-30'), 2)).toBe('2024-04-01');
    expect(addDays(day('2024-01-01'), -1)).toBe('2023-12-31');
    expect(daysBetween(day('2023-12-31'), day('2024-03-01'))).toBe(61);
    expect(monthOf(day('2024-11-03'))).toBe(11);
    const days = fc.integer({ min: -40_000, max: 40_000 });
    fc.assert(fc.property(days, days, (a, b) => daysBetween(addDays(day('2024-03-05'), a), addDays(day('2024-03-05'), b)) === b - a));
  });

  it('exists for every day of the calendar, and for no other of 31 in each month', () => {
    let found = 0;
    for (let month = 1; month <= 12; month++) {
      for (let date = 1; date <= 31; date++) {
        const text = `2024-${String(month).padStart(2, '0')}-${String(date).padStart(2, '0')}`;
        const isThere = new Date(`${text}T00:00:00Z`).toJSON()?.slice(0, 10) === text;
        expect(isProblem(parseDay(text)), text).toBe(!isThere);
        if (isThere) found += 1;
      }
    }
    expect(found).toBe(366);
  });
});
