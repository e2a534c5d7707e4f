import { formProblem } from '../form-problem.ts';
import { type Problem, problem } from '../problem.ts';

export const noSuchWax = problem('This wax is no longer recorded.', 'Nothing has been written down; what you typed is still in the form.');

/** Grams have to be there, and none or more. */
export function wrongGrams(grams: number | undefined): Problem | undefined {
  if (grams === undefined || !Number.isFinite(grams)) return formProblem({ grams: 'Say how much, as a number.' });
  if (grams < 0) return formProblem({ grams: 'Wax cannot weigh less than nothing.' });
  return undefined;
}
