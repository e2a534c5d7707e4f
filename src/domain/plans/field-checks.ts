import type { Code, Day } from '../brand.ts';
import type { Check, Checks } from '../field.ts';
import { FIELDS } from '../fields.ts';
import { formProblem } from '../form-problem.ts';
import { nounOfCode, parseCode } from '../label.ts';
import { NOUNS, type Noun } from '../noun.ts';
import { isProblem, type Problem } from '../problem.ts';
import { fieldOf, wrongInWords } from '../range-words.ts';
import { danglingRefs } from '../refs.ts';
import type { Shelf, Thing } from '../shelf.ts';
import { NOUN_WORD, titleOf } from '../title.ts';
import type { Units } from '../units.ts';

/** Every field of a record checked, all that is wrong told at once, figures in these units. `null` (a field to clear) passes. */
export function checkedFields(
  noun: Noun,
  raw: Readonly<Record<string, unknown>>,
  units?: Units,
): Readonly<Record<string, unknown>> | Problem {
  const checks: Checks = FIELDS[noun];
  const wrong: Record<string, string> = {};
  const fields: Record<string, unknown> = {};
  for (const [field, value] of Object.entries(raw)) {
    if (value === undefined) continue;
    const check = Object.hasOwn(checks, field) ? checks[field] : undefined;
    const read = !check ? undefined : value === null ? null : (field === 'code' ? codeFor(noun) : check)(value);
    if (read === undefined) wrong[field] = `A ${NOUN_WORD[noun]} has no field “${field.slice(0, 40)}”.`;
    else if (isProblem(read)) wrong[fieldOf(field, read)] = wrongInWords(field, read, units);
    else fields[field] = read;
  }
  return Object.keys(wrong).length > 0 ? formProblem(wrong) : fields;
}

function codeFor(noun: Noun): Check<Code> {
  return (raw) => {
    const code = parseCode(raw);
    if (isProblem(code) || nounOfCode(code) === noun) return code;
    return formProblem({ code: `${code} is the label of a ${NOUN_WORD[nounOfCode(code)]}, not of a ${NOUN_WORD[noun]}.` });
  };
}

/** The thing that carries a code. */
function bearerOf(shelf: Shelf, code: string): Thing | undefined {
  for (const noun of NOUNS) {
    for (const thing of (shelf.things[noun] as ReadonlyMap<string, Thing>).values()) if (thing.code === code) return thing;
  }
  return undefined;
}

/** What is wrong between the fields of one record, or between it and the rest of the shelf. */
export function crossProblem(shelf: Shelf, fields: Readonly<Record<string, unknown>>, today: Day, self?: string): Problem | undefined {
  const dangling = danglingRefs(shelf, fields);
  if (dangling) return dangling;
  const bearer = typeof fields['code'] === 'string' ? bearerOf(shelf, fields['code']) : undefined;
  if (bearer && bearer.id !== self) {
    return formProblem({ code: `${String(fields['code'])} is on ${titleOf(shelf, bearer)} already, a ${NOUN_WORD[bearer.noun]}.` });
  }
  const { made } = fields;
  if (typeof made === 'string' && made > today) return formProblem({ made: 'That day has not come yet.' });
  for (const [low, high, says] of ORDERED) {
    const [a, b] = [fields[low], fields[high]];
    if (typeof a === 'number' && typeof b === 'number' && a > b) return formProblem({ [high]: says });
  }
  return undefined;
}

const ORDERED = [
  ['from', 'to', 'The last year is before the first.'],
  ['roomLowC', 'roomHighC', 'The highest room temperature is below the lowest.'],
  ['injectLowC', 'injectHighC', 'The highest injection temperature is below the lowest.'],
  ['pressureLowKpa', 'pressureHighKpa', 'The highest pressure is below the lowest.'],
] as const;
