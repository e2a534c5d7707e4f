import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Year } from '../../src/domain/brand.ts';
import { isProblem } from '../../src/domain/problem.ts';
import { parseYear, spanInYears, yearInWords } from '../../src/domain/year.ts';

test.each([
  ['1250', 1250],
  ['150 BC', -149],
  ['150bc', -149],
  ['c. 200 BC', -199],
  ['ca 200 BCE', -199],
  ['about 600 b.c.', -599],
  ['1 BC', 0],
  ['AD 42', 42],
  ['42 ce', 42],
  [' ~1890 ', 1890],
])('“%s” is the year %i', (text, year) => {
  expect(parseYear(text)).toBe(year);
});

test.each(['', 'owl', '12', '0', '0 BC', 'AD 0', 'AD 42 BC', '10000', '150 BCX', '12.5', '100002 BC', 'bull 1250'])(
  '“%s” is no year',
  (text) => {
    expect(isProblem(parseYear(text))).toBe(true);
  },
);

test('a year in words is read as that year again', () => {
  fc.assert(
    fc.property(fc.integer({ min: -100_000, max: 9999 }), (year) => {
      expect(parseYear(yearInWords(year as Year))).toBe(year);
    }),
  );
});

test.each([
  [-322, -29, '323–30 BC'],
  [-799, 42, '800 BC – AD 42'],
  [284, 641, 'AD 284–641'],
  [1714, 1830, '1714–1830'],
  [1890, undefined, 'from 1890'],
  [undefined, -29, 'until 30 BC'],
  [undefined, undefined, ''],
])('%s to %s is “%s”', (from, to, words) => {
  expect(spanInYears(from as Year | undefined, to as Year | undefined)).toBe(words);
});
