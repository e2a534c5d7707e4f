import type { Entry } from '../domain/entry.ts';
import { planSetAside, type SetAside } from '../domain/plans/set-aside.ts';
import type { Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Puts off what calls for attention, or brings it back. */
export function setAside({ keeper }: Pick<Deps, 'keeper'>, command: SetAside): Promise<readonly Entry[] | Problem> {
  return keeper.act((shelf, desk) => planSetAside(shelf, desk, command));
}
