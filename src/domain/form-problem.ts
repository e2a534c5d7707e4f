import { type Problem, problem } from './problem.ts';
import { isWarning } from './warning.ts';

/** What is wrong with a form, field by field, so that each sentence can stand beside what it is about. */
export interface FormProblem extends Problem {
  readonly fields: Readonly<Record<string, string>>;
}

const KEPT = 'Nothing has been written down yet; what you typed is still in the form.';

/** Each sentence is said once above the form, however many fields it stands beside. */
export function formProblem(fields: Readonly<Record<string, string>>): FormProblem {
  return { ...problem([...new Set(Object.values(fields))].join(' '), KEPT), fields };
}

/**
 * What is left of a problem once the form holds something else: not what was said of a field that was changed since, or of a part of it
 * (`injection.waxC`), and no warning, which was of the form as it was.
 */
export function stillWrong(found: Problem, then: object, now: object): Problem | undefined {
  const [was, is] = [then, now] as [Readonly<Record<string, unknown>>, Readonly<Record<string, unknown>>];
  const changed = Object.keys({ ...was, ...is }).filter((key) => was[key] !== is[key]);
  if (changed.length === 0) return found;
  if (isWarning(found)) return undefined;
  if (!('fields' in found)) return found;
  const all = Object.entries((found as FormProblem).fields);
  const left = all.filter(([field]) => !changed.some((key) => key === field || key.startsWith(`${field}.`)));
  if (left.length === all.length) return found;
  return left.length === 0 ? undefined : formProblem(Object.fromEntries(left));
}

/** The sentence that belongs beside one field. */
export function beside(found: Problem | undefined, field: string): string | undefined {
  return found && 'fields' in found ? (found as FormProblem).fields[field] : undefined;
}
