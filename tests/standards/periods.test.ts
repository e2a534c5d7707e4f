import { expect, test } from 'vitest';
import type { Year } from '../../src/domain/brand.ts';
import { overlaps, periodsOverlapping } from '../../src/domain/period-span.ts';
import { isProblem } from '../../src/domain/problem.ts';
import { parseYear } from '../../src/domain/year.ts';
import { aPeriod, aShelf } from '../support/builders.ts';

/** Spans as printed in the PeriodO initial data (github.com/periodo/periodo-data, public domain), by authority and PeriodO id. */
const PERIODS = [
  ['Bronze Age', 'Portable Antiquities Scheme, p0gjgrs6qb2', '2350 BC', '801 BC', -2349, -800],
  ['Iron Age', 'Portable Antiquities Scheme, p0gjgrst8ft', '800 BC', 'AD 42', -799, 42],
  ['Byzantine', 'Portable Antiquities Scheme, p0gjgrsg24g', '491', '1453', 491, 1453],
  ['Archaic', 'p0z5nvhwr6d', '600 BC', '480 BC', -599, -479],
  ['La Tène', 'Atlas of the Celts, p0ff3dtzkrr', '480 BC', '50 BC', -479, -49],
  ['Hallstatt', 'Atlas of the Celts, p0ff3dtsspk', '1200 BC', '480 BC', -1199, -479],
  ['Hellenistic', 'p0z5nvh9s8x', '323 BC', '31 BC', -322, -30],
  ['Carolingian', 'p0z5nvht7jr', '768', '887', 768, 887],
  ['Ottoman', 'Levantine Ceramics Project, p0m63njdz8f', '1453', '1922', 1453, 1922],
  ['Georgian', 'FISH, p0kh9dst3vc', '1714', '1830', 1714, 1830],
] as const;

test.each(PERIODS)('%s (%s): “%s” to “%s” are the ISO years %i to %i', (_name, _by, first, last, from, to) => {
  expect([parseYear(first), parseYear(last)]).toEqual([from, to]);
});

// PeriodO data-model.md: 1 BC is 0000, 600 BC is −0599, the eighth century BC is −0799 to −0700.
test('there is no year nought: astronomical numbering of BC years as PeriodO states it', () => {
  expect([parseYear('1 BC'), parseYear('600 BC'), parseYear('800 BC'), parseYear('701 BC')]).toEqual([0, -599, -799, -700]);
});

test.each([
  ['150 BC', ['Hellenistic', 'La Tène', 'Iron Age']],
  ['480 BC', ['Archaic', 'La Tène', 'Hallstatt', 'Iron Age']],
  ['c. 800 BC', ['Hallstatt', 'Iron Age']],
  ['1453', ['Ottoman', 'Byzantine']],
  ['1250', ['Byzantine']],
  // FISH lets Georgian end in 1830 and Victorian begin in 1837: gaps between periods are normal.
  ['1835', ['Ottoman']],
  ['1950', []],
])('the periods of %s, narrowest first, are %j', (text, names) => {
  const shelf = aShelf(PERIODS.map(([name, , , , from, to]) => aPeriod({ name, from: from as Year, to: to as Year })));
  const year = parseYear(text);
  expect(isProblem(year) ? [] : periodsOverlapping(shelf, { from: year, to: year }).map((period) => period.name)).toEqual(names);
});

test('both years a span is printed with belong to it, and the years beside them do not', () => {
  for (const [name, , , , from, to] of PERIODS) {
    const period = aPeriod({ name, from: from as Year, to: to as Year });
    expect([from - 1, from, to, to + 1].map((year) => overlaps(period, { from: year as Year, to: year as Year }))).toEqual([
      false,
      true,
      true,
      false,
    ]);
  }
});
