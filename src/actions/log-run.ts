import type { Entry } from '../domain/entry.ts';
import { type LogRun, planLogRun } from '../domain/plans/log-run.ts';
import type { Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Writes down a sitting of shots of one mould. */
export function logRun({ keeper }: Pick<Deps, 'keeper'>, command: LogRun): Promise<readonly Entry[] | Problem> {
  return keeper.act((shelf, desk) => planLogRun(shelf, desk, command));
}
