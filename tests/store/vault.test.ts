import 'fake-indexeddb/auto';
import { afterEach, describe, expect, it, vi } from 'vitest';
import type { Entry } from '../../src/domain/entry.ts';
import { foldAll } from '../../src/domain/fold.ts';
import { isProblem } from '../../src/domain/problem.ts';
import type { Keeper } from '../../src/store/keeper.ts';
import { aPicture } from '../support/backups.ts';
import { START_DAY, START_MS } from '../support/builders.ts';
import { aKeeper, freshName, mustBe, plainRows, until } from '../support/database.ts';
import { aJournal, aRecorded } from '../support/entry-builders.ts';
import { plainShelf } from '../support/plain-shelf.ts';
import { newWax } from '../support/plans.ts';

afterEach(() => vi.restoreAllMocks());

const waxNames = (keeper: Keeper) => [...keeper.shelf().things.wax.values()].map(({ name }) => name);
const replace = async (keeper: Keeper, entries: readonly Entry[]) => (await keeper.vault()).replace(entries, START_DAY);

describe('a studio that another is put in the place of', () => {
  it('is gone from the shelf, kept aside, and can be brought back, however often', async () => {
    const name = freshName();
    const keeper = await aKeeper(name);
    mustBe(await keeper.act(newWax('violet', 120)));
    await keeper.seal();
    mustBe(await keeper.act(newWax('green')));
    const [before, journal] = [plainShelf(keeper.shelf()), await keeper.journal()];
    const others = aJournal();
    expect(await replace(keeper, others)).toBeUndefined();
    expect(plainShelf(keeper.shelf())).toEqual(plainShelf(foldAll(others)));
    const vault = await keeper.vault();
    expect(await vault.replaced()).toEqual({ on: START_DAY, entries: journal.length });
    for (const expected of [before, plainShelf(foldAll(others)), before]) {
      expect(await vault.bringBack(START_DAY)).toBeUndefined();
      expect(plainShelf(keeper.shelf())).toEqual(expected);
    }
    keeper.close();
    const again = await aKeeper(name);
    expect(plainShelf(again.shelf())).toEqual(before);
    expect(await again.journal()).toEqual(journal);
    expect(await (await again.vault()).forget()).toBeUndefined();
    expect(await (await again.vault()).replaced()).toBeUndefined();
    expect((await plainRows<{ key: string }>(name, 'meta')).filter(({ key }) => key.startsWith('replaced'))).toEqual([]);
    again.close();
  });

  it.each(['pages', 'shelf', 'meta'])('stays whole when the disk is full in the middle: %s', async (store) => {
    const name = freshName();
    const keeper = await aKeeper(name);
    mustBe(await keeper.act(newWax('violet', 5)));
    const before = plainShelf(keeper.shelf());
    for (const verb of ['add', 'put'] as const) {
      const original = IDBObjectStore.prototype[verb];
      vi.spyOn(IDBObjectStore.prototype, verb).mockImplementation(function (this: IDBObjectStore, ...given) {
        if (this.name === store) throw new DOMException('full', 'QuotaExceededError');
        return original.apply(this, given);
      });
    }
    const outcome = await replace(keeper, aJournal());
    expect(isProblem(outcome) && outcome.says).toMatch(/no room left/);
    vi.restoreAllMocks();
    expect(plainShelf(keeper.shelf())).toEqual(before);
    keeper.close();
    const again = await aKeeper(name);
    expect(plainShelf(again.shelf())).toEqual(before);
    expect(await (await again.vault()).replaced()).toBeUndefined();
    again.close();
  });

  it('does not come back out of another tab, whether that has heard of it or not', async () => {
    const name = freshName();
    const now = () => START_MS + 90 * 86_400_000;
    const [a, b] = [await aKeeper(name, { now }), await aKeeper(name, { now })];
    mustBe(await a.act(newWax('violet')));
    await until(() => waxNames(b).length === 1);
    // An older studio: nothing in it is newer than what the other tab knows.
    const older = [aRecorded('wax', { name: 'old green' })];
    vi.spyOn(BroadcastChannel.prototype, 'postMessage').mockImplementation(() => undefined);
    expect((older[0] as Entry).id < b.shelf().last).toBe(true);
    await replace(a, older);
    expect(waxNames(b)).toEqual(['violet']);
    mustBe(await b.act(newWax('amber')));
    expect(waxNames(b)).toEqual(['old green', 'amber']);
    await a.catchUp();
    expect(waxNames(a)).toEqual(['old green', 'amber']);
    a.close();
    b.close();
  });

  it('does not come back with a message that was late', async () => {
    const name = freshName();
    const keeper = await aKeeper(name);
    const late = mustBe(await keeper.act(newWax('violet')));
    await replace(keeper, []);
    const channel = new BroadcastChannel(`mouldkeep:${name}`);
    channel.postMessage({ rows: [{ id: (late[0] as Entry).id, text: JSON.stringify(late) }], folds: 0 });
    const next = [{ ...(late[0] as Entry), id: `${(late[0] as Entry).id.slice(0, -6)}ZZZZZZ` }];
    channel.postMessage({ rows: [{ id: next[0]?.id, text: JSON.stringify(next) }], folds: 1 });
    await until(() => keeper.shelf().entries > 0);
    channel.close();
    expect([...keeper.shelf().things.wax.keys()]).toEqual([next[0]?.id]);
    keeper.close();
  });
});

describe('the whole studio at once', () => {
  it('is read as it was at one moment, also when it is sealed meanwhile', async () => {
    const keeper = await aKeeper(freshName());
    mustBe(await keeper.act(newWax('violet', 300)));
    mustBe(await keeper.act(newWax('green', 300)));
    const copy = await (await keeper.vault()).copy();
    expect(copy.entries).toBe(602);
    await keeper.seal();
    mustBe(await keeper.act(newWax('amber')));
    const read: Entry[] = [];
    for await (const page of copy.pages()) read.push(...page);
    expect(read).toEqual((await keeper.journal()).slice(0, 602));
    keeper.close();
  });

  it('says so when it was replaced while it was read', async () => {
    const keeper = await aKeeper(freshName());
    await keeper.join(aJournal());
    const copy = await (await keeper.vault()).copy();
    await replace(keeper, []);
    await expect(async () => {
      for await (const _ of copy.pages());
    }).rejects.toThrow();
    keeper.close();
  });

  it('tells pictures that nothing names from those of an entry, a draft, or the studio kept aside', async () => {
    const name = freshName();
    const keeper = await aKeeper(name);
    const [mine, aside, drafted, left] = [1, 2, 3, 4].map((n) => aPicture(n)) as [
      ReturnType<typeof aPicture>,
      ...ReturnType<typeof aPicture>[],
    ];
    await keeper.keepPictures([mine, aside, drafted, left] as never);
    await keeper.join([aRecorded('wax', {}, { pictures: [(aside as typeof mine).sha] })]);
    await replace(keeper, [aRecorded('wax', {}, { pictures: [mine.sha] })]);
    const vault = await keeper.vault();
    expect(await vault.unnamed((sha) => sha === drafted?.sha)).toEqual([left?.sha]);
    expect(await keeper.dropPictures([mine.sha, aside?.sha, left?.sha] as never)).toBeUndefined();
    expect(await plainRows(name, 'pictures')).toHaveLength(3);
    await vault.forget();
    expect(new Set(await vault.unnamed(() => false))).toEqual(new Set([aside?.sha, drafted?.sha]));
    keeper.close();
  });
});
