import { describe, expect, it } from 'vitest';
import type { Celsius, Day } from '../../src/domain/brand.ts';
import { hemisphereOf, roomAssumed, roomTable } from '../../src/domain/room.ts';
import { monthName, type Season, seasonOf } from '../../src/domain/season.ts';
import { EMPTY_SHELF } from '../../src/domain/shelf.ts';
import type { Hemisphere, StudioFields } from '../../src/domain/studio.ts';
import { SI_UNITS } from '../../src/domain/units.ts';
import { waxToday } from '../../src/views/wax-today.ts';

// Meteorological seasons: north winter December–February, spring March–May, summer June–August, autumn September–November (CBS Denver,
// 2017); south reversed (void.ai).
const NORTH = ['winter', 'winter', 'spring', 'spring', 'spring', 'summer', 'summer', 'summer', 'autumn', 'autumn', 'autumn', 'winter'];
const OPPOSITE: Record<string, string> = { winter: 'summer', spring: 'autumn', summer: 'winter', autumn: 'spring' };

// Mean daily maximum and minimum, °C, January first. Melbourne: farmonlineweather.com.au, station 86071. Sheffield: Sheffield museums' figures,
// rounded, as quoted by liquisearch.com.
const MELBOURNE_MAX = [25.9, 25.8, 23.9, 20.3, 16.7, 14.1, 13.5, 15.0, 17.3, 19.7, 22.0, 24.2];
const MELBOURNE_MIN = [14.3, 14.6, 13.3, 10.8, 8.7, 6.9, 6.0, 6.7, 8.0, 9.6, 11.2, 13.0];
const SHEFFIELD_MAX = [5.5, 6, 8.5, 12, 15, 18, 19.5, 19, 17, 13, 8, 7];

const SHEFFIELD_MIN = [1.5, 2, 3, 4.5, 6.5, 10.5, 12.5, 12, 10.5, 7.5, 4.5, 2];

const mean = (table: readonly number[]) => table.reduce((sum, each) => sum + each, 0) / table.length;

/** A studio that took a published table over for its workshop, month by month. */
function studioOf(hemisphere: Hemisphere, highs: readonly number[], lows: readonly number[]): StudioFields {
  const months = highs.map((highC, i) => [String(i + 1), { lowC: lows[i] as Celsius, highC: highC as Celsius }]);
  return { hemisphere, months: Object.fromEntries(months) };
}
const MELBOURNE = studioOf('south', MELBOURNE_MAX, MELBOURNE_MIN);
const SHEFFIELD = studioOf('north', SHEFFIELD_MAX, SHEFFIELD_MIN);

const inSeason = (studio: StudioFields, season: Season) =>
  roomTable(studio).filter(({ month }) => seasonOf(Number(month), hemisphereOf(studio)) === season);
const meanHigh = (studio: StudioFields, season: Season) => mean(inSeason(studio, season).map(({ highC }) => highC));
const fifteenth = (month: number) => `2026-${String(month).padStart(2, '0')}-15` as Day;

describe('meteorological seasons by hemisphere', () => {
  it.each(NORTH.map((season, i) => [i + 1, season] as const))(
    'month %i is %s in the north and the opposite in the south',
    (month, season) => {
      expect(seasonOf(month, 'north')).toBe(season);
      expect(seasonOf(month, 'south')).toBe(OPPOSITE[season]);
    },
  );

  it('gives each season three months that follow each other over the turn of the year', () => {
    const numbers = (studio: StudioFields, season: Season) => inSeason(studio, season).map(({ month }) => Number(month));
    expect(numbers(SHEFFIELD, 'winter')).toEqual([1, 2, 12]);
    expect(numbers(MELBOURNE, 'summer')).toEqual([1, 2, 12]);
    expect(numbers(MELBOURNE, 'winter')).toEqual([6, 7, 8]);
    expect(numbers(MELBOURNE, 'autumn')).toEqual([3, 4, 5]);
  });

  it('refuses a month that does not exist', () => {
    expect(() => seasonOf(0, 'north')).toThrow(RangeError);
    expect(() => seasonOf(13, 'south')).toThrow(RangeError);
  });
});

describe('published monthly temperatures', () => {
  // Derived from the tables above: Melbourne 25.30 and 14.20, Sheffield 6.17 and 18.83.
  it('gives the seasonal means of Melbourne, in the south, and of Sheffield, in the north', () => {
    expect(meanHigh(MELBOURNE, 'summer')).toBeCloseTo(25.3, 2);
    expect(meanHigh(MELBOURNE, 'winter')).toBeCloseTo(14.2, 2);
    expect(meanHigh(SHEFFIELD, 'winter')).toBeCloseTo(6.17, 2);
    expect(meanHigh(SHEFFIELD, 'summer')).toBeCloseTo(18.83, 2);
  });

  it.each([
    ['Melbourne', MELBOURNE, MELBOURNE_MAX, MELBOURNE_MIN],
    ['Sheffield', SHEFFIELD, SHEFFIELD_MAX, SHEFFIELD_MIN],
  ] as const)('a workshop as cold and warm as %s is taken to be at the middle of its month, to half a degree', (_, studio, highs, lows) => {
    for (const [i, high] of highs.entries()) {
      const assumed = roomAssumed(fifteenth(i + 1), studio);
      expect(Math.abs(assumed - (high + (lows[i] as number)) / 2)).toBeLessThanOrEqual(0.25 + 1e-9);
      expect(assumed * 2).toBe(Math.round(assumed * 2));
    }
  });

  it('names month and season, and assumes the warmth, on the screen that asks for today’s wax', () => {
    const on = (studio: StudioFields, month: number) => waxToday({ ...EMPTY_SHELF, studio }, fifteenth(month), undefined, SI_UNITS);
    // The middle of 25.8 and 14.6, of 6 and 2, of 19 and 12, of 15 and 6.7.
    expect(on(MELBOURNE, 2)).toMatchObject({ month: monthName(2), season: 'summer', assumedC: 20 });
    expect(on(SHEFFIELD, 2)).toMatchObject({ month: monthName(2), season: 'winter', assumedC: 4 });
    expect(on(SHEFFIELD, 8)).toMatchObject({ season: 'summer', assumedC: 15.5 });
    expect(on(MELBOURNE, 8)).toMatchObject({ season: 'winter', assumedC: 11 });
  });

  it('agrees with the printed yearly means of Melbourne, so that the tables were copied right', () => {
    expect(Math.abs(mean(MELBOURNE_MAX) - 19.8)).toBeLessThan(0.1);
    expect(Math.abs(mean(MELBOURNE_MIN) - 10.2)).toBeLessThan(0.1);
  });

  it('finds summer the warmest and winter the coldest season on both sides', () => {
    for (const studio of [MELBOURNE, SHEFFIELD]) {
      const means = (['winter', 'spring', 'summer', 'autumn'] as const).map((season) => meanHigh(studio, season));
      expect(Math.min(...means)).toBe(means[0]);
      expect(Math.max(...means)).toBe(means[2]);
    }
  });
});
