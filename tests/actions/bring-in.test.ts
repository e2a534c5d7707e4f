import 'fake-indexeddb/auto';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { bringIn, PREVIEW_OLD } from '../../src/actions/bring-in.ts';
import type { Deps } from '../../src/actions/deps.ts';
import { withdraw } from '../../src/actions/withdraw.ts';
import { sampleList } from '../../src/domain/csv/sample.ts';
import { isProblem } from '../../src/domain/problem.ts';
import { type Keeper, openKeeper } from '../../src/store/keeper.ts';
import { importCounts } from '../../src/views/import-preview.ts';
import { chance } from '../support/chance.ts';
import { IMPORT_DAY, planOf } from '../support/import.ts';

let studios = 0;
let keeper: Keeper;
let deps: Deps;
const random = chance(11);

async function open(name: string): Promise<Keeper> {
  const opened = await openKeeper({
    name,
    now: () => 1_795_000_000_000,
    today: () => IMPORT_DAY,
    bytes: (count) => Uint8Array.from({ length: count }, () => random() * 256),
    whenIdle: () => undefined,
  });
  if (isProblem(opened)) throw new Error(opened.says);
  return opened;
}

beforeEach(async () => {
  studios += 1;
  keeper = await open(`list-${studios}`);
  deps = { keeper } as Deps;
});
afterEach(() => {
  vi.restoreAllMocks();
  keeper.close();
});

const none = new Set<number>();

describe('bringing in a list', () => {
  test('all of it is one action, kept over a restart, and one undo gives the old shelf back', async () => {
    const plan = planOf(sampleList(), 'mould', keeper.shelf());
    const done = await bringIn(deps, plan, none);
    if (isProblem(done)) throw new Error(done.says);
    expect(keeper.shelf().things.mould.size).toBe(8);
    keeper.close();
    keeper = await open(keeper.name);
    expect(keeper.shelf().things.mould.size).toBe(8);
    await withdraw({ keeper } as Deps, done[0]?.id as never);
    expect(Object.values(keeper.shelf().things).map((things) => things.size)).toEqual(Array(11).fill(0));
  });
  test('a row that was chosen the other way', async () => {
    const plan = planOf(sampleList(), 'mould', keeper.shelf());
    await bringIn(deps, plan, new Set([9]));
    expect([...keeper.shelf().things.mould.values()].map((mould) => mould.name)).not.toContain('K-008');
    expect([...keeper.shelf().things.period.values()].map((period) => period.name)).toEqual(['Minoan', 'La Tène']);
  });
  test('a preview made before the shelf changed is not used', async () => {
    const plan = planOf(sampleList(), 'mould', keeper.shelf());
    await keeper.act((_shelf, desk) => [{ ...desk.entry(), kind: 'recorded', noun: 'wax', fields: { name: 'Amber' } }]);
    const before = keeper.shelf();
    expect(await bringIn(deps, plan, none)).toBe(PREVIEW_OLD);
    expect(keeper.shelf()).toBe(before);
  });
  test('when the storage fails midway nothing is brought in', async () => {
    const plan = planOf(sampleList(), 'mould', keeper.shelf());
    const before = keeper.shelf();
    vi.spyOn(IDBObjectStore.prototype, 'add').mockImplementation(() => {
      throw new DOMException('full', 'QuotaExceededError');
    });
    expect(await bringIn(deps, plan, none)).toMatchObject({ problem: true });
    expect(keeper.shelf()).toBe(before);
    vi.restoreAllMocks();
    expect(await keeper.journal()).toEqual([]);
  });
});

test('what a preview counts follows the rows that are taken', () => {
  const plan = planOf(sampleList(), 'mould', keeper.shelf());
  const all = importCounts(plan, none);
  expect(all.rows).toEqual({ new: 6, exists: 0, doubtful: 2, unreadable: 1 });
  expect(all.taken).toBe(8);
  expect(Object.fromEntries(all.things.map(({ noun, count }) => [noun, count]))).toEqual({ place: 7, period: 3, design: 5, mould: 8 });
  const fewer = importCounts(plan, new Set([9]));
  expect(fewer.taken).toBe(7);
  expect(Object.fromEntries(fewer.things.map(({ noun, count }) => [noun, count]))).toEqual({ place: 5, period: 2, design: 4, mould: 7 });
});
