import type { Entry } from '../domain/entry.ts';
import { planWeighWax, type WeighWax } from '../domain/plans/weigh-wax.ts';
import type { Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Writes down what a tub of wax weighs. */
export function weighWax({ keeper }: Pick<Deps, 'keeper'>, command: WeighWax): Promise<readonly Entry[] | Problem> {
  return keeper.act((shelf, desk) => planWeighWax(shelf, desk, command));
}
