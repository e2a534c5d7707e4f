import { RESCUED } from '../store/schema.ts';
import type { Rescued } from '../store/second-copy.ts';
import type { Deps } from './deps.ts';

export type { Rescued };

/** What was put back after the browser had thrown the database away, until somebody has read of it. */
export async function rescuedHere({ keeper }: Pick<Deps, 'keeper'>): Promise<Rescued | undefined> {
  return (await keeper.recall(RESCUED)) as Rescued | undefined;
}

export function forgetRescued({ keeper }: Pick<Deps, 'keeper'>): Promise<void> {
  return keeper.remember(RESCUED, undefined);
}
