import type { ThingId } from '../domain/brand.ts';
import type { Entry } from '../domain/entry.ts';
import { planPutBack } from '../domain/plans/lend.ts';
import type { Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Puts things back where they usually stand. */
export function putBack({ keeper }: Pick<Deps, 'keeper'>, things: readonly ThingId[]): Promise<readonly Entry[] | Problem> {
  return keeper.act((shelf, desk) => planPutBack(shelf, desk, things));
}
