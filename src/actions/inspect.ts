import type { Entry } from '../domain/entry.ts';
import { type Inspect, planInspect } from '../domain/plans/inspect.ts';
import type { Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Writes down a look at a mould or a master. */
export function inspect({ keeper }: Pick<Deps, 'keeper'>, command: Inspect): Promise<readonly Entry[] | Problem> {
  return keeper.act((shelf, desk) => planInspect(shelf, desk, command));
}
