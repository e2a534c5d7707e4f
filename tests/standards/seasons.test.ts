import { describe, expect, it } from 'vitest';
import { monthsOf, seasonalMean, seasonOf } from '../../src/domain/season.ts';

// Meteorological seasons: north winter December–February, spring March–May, summer June–August, autumn September–November (CBS Denver,
// 2017); south reversed (void.ai).
const NORTH = ['winter', 'winter', 'spring', 'spring', 'spring', 'summer', 'summer', 'summer', 'autumn', 'autumn', 'autumn', 'winter'];
const OPPOSITE: Record<string, string> = { winter: 'summer', spring: 'autumn', summer: 'winter', autumn: 'spring' };

// Mean daily maximum and minimum, °C, January first. Melbourne: farmonlineweather.com.au, station 86071. Sheffield: Sheffield museums' figures,
// rounded, as quoted by liquisearch.com.
const MELBOURNE_MAX = [25.9, 25.8, 23.9, 20.3, 16.7, 14.1, 13.5, 15.0, 17.3, 19.7, 22.0, 24.2];
const MELBOURNE_MIN = [14.3, 14.6, 13.3, 10.8, 8.7, 6.9, 6.0, 6.7, 8.0, 9.6, 11.2, 13.0];
const SHEFFIELD_MAX = [5.5, 6, 8.5, 12, 15, 18, 19.5, 19, 17, 13, 8, 7];

const mean = (table: readonly number[]) => table.reduce((sum, each) => sum + each, 0) / table.length;

describe('meteorological seasons by hemisphere', () => {
  it.each(NORTH.map((season, i) => [i + 1, season] as const))(
    'month %i is %s in the north and the opposite in the south',
    (month, season) => {
      expect(seasonOf(month, 'north')).toBe(season);
      expect(seasonOf(month, 'south')).toBe(OPPOSITE[season]);
    },
  );

  it('keeps a northern December with the January and February that follow', () => {
    expect(monthsOf('winter', 'north')).toEqual([12, 1, 2]);
    expect(monthsOf('summer', 'south')).toEqual([12, 1, 2]);
    expect(monthsOf('winter', 'south')).toEqual([6, 7, 8]);
    expect(monthsOf('autumn', 'south')).toEqual([3, 4, 5]);
  });

  it('refuses a month that does not exist', () => {
    expect(() => seasonOf(0, 'north')).toThrow(RangeError);
    expect(() => seasonOf(13, 'south')).toThrow(RangeError);
  });
});

describe('published monthly temperatures', () => {
  // Derived from the tables above: Melbourne 25.30 and 14.20, Sheffield 6.17 and 18.83.
  it('gives the seasonal means of Melbourne, in the south', () => {
    expect(seasonalMean(MELBOURNE_MAX, 'summer', 'south')).toBeCloseTo(25.3, 2);
    expect(seasonalMean(MELBOURNE_MAX, 'winter', 'south')).toBeCloseTo(14.2, 2);
  });

  it('gives the seasonal means of Sheffield, in the north', () => {
    expect(seasonalMean(SHEFFIELD_MAX, 'winter', 'north')).toBeCloseTo(6.17, 2);
    expect(seasonalMean(SHEFFIELD_MAX, 'summer', 'north')).toBeCloseTo(18.83, 2);
  });

  it('agrees with the printed yearly means of Melbourne, so that the tables were copied right', () => {
    expect(Math.abs(mean(MELBOURNE_MAX) - 19.8)).toBeLessThan(0.1);
    expect(Math.abs(mean(MELBOURNE_MIN) - 10.2)).toBeLessThan(0.1);
  });

  it('finds summer the warmest and winter the coldest season on both sides', () => {
    for (const [table, side] of [
      [MELBOURNE_MAX, 'south'],
      [SHEFFIELD_MAX, 'north'],
    ] as const) {
      const means = (['winter', 'spring', 'summer', 'autumn'] as const).map((season) => seasonalMean(table, season, side));
      expect(Math.min(...means)).toBe(means[0]);
      expect(Math.max(...means)).toBe(means[2]);
    }
  });
});
