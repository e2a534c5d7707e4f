import type { Entry } from '../domain/entry.ts';
import { type Lend, planLend } from '../domain/plans/lend.ts';
import type { Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Lends things to somebody. */
export function lend({ keeper }: Pick<Deps, 'keeper'>, command: Lend): Promise<readonly Entry[] | Problem> {
  return keeper.act((shelf, desk) => planLend(shelf, desk, command));
}
