import type { Entry } from '../domain/entry.ts';
import { type Count, planCount } from '../domain/plans/count.ts';
import type { Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Writes down what was counted in a pile. */
export function count({ keeper }: Pick<Deps, 'keeper'>, command: Count): Promise<readonly Entry[] | Problem> {
  return keeper.act((shelf, desk) => planCount(shelf, desk, command));
}
