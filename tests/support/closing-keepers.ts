import { afterEach } from 'vitest';
import type { Keeper, KeeperOptions } from '../../src/store/keeper.ts';
import { aKeeper } from './database.ts';

/** How a test file opens keepers that are closed after each test, whatever became of it. */
export function closingKeepers(): (name: string, over?: Partial<KeeperOptions>) => Promise<Keeper> {
  const keepers: Keeper[] = [];
  afterEach(() => {
    for (const keeper of keepers.splice(0)) keeper.close();
  });
  return async (name, over) => {
    const keeper = await aKeeper(name, over);
    keepers.push(keeper);
    return keeper;
  };
}
