import type { Code, ThingId } from '../domain/brand.ts';
import type { Entry } from '../domain/entry.ts';
import { planCorrect } from '../domain/plans/correct.ts';
import type { Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Writes down that a thing carries a label from now on, in place of any it had. */
export function putLabel(deps: Deps, of: ThingId, code: Code): Promise<readonly Entry[] | Problem> {
  return deps.keeper.act((shelf, desk) => planCorrect(shelf, desk, { of, fields: { code } }));
}
