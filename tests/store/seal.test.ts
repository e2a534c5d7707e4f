import 'fake-indexeddb/auto';
import { IDBObjectStore } from 'fake-indexeddb';
import { afterEach, describe, expect, it, vi } from 'vitest';
import type { Entry } from '../../src/domain/entry.ts';
import { isProblem } from '../../src/domain/problem.ts';
import type { Keeper } from '../../src/store/keeper.ts';
import { TAIL_KEPT } from '../../src/store/seal.ts';
import { closingKeepers } from '../support/closing-keepers.ts';
import { freshName, mustBe, plainRows } from '../support/database.ts';
import { aJournal } from '../support/entry-builders.ts';
import { plainShelf } from '../support/plain-shelf.ts';

const open = closingKeepers();
afterEach(() => vi.restoreAllMocks());

const STORES = ['tail', 'pages', 'shelf', 'meta'] as const;
async function everything(name: string): Promise<unknown[]> {
  return Promise.all(STORES.map((store) => plainRows(name, store)));
}

/** Acts `count` times, each one entry. */
async function receive(keeper: Keeper, count: number): Promise<Entry[]> {
  const made: Entry[] = [];
  for (let i = 0; i < count; i++) {
    const acted = await keeper.act((_, desk) => [{ ...desk.entry(), kind: 'recorded', noun: 'wax', fields: { name: `wax ${i}` } }]);
    made.push(...mustBe(acted as Entry[]));
  }
  return made;
}

/** The nth write to one of the stores fails, and with it the browser aborts the transaction. */
function breakWrite(method: 'add' | 'put' | 'delete' | 'clear', store: string): void {
  const real = IDBObjectStore.prototype[method] as (...given: unknown[]) => IDBRequest;
  vi.spyOn(IDBObjectStore.prototype, method).mockImplementation(function (this: IDBObjectStore, ...given: unknown[]) {
    const request = real.apply(this, given);
    if (this.name === store) request.addEventListener('success', () => this.transaction.abort());
    return request;
  } as never);
}

describe('sealing', () => {
  it('packs all but the newest entries, keeps their order, and loses none', async () => {
    const name = freshName();
    const keeper = await open(name);
    const made = await receive(keeper, TAIL_KEPT + 30);
    await keeper.seal();
    const pages = await plainRows<{ id: string; last: string; count: number; text: string }>(name, 'pages');
    expect(pages).toEqual([{ id: made[0]?.id, last: made[29]?.id, count: 30, text: JSON.stringify(made.slice(0, 30)) }]);
    expect(await plainRows(name, 'tail')).toHaveLength(TAIL_KEPT);
    expect(await keeper.journal()).toEqual(made);
    await keeper.seal();
    expect(await plainRows(name, 'pages')).toHaveLength(1);
  });

  it('writes only the rows of nouns that changed', async () => {
    const name = freshName();
    const keeper = await open(name);
    mustBe(await keeper.join(aJournal()));
    await receive(keeper, TAIL_KEPT + 1);
    const put = vi.spyOn(IDBObjectStore.prototype, 'put');
    await keeper.seal();
    const nouns = put.mock.calls.map(([row]) => (row as { noun?: string }).noun).filter(Boolean);
    expect(nouns).toEqual(['wax']);
  });

  it('seals a taking-back with what it takes back', async () => {
    const name = freshName();
    const keeper = await open(name);
    const made = await receive(keeper, TAIL_KEPT + 1);
    const target = made[0] as Entry;
    mustBe(await keeper.act((_, desk) => [{ ...desk.entry(), kind: 'withdrawn', entry: target.id }]));
    await receive(keeper, 2);
    const shelf = plainShelf(keeper.shelf());
    await keeper.seal();
    const tail = await plainRows(name, 'tail');
    expect(tail.some((row) => row.text.includes('"withdrawn"'))).toBe(false);
    expect(tail).toHaveLength(2);
    expect(plainShelf(keeper.shelf())).toEqual(shelf);
    expect(plainShelf((await open(name)).shelf())).toEqual(shelf);
  });

  it.each([
    ['add', 'pages'],
    ['put', 'shelf'],
    ['put', 'meta'],
    ['delete', 'tail'],
  ] as const)('broken off after %s of %s leaves the state before, whole', async (method, store) => {
    const name = freshName();
    const keeper = await open(name);
    mustBe(await keeper.join(aJournal()));
    await receive(keeper, TAIL_KEPT + 5);
    const before = await everything(name);
    const shelf = plainShelf(keeper.shelf());
    breakWrite(method, store);
    await keeper.seal();
    vi.restoreAllMocks();
    expect(await everything(name)).toEqual(before);
    expect(plainShelf(keeper.shelf())).toEqual(shelf);
    expect(plainShelf((await open(name)).shelf())).toEqual(shelf);
    await keeper.seal();
    expect(await everything(name)).not.toEqual(before);
    expect(plainShelf((await open(name)).shelf())).toEqual(shelf);
  });

  it.each([
    ['add', 'pages'],
    ['put', 'shelf'],
    ['put', 'meta'],
    ['clear', 'tail'],
  ] as const)('joining and refolding, broken off after %s of %s, leave the state before and say so', async (method, store) => {
    const name = freshName();
    const keeper = await open(name);
    await receive(keeper, 3);
    const before = await everything(name);
    const shelf = keeper.shelf();
    breakWrite(method, store);
    expect(isProblem(await keeper.join(aJournal()))).toBe(true);
    expect(isProblem(await keeper.refold())).toBe(true);
    vi.restoreAllMocks();
    expect(await everything(name)).toEqual(before);
    expect(keeper.shelf()).toBe(shelf);
    expect(mustBe(await keeper.join(aJournal()))).toBe(aJournal().length);
  });
});
