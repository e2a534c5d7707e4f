import { defined } from '../bench.ts';
import type { Day } from '../brand.ts';
import { parseDay } from '../day.ts';
import { dayInWords } from '../day-words.ts';
import type { Entry } from '../entry.ts';
import { formProblem } from '../form-problem.ts';
import { parseEntry } from '../parse-entry.ts';
import { isProblem, type Problem } from '../problem.ts';
import { wrongInWords } from '../range-words.ts';
import type { Units } from '../units.ts';

const KEYED = /^Entry [^:]*: (\w+): (.*)$/s;

/** An entry as it will be kept, through the same check that reads a backup; what is wrong comes back beside the field it is about, figures in these units. */
export function written(raw: object, units?: Units): Entry | Problem {
  const entry = parseEntry(defined(raw));
  if (!isProblem(entry)) return entry;
  const [, field, says] = KEYED.exec(entry.says) ?? [];
  const told = 'range' in entry ? wrongInWords(field ?? '', entry, units) : says;
  return formProblem({ [field ?? 'form']: told ?? entry.says });
}

/** All of them, or the first thing that is wrong. */
export function allWritten(raws: readonly object[], units?: Units): readonly Entry[] | Problem {
  const entries: Entry[] = [];
  for (const raw of raws) {
    const entry = written(raw, units);
    if (isProblem(entry)) return entry;
    entries.push(entry);
  }
  return entries;
}

/** Things are written down after they happen. */
export function notAhead(on: Day | undefined, today: Day, field = 'on'): Problem | undefined {
  if (on === undefined || on <= today) return undefined;
  return formProblem({ [field]: `${dayInWords(on)} has not come yet.` });
}

/** Nothing happens to a thing before it is made. */
export function notBefore(made: Day | undefined, on: Day | undefined): Problem | undefined {
  if (made === undefined || isProblem(parseDay(on)) || (on ?? made) >= made) return undefined;
  return formProblem({ on: `It was made on ${dayInWords(made)}, after that day.` });
}

/** A day to come, for a next look or a return. */
export function notPast(day: Day | undefined, today: Day, field: string): Problem | undefined {
  if (day === undefined || day >= today) return undefined;
  return formProblem({ [field]: `${dayInWords(day)} has gone by already.` });
}
