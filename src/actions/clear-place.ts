import type { Entry } from '../domain/entry.ts';
import { type ClearPlace, planClearPlace } from '../domain/plans/clear-place.ts';
import type { Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Takes a place out and puts what is in it elsewhere, in one action. */
export function clearPlace({ keeper }: Pick<Deps, 'keeper'>, command: ClearPlace): Promise<readonly Entry[] | Problem> {
  return keeper.act((shelf, desk) => planClearPlace(shelf, desk, command));
}
