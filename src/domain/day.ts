import { addDays as plusDays, differenceInCalendarDays, differenceInMonths, formatISO, isValid, parseISO } from 'date-fns';
import type { Day } from './brand.ts';
import { type Problem, problem } from './problem.ts';

const SHAPE = /^\d{4}-\d{2}-\d{2}$/;

/** A calendar day that exists, written `YYYY-MM-DD`. */
export function parseDay(raw: unknown): Day | Problem {
  if (typeof raw === 'string' && SHAPE.test(raw) && isValid(parseISO(raw))) return raw as Day;
  return problem(`“${String(raw).slice(0, 40)}” is not a day that exists (YYYY-MM-DD).`);
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
