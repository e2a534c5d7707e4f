import { type Problem, problem } from './problem.ts';

/** What is wrong with a form, field by field, so that each sentence can stand beside what it is about. */
export interface FormProblem extends Problem {
  readonly fields: Readonly<Record<string, string>>;
}

const KEPT = 'Nothing has been written down yet; what you typed is still in the form.';

/** Each sentence is said once above the form, however many fields it stands beside. */
export function formProblem(fields: Readonly<Record<string, string>>): FormProblem {
  return { ...problem([...new Set(Object.values(fields))].join(' '), KEPT), fields };
}

/** The sentence that belongs beside one field. */
export function beside(found: Problem | undefined, field: string): string | undefined {
  return found && 'fields' in found ? (found as FormProblem).fields[field] : undefined;
}
