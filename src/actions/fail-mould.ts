import type { Entry } from '../domain/entry.ts';
import { type FailMould, planFailMould } from '../domain/plans/fail-mould.ts';
import type { Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Writes down that a mould must not be used any more. */
export function failMould({ keeper }: Pick<Deps, 'keeper'>, command: FailMould): Promise<readonly Entry[] | Problem> {
  return keeper.act((shelf, desk) => planFailMould(shelf, desk, command));
}
