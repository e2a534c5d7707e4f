import { describe, expect, it } from 'vitest';
import type { Year } from '../../src/domain/brand.ts';
import { isProblem } from '../../src/domain/problem.ts';
import { parseYear, spanInYears, yearInWords } from '../../src/domain/year.ts';
import { parseYears } from '../../src/domain/years.ts';

describe('numbering of years BC', () => {
  // Astronomical numbering, 1 BC = 0000, 600 BC = −0599, “eighth century BC” = −0799 to −0700 (PeriodO, data-model.md).
  it.each([
    ['1 BC', 0],
    ['600 BC', -599],
    ['c. 600 BC', -599],
    ['150 BC', -149],
    ['AD 42', 42],
    ['42 CE', 42],
    ['1250', 1250],
    ['-599', -599],
    ['−0599', -599],
  ])('reads %s as %i', (text, year) => {
    expect(parseYear(text)).toBe(year);
  });

  it('reads a century BC from its hundred years', () => {
    expect(parseYears('eighth century BC')).toEqual({ from: -799, to: -700 });
    expect(parseYears('8th c. BC')).toEqual({ from: -799, to: -700 });
    expect(parseYears('2nd century BC')).toEqual({ from: -199, to: -100 });
    expect(parseYears('13th century')).toEqual({ from: 1201, to: 1300 });
  });

  // −0000 is rejected (EDTF.js tests, Library of Congress EDTF, 2019); there is no year 0 in the BC/AD count.
  it.each(['-0000', '0 BC', '0 AD', '99999 AD', 'AD 42 BC', 'about noon', ''])('does not read %j as a year', (text) => {
    expect(isProblem(parseYear(text))).toBe(true);
  });
});

describe('published spans of periods', () => {
  // As printed by the authorities PeriodO collects, with the ISO years its data gives.
  it.each([
    ['480–50 BC', -479, -49], // La Tène, Atlas of the Celts
    ['1200 – 480 BC', -1199, -479], // Hallstatt, the same
    ['800 BC – AD 42', -799, 42], // Iron Age, Portable Antiquities Scheme
    ['2350 – 801 BC', -2349, -800], // Bronze Age, the same
    ['1453 – 1922', 1453, 1922], // Ottoman, Levantine Ceramics Project
    ['1714–1830', 1714, 1830], // Georgian, FISH
  ])('reads %s', (printed, from, to) => {
    expect(parseYears(printed)).toEqual({ from, to });
  });

  it('says them as they are printed', () => {
    expect(spanInYears(-479 as Year, -49 as Year)).toBe('480–50 BC');
    expect(spanInYears(-799 as Year, 42 as Year)).toBe('800 BC – AD 42');
    expect(yearInWords(-148 as Year)).toBe('149 BC');
  });

  it('comes back to the same years from its own words', () => {
    for (const year of [-2349, -599, -1, 0, 1, 42, 999, 1000, 1922]) expect(parseYear(yearInWords(year as Year))).toBe(year);
  });

  it.each(['50–480 BC', '1922 – 1453', 'long ago – now'])('refuses %s', (text) => {
    expect(isProblem(parseYears(text))).toBe(true);
  });
});
