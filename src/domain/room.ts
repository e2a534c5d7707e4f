import type { Celsius, Day } from './brand.ts';
import { monthOf } from './day.ts';
import { monthAfter } from './season.ts';
import type { Hemisphere, MONTHS, StudioFields } from './studio.ts';

export type Month = (typeof MONTHS)[number];

/** Coldest and warmest a workshop usually is in a month, °C. */
export interface Room {
  readonly lowC: Celsius;
  readonly highC: Celsius;
}

export interface MonthRoom extends Room {
  readonly month: Month;
  /** False where the default stands, which no studio measured. */
  readonly isOwn: boolean;
}

/**
 * Low and high in a lightly heated northern workshop, January first, °C. Common practice, from memory, no source: a start to be put
 * right by the studio.
 */
const DEFAULT_NORTH: readonly (readonly [number, number])[] = [
  [13, 18],
  [13, 18],
  [14, 19],
  [15, 20],
  [16, 22],
  [18, 25],
  [19, 27],
  [19, 27],
  [17, 23],
  [15, 20],
  [14, 19],
  [13, 18],
];

/** What a workshop of that hemisphere is taken to be where the studio has said nothing: the south is six months on. */
export function defaultRoom(month: number, hemisphere: Hemisphere): Room {
  const index = (month - 1 + (hemisphere === 'south' ? 6 : 0)) % 12;
  const pair = DEFAULT_NORTH[index];
  if (!pair) throw new RangeError(`no month ${month}`);
  return { lowC: pair[0] as Celsius, highC: pair[1] as Celsius };
}

/** The studio's own figures for a month, over the default. */
export function roomIn(month: number, studio: StudioFields): MonthRoom {
  const key = String(month) as Month;
  const own = studio.months?.[key];
  return own ? { month: key, ...own, isOwn: true } : { month: key, ...defaultRoom(month, hemisphereOf(studio)), isOwn: false };
}

/** All twelve months, January first. */
export function roomTable(studio: StudioFields): readonly MonthRoom[] {
  return Array.from({ length: 12 }, (_, i) => roomIn(i + 1, studio));
}

export function roomToday(today: Day, studio: StudioFields): MonthRoom {
  return roomIn(monthOf(today), studio);
}

export function roomNextMonth(today: Day, studio: StudioFields): MonthRoom {
  return roomIn(monthAfter(monthOf(today)), studio);
}

/** The temperature a day's work is planned for when none was read: the middle of the month's low and high, °C, to half a degree. */
export function roomAssumed(today: Day, studio: StudioFields): Celsius {
  const { lowC, highC } = roomToday(today, studio);
  return (Math.round(lowC + highC) / 2) as Celsius;
}

export function hemisphereOf(studio: StudioFields): Hemisphere {
  return studio.hemisphere ?? 'north';
}
