import type { Entry } from '../domain/entry.ts';
import { planRecordMany, type RecordMany } from '../domain/plans/record-many.ts';
import type { Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Writes down several things like one that is recorded, numbered on from it. */
export function recordMany({ keeper }: Pick<Deps, 'keeper'>, command: RecordMany): Promise<readonly Entry[] | Problem> {
  return keeper.act((shelf, desk) => planRecordMany(shelf, desk, command));
}
