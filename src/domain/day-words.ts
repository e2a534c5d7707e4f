import { format, parseISO } from 'date-fns';
import type { Day } from './brand.ts';
import { daysBetween } from './day.ts';

/** “3 March 2026”. */
export function dayInWords(day: Day): string {
  return format(parseISO(day), 'd MMMM yyyy');
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
  const [count, unit] = days < 61 ? [Math.round(days), 'day'] : days < 730 ? [Math.round(days / 30.44), 'month'] : [Math.floor(days / 365.25), 'year'];
  return `${count} ${unit}${count === 1 ? '' : 's'}`;
}
