import { differenceInCalendarDays, differenceInMonths, formatISO, isValid, parseISO, addDays as plusDays } from 'date-fns';
import type { Day } from './brand.ts';
import { type Problem, problem, quoted } from './problem.ts';

const SHAPE = /^(\d{4})-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/;

/** A calendar day that exists, written `YYYY-MM-DD`. */
export function parseDay(raw: unknown): Day | Problem {
  const parts = typeof raw === 'string' ? SHAPE.exec(raw) : null;
  // Every month has 28 days, which spares most entries of a journal the calendar.
  if (parts && (Number(parts[3]) <= 28 || isValid(parseISO(raw as string)))) return raw as Day;
  return problem(`${quoted(raw)} is not a day that exists (YYYY-MM-DD).`);
}

export function addDays(day: Day, days: number): Day {
  return formatISO(plusDays(parseISO(day), days), { representation: 'date' }) as Day;
}

/** Whole days from `from` to `to`; negative when `to` is earlier. */
export function daysBetween(from: Day, to: Day): number {
  return differenceInCalendarDays(parseISO(to), parseISO(from));
}

export function yearsBetween(from: Day, to: Day): number {
  return differenceInMonths(parseISO(to), parseISO(from)) / 12;
}

/** 1 for January … 12 for December. */
export function monthOf(day: Day): number {
  return Number(day.slice(5, 7));
}
