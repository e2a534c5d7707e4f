import type { Entry } from '../domain/entry.ts';
import { type Measure, planMeasure } from '../domain/plans/measure.ts';
import type { Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Writes down caliper readings and a weight. */
export function measure({ keeper }: Pick<Deps, 'keeper'>, command: Measure): Promise<readonly Entry[] | Problem> {
  return keeper.act((shelf, desk) => planMeasure(shelf, desk, command));
}
