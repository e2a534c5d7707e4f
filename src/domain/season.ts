import type { Day } from './brand.ts';
import { monthOf } from './day.ts';
import type { Hemisphere } from './studio.ts';

/** Meteorological seasons: each is three whole calendar months, winter in the north being December to February. */
export const SEASONS = ['winter', 'spring', 'summer', 'autumn'] as const;
export type Season = (typeof SEASONS)[number];

export const MONTH_NAMES = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;
export type MonthName = (typeof MONTH_NAMES)[number];

/** Season of a month, 1 to 12; throws RangeError on any other. */
export function seasonOf(month: number, hemisphere: Hemisphere): Season {
  if (!Number.isInteger(month) || month < 1 || month > 12) throw new RangeError(`no month ${month}`);
  const quarter = Math.floor((month % 12) / 3);
  return SEASONS[(quarter + (hemisphere === 'south' ? 2 : 0)) % 4] as Season;
}

export function seasonOfDay(day: Day, hemisphere: Hemisphere): Season {
  return seasonOf(monthOf(day), hemisphere);
}

/** The three months of a season in the order they come; a northern winter begins in December of the year before. */
export function monthsOf(season: Season, hemisphere: Hemisphere): readonly [number, number, number] {
  const first = (SEASONS.indexOf(season) * 3 + (hemisphere === 'south' ? 6 : 0) + 11) % 12;
  return [first + 1, ((first + 1) % 12) + 1, ((first + 2) % 12) + 1];
}

/** Mean of a monthly table over a season's three months. `table` starts with January. */
export function seasonalMean(table: readonly number[], season: Season, hemisphere: Hemisphere): number {
  if (table.length !== 12) throw new RangeError(`a monthly table has 12 figures, not ${table.length}`);
  return monthsOf(season, hemisphere).reduce((sum, month) => sum + (table[month - 1] as number), 0) / 3;
}

export function monthName(month: number): MonthName {
  const name = MONTH_NAMES[month - 1];
  if (!name) throw new RangeError(`no month ${month}`);
  return name;
}

/** The month after, 1 to 12. */
export function monthAfter(month: number): number {
  return (month % 12) + 1;
}
