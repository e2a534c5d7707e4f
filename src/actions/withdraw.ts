import type { EntryId } from '../domain/brand.ts';
import type { Entry } from '../domain/entry.ts';
import { type Problem, problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** A second taking-back would have to be taken back as well before the first one's *Do it again* did anything. */
export const TAKEN_BACK = problem('That has been taken back already.', 'Nothing was changed.');

/** Undo: takes an action back, named by its first entry. Taking back the taking-back does it again. */
export function withdraw({ keeper }: Pick<Deps, 'keeper'>, entry: EntryId): Promise<readonly Entry[] | Problem> {
  return keeper.act((_shelf, desk) => (keeper.isTakenBack(entry) ? TAKEN_BACK : [{ ...desk.entry(), kind: 'withdrawn', entry }]));
}
