import type { Entry } from '../domain/entry.ts';
import { type DiscardWax, planDiscardWax } from '../domain/plans/discard-wax.ts';
import type { Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Writes down wax that was thrown out. */
export function discardWax({ keeper }: Pick<Deps, 'keeper'>, command: DiscardWax): Promise<readonly Entry[] | Problem> {
  return keeper.act((shelf, desk) => planDiscardWax(shelf, desk, command));
}
