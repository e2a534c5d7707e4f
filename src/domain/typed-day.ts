import type { Day } from './brand.ts';
import { parseDay } from './day.ts';
import { dayInWords } from './day-words.ts';
import { isProblem, type Problem, problem } from './problem.ts';

/** Stands for a day that was begun and is not complete, or that no month has: the browser gives no text for either. */
export const UNFINISHED_DAY = '?';

/** The day something happened, as a form holds it: empty for today, which is undefined. A day to come is refused. */
export function parsePastDay(typed: string, today: Day): Day | undefined | Problem {
  if (typed === '') return undefined;
  if (typed === UNFINISHED_DAY) return problem('That day is not complete, or does not exist.');
  const day = parseDay(typed);
  if (isProblem(day)) return day;
  return day > today ? problem(`${dayInWords(day)} has not come yet.`) : day;
}
