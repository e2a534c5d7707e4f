import 'fake-indexeddb/auto';
import type { Entry } from '../../src/domain/entry.ts';
import { isProblem } from '../../src/domain/problem.ts';
import { type Keeper, openKeeper } from '../../src/store/keeper.ts';
import { MouldkeepDb } from '../../src/store/schema.ts';
import { START_DAY, START_MS } from './builders.ts';
import { chance } from './chance.ts';

let opened = 0;

/** A keeper on a database of its own in memory, an hour after the builders' start, with these entries in it. */
export async function aKeeper(entries: readonly Entry[] = [], name = `test-${++opened}`): Promise<Keeper> {
  const draw = chance(opened);
  const keeper = await openKeeper({
    name,
    now: () => START_MS + 1000 * 60 * 60_000,
    today: () => START_DAY,
    bytes: (count) => Uint8Array.from({ length: count }, () => Math.floor(draw() * 256)),
    whenIdle: () => undefined,
  });
  if (isProblem(keeper)) throw new Error(keeper.says);
  const joined = await keeper.join(entries);
  if (isProblem(joined)) throw new Error(joined.says);
  return keeper;
}

/** Makes every later write of an entry fail as a full disk does; returns how to mend it. */
export function fillDisk(): () => void {
  const original = IDBObjectStore.prototype.add;
  IDBObjectStore.prototype.add = () => {
    throw new DOMException('no room', 'QuotaExceededError');
  };
  return () => {
    IDBObjectStore.prototype.add = original;
  };
}

/** What another tab or the next start would read. */
export async function reopened(keeper: Keeper): Promise<Keeper> {
  keeper.close();
  return aKeeper([], keeper.name);
}

/** Number of rows written so far. */
export async function tailRows(keeper: Keeper): Promise<number> {
  const db = new MouldkeepDb(keeper.name);
  try {
    return await db.tail.count();
  } finally {
    db.close();
  }
}
