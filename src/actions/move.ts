import type { Entry } from '../domain/entry.ts';
import { type Move, planMove } from '../domain/plans/move.ts';
import type { Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Moves things to a place, all in one go. */
export function move({ keeper }: Pick<Deps, 'keeper'>, command: Move): Promise<readonly Entry[] | Problem> {
  return keeper.act((shelf, desk) => planMove(shelf, desk, command));
}
