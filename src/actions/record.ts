import type { Entry } from '../domain/entry.ts';
import { planRecord, type RecordThing } from '../domain/plans/record.ts';
import type { Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Writes down a new thing, or several alike. */
export function record({ keeper }: Pick<Deps, 'keeper'>, command: RecordThing): Promise<readonly Entry[] | Problem> {
  return keeper.act((shelf, desk) => planRecord(shelf, desk, command));
}
