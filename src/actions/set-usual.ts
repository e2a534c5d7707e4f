import type { ThingId } from '../domain/brand.ts';
import type { Entry } from '../domain/entry.ts';
import { planSetUsual } from '../domain/plans/set-usual.ts';
import type { Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Makes the place where each thing stands now its usual one. */
export function setUsual({ keeper }: Pick<Deps, 'keeper'>, things: readonly ThingId[]): Promise<readonly Entry[] | Problem> {
  return keeper.act((shelf, desk) => planSetUsual(shelf, desk, things));
}
