import type { ThingId } from '../domain/brand.ts';
import type { Entry } from '../domain/entry.ts';
import { type MarkDoubtful, planLookedAt, planMarkDoubtful } from '../domain/plans/mark-doubtful.ts';
import type { Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Marks what a failing mould made for a look. */
export function markDoubtful({ keeper }: Pick<Deps, 'keeper'>, command: MarkDoubtful): Promise<readonly Entry[] | Problem> {
  return keeper.act((shelf, desk) => planMarkDoubtful(shelf, desk, command));
}

/** Says that something marked was looked at. */
export function lookedAt({ keeper }: Pick<Deps, 'keeper'>, of: ThingId): Promise<readonly Entry[] | Problem> {
  return keeper.act((shelf, desk) => planLookedAt(shelf, desk, { of }));
}
