import type { Entry } from '../domain/entry.ts';
import { type FillInjector, planFillInjector } from '../domain/plans/fill-injector.ts';
import type { Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Writes down which wax an injector holds. */
export function fillInjector({ keeper }: Pick<Deps, 'keeper'>, command: FillInjector): Promise<readonly Entry[] | Problem> {
  return keeper.act((shelf, desk) => planFillInjector(shelf, desk, command));
}
