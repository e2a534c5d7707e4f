import type { Day } from '../../src/domain/brand.ts';
import { isProblem } from '../../src/domain/problem.ts';
import { type Keeper, type KeeperOptions, openKeeper } from '../../src/store/keeper.ts';

/** The app's own store, opened in a page of a test as main.tsx opens it; without idle time and a second copy unless told otherwise. */
export async function pageKeeper(name: string, over: Pick<Partial<KeeperOptions>, 'whenIdle' | 'texts'> = {}): Promise<Keeper> {
  const keeper = await openKeeper({
    name,
    now: () => Date.now(),
    today: () => new Date().toISOString().slice(0, 10) as Day,
    bytes: (count) => crypto.getRandomValues(new Uint8Array(count)),
    whenIdle: () => undefined,
    ...over,
  });
  if (isProblem(keeper)) throw new Error(`${keeper.says} ${keeper.kept}`);
  return keeper;
}
