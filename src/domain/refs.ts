import { formProblem } from './form-problem.ts';
import type { Noun } from './noun.ts';
import type { Problem } from './problem.ts';
import { type Shelf, thingOf } from './shelf.ts';
import { NOUN_WORD, titleOf } from './title.ts';

/** Which kind of thing a field points at. A master's `from` may be a master, a mould, an injected wax or a casting. */
const REF_NOUNS: Readonly<Record<string, readonly Noun[]>> = {
  in: ['place'],
  periods: ['period'],
  design: ['design'],
  master: ['master'],
  masters: ['master'],
  from: ['master', 'mould', 'injectedWax', 'casting'],
  wax: ['wax'],
  holds: ['wax'],
  mould: ['mould'],
  flask: ['flask'],
};

/** Whether everything that fields point at is there, and of the right kind. */
export function danglingRefs(shelf: Shelf, fields: object): Problem | undefined {
  for (const [field, value] of Object.entries(fields)) {
    const nouns = REF_NOUNS[field];
    if (!nouns || value === null || value === undefined) continue;
    for (const id of Array.isArray(value) ? value : [value]) {
      // A period's `from` is a year.
      if (typeof id !== 'string') continue;
      const thing = thingOf(shelf, id);
      if (!thing) return formProblem({ [field]: 'What was chosen here is no longer recorded. Choose again.' });
      if (!nouns.includes(thing.noun))
        return formProblem({ [field]: `${titleOf(shelf, thing)} is a ${NOUN_WORD[thing.noun]} and does not belong here.` });
    }
  }
  return undefined;
}
