import type { ImportPlan } from '../domain/csv/plan.ts';
import { planEntries } from '../domain/csv/plan-entries.ts';
import type { Entry } from '../domain/entry.ts';
import { type Problem, problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Said when the shelf has changed since the preview was made, which the preview therefore no longer tells truly. */
export const PREVIEW_OLD = problem(
  'The shelves have changed since this preview was made.',
  'Nothing was brought in. The preview is made afresh: look once more.',
);

/** Brings in the rows of a list, all in one action: one *Undo* takes all of it back. */
export function bringIn(deps: Deps, plan: ImportPlan, flipped: ReadonlySet<number>): Promise<readonly Entry[] | Problem> {
  return deps.keeper.act((shelf, desk) => (shelf.last === plan.last ? planEntries(desk, plan, flipped) : PREVIEW_OLD));
}
