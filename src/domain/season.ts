import type { Hemisphere } from './studio.ts';

/** Meteorological seasons: each is three whole calendar months, winter in the north being December to February. */
const SEASONS = ['winter', 'spring', 'summer', 'autumn'] as const;
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

export function monthName(month: number): MonthName {
  const name = MONTH_NAMES[month - 1];
  if (!name) throw new RangeError(`no month ${month}`);
  return name;
}

/** The month after, 1 to 12. */
export function monthAfter(month: number): number {
  return (month % 12) + 1;
}
