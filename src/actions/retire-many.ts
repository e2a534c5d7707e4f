import type { Entry } from '../domain/entry.ts';
import { planRetireMany, type RetireMany } from '../domain/plans/retire-many.ts';
import type { Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Takes several things out of use for one reason. */
export function retireMany({ keeper }: Pick<Deps, 'keeper'>, command: RetireMany): Promise<readonly Entry[] | Problem> {
  return keeper.act((shelf, desk) => planRetireMany(shelf, desk, command));
}
