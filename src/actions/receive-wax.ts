import type { Entry } from '../domain/entry.ts';
import { planReceiveWax, type ReceiveWax } from '../domain/plans/receive-wax.ts';
import type { Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Writes down wax that came in. */
export function receiveWax({ keeper }: Pick<Deps, 'keeper'>, command: ReceiveWax): Promise<readonly Entry[] | Problem> {
  return keeper.act((shelf, desk) => planReceiveWax(shelf, desk, command));
}
