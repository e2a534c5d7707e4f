import 'fake-indexeddb/auto';
import type { Day } from '../../src/domain/brand.ts';
import { isProblem, type Problem } from '../../src/domain/problem.ts';
import { type Keeper, type KeeperOptions, openKeeper } from '../../src/store/keeper.ts';
import { START_DAY, START_MS } from './builders.ts';
import { chance } from './chance.ts';

let databases = 0;

/** A database name not used before in this run. */
export function freshName(): string {
  databases += 1;
  return `studio-${databases}`;
}

/** Jobs put off until there is time to spare, for a test to run when it likes. */
export class Idle {
  private jobs: (() => void)[] = [];
  readonly whenIdle = (job: () => void) => void this.jobs.push(job);

  run(): void {
    for (const job of this.jobs.splice(0)) job();
  }

  get waiting(): number {
    return this.jobs.length;
  }
}

let seed = 100;

/** Options with a clock that moves a second at each look, and chance of their own. */
export function keeperOptions(name: string, over: Partial<KeeperOptions> = {}): KeeperOptions {
  seed += 1;
  const draw = chance(seed);
  let nowMs = START_MS;
  return {
    name,
    now: () => {
      nowMs += 1000;
      return nowMs;
    },
    today: () => START_DAY as Day,
    bytes: (count) => Uint8Array.from({ length: count }, () => Math.floor(draw() * 256)),
    whenIdle: () => undefined,
    ...over,
  };
}

export function mustBe<T>(value: T | Problem): T {
  if (isProblem(value)) throw new Error(`${value.says} ${value.kept}`);
  return value;
}

export async function aKeeper(name: string, over: Partial<KeeperOptions> = {}): Promise<Keeper> {
  return mustBe(await openKeeper(keeperOptions(name, over)));
}

/** Waits until something holds, such as another tab having heard of an entry. */
export async function until(holds: () => boolean): Promise<void> {
  for (let i = 0; i < 400; i++) {
    if (holds()) return;
    await new Promise((resolve) => setTimeout(resolve, 5));
  }
  throw new Error('waited for two seconds, in vain');
}

/** All rows of one store, read with nothing but IndexedDB. */
export function plainRows<T = { text: string }>(name: string, store: string): Promise<T[]> {
  return new Promise((resolve, reject) => {
    const open = indexedDB.open(name);
    open.onerror = () => reject(open.error);
    open.onsuccess = () => {
      const read = open.result.transaction(store).objectStore(store).getAll();
      read.onsuccess = () => {
        open.result.close();
        resolve(read.result as T[]);
      };
    };
  });
}

/** Changes rows of one store with nothing but IndexedDB. */
export function plainPut(name: string, store: string, rows: readonly unknown[]): Promise<void> {
  return new Promise((resolve, reject) => {
    const open = indexedDB.open(name);
    open.onerror = () => reject(open.error);
    open.onsuccess = () => {
      const writing = open.result.transaction(store, 'readwrite');
      for (const row of rows) writing.objectStore(store).put(row);
      writing.oncomplete = () => {
        open.result.close();
        resolve();
      };
    };
  });
}
