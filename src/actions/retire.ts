import type { Entry } from '../domain/entry.ts';
import { planRetire, type Retire } from '../domain/plans/retire.ts';
import type { Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Takes a thing out of use. */
export function retire({ keeper }: Pick<Deps, 'keeper'>, command: Retire): Promise<readonly Entry[] | Problem> {
  return keeper.act((shelf, desk) => planRetire(shelf, desk, command));
}
