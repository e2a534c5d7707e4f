import type { Entry } from '../domain/entry.ts';
import { planAllowances, type SetAllowances } from '../domain/plans/allowances.ts';
import type { Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Puts the studio's own shrinkage figures down. */
export function setAllowances({ keeper }: Pick<Deps, 'keeper'>, command: SetAllowances): Promise<readonly Entry[] | Problem> {
  return keeper.act((shelf, desk) => planAllowances(shelf, desk, command));
}
