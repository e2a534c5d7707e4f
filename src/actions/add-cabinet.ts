import type { Entry } from '../domain/entry.ts';
import { type AddCabinet, planAddCabinet } from '../domain/plans/add-cabinet.ts';
import type { Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Writes down a cabinet with all its drawers, in one action. */
export function addCabinet({ keeper }: Pick<Deps, 'keeper'>, command: AddCabinet): Promise<readonly Entry[] | Problem> {
  return keeper.act((shelf, desk) => planAddCabinet(shelf, desk, command));
}
