import 'fake-indexeddb/auto';
import { IDBObjectStore } from 'fake-indexeddb';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { clockOf } from '../../src/domain/clock.ts';
import type { Entry } from '../../src/domain/entry.ts';
import { foldAll } from '../../src/domain/fold.ts';
import { isProblem, problem } from '../../src/domain/problem.ts';
import { type MakePlan, openKeeper } from '../../src/store/keeper.ts';
import { TAIL_FULL } from '../../src/store/seal.ts';
import { closingKeepers } from '../support/closing-keepers.ts';
import { freshName, Idle, keeperOptions, mustBe, plainPut, plainRows } from '../support/database.ts';
import { aJournal } from '../support/entry-builders.ts';
import { plainShelf } from '../support/plain-shelf.ts';
import { first, newWax, undo, waxNames } from '../support/plans.ts';

const open = closingKeepers();
afterEach(() => vi.restoreAllMocks());

describe('opening', () => {
  it('starts with an empty shelf and a device of its own that stays', async () => {
    const name = freshName();
    const keeper = await open(name);
    expect(plainShelf(keeper.shelf())).toEqual(plainShelf(foldAll([])));
    const before = await plainRows(name, 'meta');
    keeper.close();
    await open(name);
    expect(await plainRows(name, 'meta')).toEqual(before);
  });

  it('shows what was written, after opening again, without reading a page', async () => {
    const name = freshName();
    const keeper = await open(name);
    mustBe(await keeper.join(aJournal()));
    mustBe(await keeper.act(newWax('violet', 2)));
    const shelf = plainShelf(keeper.shelf());
    keeper.close();
    const read = vi.spyOn(IDBObjectStore.prototype, 'getAll');
    const again = await open(name);
    await again.catchUp();
    expect(plainShelf(again.shelf())).toEqual(shelf);
    expect(waxNames(again.shelf())).toContain('violet');
    const stores = read.mock.contexts.map((store) => (store as unknown as { name: string }).name);
    expect(stores).toContain('shelf');
    expect(stores).not.toContain('pages');
  });

  it('tells what the first screen showed last before it reads the shelf', async () => {
    const name = freshName();
    const keeper = await open(name);
    await keeper.remember('fronts', [3, 1]);
    expect(await keeper.recall('fronts')).toEqual([3, 1]);
    keeper.close();
    const heard: unknown[] = [];
    await open(name, { early: (fronts: unknown) => heard.push(fronts) });
    expect(heard).toEqual([[3, 1]]);
  });

  it('opens all the same when what was shown last cannot be shown, and shows nothing of a newer Mouldkeep', async () => {
    const name = freshName();
    const keeper = await open(name);
    await keeper.remember('fronts', [3, 1]);
    mustBe(await keeper.act(newWax('violet')));
    keeper.close();
    const heard: unknown[] = [];
    const early = (fronts: unknown) => {
      heard.push(fronts);
      throw new TypeError('made to fail');
    };
    const again = await open(name, { early });
    expect(waxNames(again.shelf())).toEqual(['violet']);
    again.close();
    await plainPut(name, 'meta', [{ key: 'guard', value: { lowest: 2 } }]);
    expect(isProblem(await openKeeper(keeperOptions(name, { early })))).toBe(true);
    expect(heard).toEqual([[3, 1]]);
  });

  it('refuses what a newer Mouldkeep wrote, and leaves it as it is', async () => {
    const name = freshName();
    (await open(name)).close();
    await plainPut(name, 'meta', [{ key: 'guard', value: { lowest: 2 } }]);
    const before = await plainRows(name, 'meta');
    const refused = await openKeeper(keeperOptions(name));
    expect(isProblem(refused) && refused.says).toMatch(/newer Mouldkeep/);
    expect(await plainRows(name, 'meta')).toEqual(before);
  });

  it('says what to do where the browser keeps nothing', async () => {
    vi.spyOn(indexedDB, 'open').mockImplementation(() => {
      throw new DOMException('denied', 'SecurityError');
    });
    const refused = await openKeeper(keeperOptions(freshName()));
    expect(isProblem(refused) && refused.says).toMatch(/does not let Mouldkeep keep anything/);
  });

  it('sums the journal afresh by itself when the shelf is of another fold, or damaged', async () => {
    const name = freshName();
    const keeper = await open(name);
    mustBe(await keeper.join(aJournal()));
    mustBe(await keeper.act(newWax('violet')));
    const shelf = plainShelf(keeper.shelf());
    keeper.close();
    const mark = (await plainRows<{ key: string; value: object }>(name, 'meta')).find((row) => row.key === 'shelf');
    await plainPut(name, 'shelf', [{ noun: 'wax', text: '[]' }]);
    await plainPut(name, 'meta', [{ key: 'shelf', value: { ...mark?.value, foldVersion: 0 } }]);
    const refolded = await open(name);
    expect(plainShelf(refolded.shelf())).toEqual(shelf);
    refolded.close();
    await plainPut(name, 'shelf', [{ noun: 'wax', text: '[{"id":' }]);
    const repaired = await open(name);
    expect(plainShelf(repaired.shelf())).toEqual(shelf);
    expect((await plainRows(name, 'shelf')).every((row) => JSON.parse(row.text))).toBe(true);
  });
});

