import type { Entry } from '../domain/entry.ts';
import { type Correct, planCorrect } from '../domain/plans/correct.ts';
import type { Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Puts fields of a thing right. */
export function correct({ keeper }: Pick<Deps, 'keeper'>, command: Correct): Promise<readonly Entry[] | Problem> {
  return keeper.act((shelf, desk) => planCorrect(shelf, desk, command));
}
