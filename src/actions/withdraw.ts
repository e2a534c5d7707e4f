import type { EntryId } from '../domain/brand.ts';
import type { Entry } from '../domain/entry.ts';
import type { Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Undo: takes an action back, named by its first entry. Taking back the taking-back does it again. */
export function withdraw(deps: Deps, entry: EntryId): Promise<readonly Entry[] | Problem> {
  return deps.keeper.act((_shelf, desk) => [{ ...desk.entry(), kind: 'withdrawn', entry }]);
}
