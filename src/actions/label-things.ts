import type { ThingId } from '../domain/brand.ts';
import type { Entry } from '../domain/entry.ts';
import { planGiveCodes, planMarkLabelled } from '../domain/plans/label-things.ts';
import type { Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Gives each thing without a label code one. */
export function giveCodes({ keeper }: Pick<Deps, 'keeper'>, things: readonly ThingId[]): Promise<readonly Entry[] | Problem> {
  return keeper.act((shelf, desk) => planGiveCodes(shelf, desk, things));
}

/** Writes down that the things carry their printed label from today on. */
export function markLabelled({ keeper }: Pick<Deps, 'keeper'>, things: readonly ThingId[]): Promise<readonly Entry[] | Problem> {
  return keeper.act((shelf, desk) => planMarkLabelled(shelf, desk, things));
}