describe('acting', () => {
  it('shows an action only after it is written, whole, as one row', async () => {
    const name = freshName();
    const keeper = await open(name);
    const seen: number[] = [];
    const stop = keeper.subscribe(() => seen.push(keeper.shelf().entries));
    const acting = keeper.act(newWax('violet', 2));
    expect(waxNames(keeper.shelf())).toEqual([]);
    const entries = mustBe(await acting);
    expect(seen).toEqual([3]);
    expect(entries.map((entry) => entry.step)).toEqual([undefined, entries[0]?.id, entries[0]?.id]);
    expect(await plainRows(name, 'tail')).toEqual([{ id: entries[0]?.id, text: JSON.stringify(entries) }]);
    stop();
    mustBe(await keeper.act(newWax('green')));
    expect(seen).toEqual([3]);
  });

  it('writes nothing when the plan refuses, plans nothing, or plans what could not be read back', async () => {
    const name = freshName();
    const keeper = await open(name);
    const refusal = problem('There is no such wax.');
    expect(await keeper.act(() => refusal)).toBe(refusal);
    expect(await keeper.act(() => [])).toEqual([]);
    const broken = await keeper.act(
      (_, desk) => [{ ...desk.entry(), kind: 'received', wax: 'W1', grams: Number.NaN }] as unknown as Entry[],
    );
    expect(isProblem(broken)).toBe(true);
    expect(await plainRows(name, 'tail')).toEqual([]);
    expect(keeper.shelf().last).toBe('');
  });

  it('keeps both of two actions begun at once, the second planned on the first', async () => {
    const keeper = await open(freshName(), { now: () => 1_700_000_000_000 });
    const counts: number[] = [];
    const plan: MakePlan = (shelf, desk) => {
      counts.push(shelf.entries);
      return newWax('violet')(shelf, desk);
    };
    const [a, b] = await Promise.all([keeper.act(plan), keeper.act(plan)]);
    expect(mustBe(a as Entry[])[0]?.id).not.toBe(mustBe(b as Entry[])[0]?.id);
    expect(counts).toEqual([0, 1]);
    expect(keeper.shelf().things.wax.size).toBe(2);
  });

  it('goes on with later ids when the wall clock has gone back', async () => {
    const times = [1_700_000_000_000, 1_600_000_000_000];
    const keeper = await open(freshName(), { now: () => times.shift() ?? 0 });
    const ids = [await first(keeper.act(newWax('a'))), await first(keeper.act(newWax('b'))), await first(keeper.act(newWax('c')))].map(
      (e) => e.id,
    );
    expect([...ids].sort()).toEqual(ids);
    expect(new Set(ids).size).toBe(3);
  });

  it('goes on after what came from a phone whose clock runs ahead', async () => {
    const now = () => 1_600_000_000_000;
    const keeper = await open(freshName(), { now });
    await first(keeper.act(newWax('before')));
    const other = await open(freshName(), { now: () => now() + 86_400_000 });
    const ahead = await first(other.act(newWax('ahead')));
    mustBe(await keeper.join(await other.journal()));
    const after = await first(keeper.act(newWax('after')));
    expect(after.id > ahead.id).toBe(true);
    expect(clockOf(after.id)).toEqual({ ms: now() + 86_400_000, count: clockOf(ahead.id).count + 1 });
  });

  it.each([
    ['when the row cannot be added', 'QuotaExceededError', /no room left/],
    ['when something else fails', 'UnknownError', /could not be saved \(UnknownError/],
  ])('fails midway and leaves everything as it was: %s', async (_, error, says) => {
    const name = freshName();
    const keeper = await open(name);
    mustBe(await keeper.act(newWax('violet')));
    const shelf = keeper.shelf();
    const rows = await plainRows(name, 'tail');
    vi.spyOn(IDBObjectStore.prototype, 'add').mockImplementation(() => {
      throw new DOMException('made to fail', error);
    });
    const failed = await keeper.act(newWax('green'));
    expect(isProblem(failed) && failed.says).toMatch(says);
    expect(keeper.shelf()).toBe(shelf);
    vi.restoreAllMocks();
    expect(await plainRows(name, 'tail')).toEqual(rows);
    expect(waxNames((await open(name)).shelf())).toEqual(['violet']);
    mustBe(await keeper.act(newWax('green')));
  });

  it('leaves everything as it was when the transaction is aborted after the row was added', async () => {
    const name = freshName();
    const keeper = await open(name);
    mustBe(await keeper.act(newWax('violet')));
    // As a browser does that finds no room for it on the disk.
    vi.spyOn(IDBTransaction.prototype, 'commit').mockImplementation(function (this: IDBTransaction) {
      this.abort();
    });
    expect(isProblem(await keeper.act(newWax('green')))).toBe(true);
    vi.restoreAllMocks();
    expect(waxNames(keeper.shelf())).toEqual(['violet']);
    expect(await plainRows(name, 'tail')).toHaveLength(1);
  });

  it('takes back a sealed entry, and brings it back, here and after opening again', async () => {
    const name = freshName();
    const idle = new Idle();
    const keeper = await open(name, { whenIdle: idle.whenIdle });
    mustBe(await keeper.join(aJournal()));
    const before = plainShelf(keeper.shelf());
    const target = [...keeper.shelf().things.design.keys()][0] as string;
    const taken = await first(keeper.act(undo({ id: target } as unknown as Entry)));
    expect(keeper.shelf().things.design.size).toBe(0);
    expect(idle.waiting).toBe(1);
    const other = await open(name);
    expect(plainShelf(other.shelf())).toEqual(plainShelf(keeper.shelf()));
    idle.run();
    await keeper.catchUp();
    expect(await plainRows(name, 'tail')).toEqual([]);
    mustBe(await keeper.act(undo(taken)));
    expect({ ...plainShelf(keeper.shelf()), last: before.last }).toEqual(before);
    expect(plainShelf((await open(name)).shelf())).toEqual(plainShelf(keeper.shelf()));
  });

  it('asks to seal once the tail is full, and shows the same before and after', async () => {
    const name = freshName();
    const idle = new Idle();
    const keeper = await open(name, { whenIdle: idle.whenIdle });
    mustBe(await keeper.act(newWax('violet', TAIL_FULL - 1)));
    expect(idle.waiting).toBe(0);
    mustBe(await keeper.act(newWax('green')));
    expect(idle.waiting).toBe(1);
    const shelf = plainShelf(keeper.shelf());
    idle.run();
    await keeper.catchUp();
    expect(await plainRows(name, 'pages')).toHaveLength(1);
    expect(await plainRows(name, 'tail')).toHaveLength(1);
    expect(plainShelf(keeper.shelf())).toEqual(shelf);
    expect(plainShelf((await open(name)).shelf())).toEqual(shelf);
  });
});
