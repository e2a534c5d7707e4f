import type { Day } from './brand.ts';
import { daysBetween, monthOf } from './day.ts';
import { MONTH_NAMES } from './season.ts';

/** “3 March 2026”. */
export function dayInWords(day: Day): string {
  return `${Number(day.slice(8))} ${MONTH_NAMES[monthOf(day) - 1]} ${day.slice(0, 4)}`;
}

/** “today”, “yesterday”, “tomorrow”, else the day itself. */
export function dayFrom(today: Day, day: Day): string {
  const days = daysBetween(today, day);
  if (days === 0) return 'today';
  if (days === -1) return 'yesterday';
  if (days === 1) return 'tomorrow';
  return dayInWords(day);
}

/** A length of time as people say it: “3 days”, “5 months”, “2 years”. */
export function spanInWords(days: number): string {
  const [count, unit] =
    days < 61 ? [Math.round(days), 'day'] : days < 730 ? [Math.round(days / 30.44), 'month'] : [Math.floor(days / 365.25), 'year'];
  return `${count} ${unit}${count === 1 ? '' : 's'}`;
}
