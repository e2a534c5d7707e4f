import { formProblem } from '../form-problem.ts';
import type { Problem } from '../problem.ts';
import { type Shelf, type Thing, thingOf } from '../shelf.ts';
import { titleOf } from '../title.ts';
import { ancestorsOf } from './descent.ts';
import { isKin } from './kin.ts';

const PARENT_FIELDS = ['from', 'master', 'masters', 'mould'] as const;

/** Refuses a correction that would make a thing come from itself, or from something that came of it. */
export function loopProblem(shelf: Shelf, thing: Thing, changed: Readonly<Record<string, unknown>>): Problem | undefined {
  if (!isKin(thing)) return undefined;
  for (const field of PARENT_FIELDS) {
    const value = changed[field];
    for (const id of Array.isArray(value) ? value : [value]) {
      if (typeof id !== 'string') continue;
      const other = titleOf(shelf, thingOf(shelf, id));
      if (id === thing.id) return formProblem({ [field]: 'Nothing comes from itself. Choose what it was really made from.' });
      if (ancestorsOf(shelf, id).has(thing.id))
        return formProblem({ [field]: `${other} came from this one, so this one cannot have come from it.` });
    }
  }
  return undefined;
}
