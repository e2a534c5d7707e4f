import 'fake-indexeddb/auto';
import { IDBObjectStore } from 'fake-indexeddb';
import fc from 'fast-check';
import { afterEach, describe, expect, it, vi } from 'vitest';
import type { MouldId, ThingId } from '../../src/domain/brand.ts';
import type { Entry } from '../../src/domain/entry.ts';
import { inForce, inOrder } from '../../src/domain/fold.ts';
import { mentions } from '../../src/domain/journal.ts';
import type { Keeper } from '../../src/store/keeper.ts';
import { CopyMoved, PAGE_ENTRIES } from '../../src/store/pages.ts';
import { MouldkeepDb } from '../../src/store/schema.ts';
import { nextId } from '../support/builders.ts';
import { aKeeper, freshName, mustBe, plainRows } from '../support/database.ts';
import { aFailed, anInjected, aRecorded, aWithdrawn } from '../support/entry-builders.ts';
import { histories } from '../support/histories.ts';

let keeper: Keeper;
afterEach(() => {
  vi.restoreAllMocks();
  keeper.close();
});

describe('a thing’s history', () => {
  it('comes newest first across pages and tail, without what was taken back, and reads no more pages than it needs', async () => {
    const name = freshName();
    keeper = await aKeeper(name);
    const mould = aRecorded('mould', { name: 'Dolphin 1' });
    const runs = Array.from({ length: 12 * PAGE_ENTRIES }, (_, i) =>
      anInjected({ mould: (i % 100 === 0 ? mould.id : nextId()) as string as MouldId, id: nextId() }),
    );
    const mine = runs.filter((_, i) => i % 100 === 0);
    const taken = mine.at(-2);
    if (!taken) throw new Error('there are runs');
    mustBe(await keeper.join([mould, ...runs, aWithdrawn(taken)]));
    expect(await plainRows(name, 'pages')).toHaveLength(13);
    const acted = mustBe(
      await keeper.act((_, desk) => [{ ...desk.entry(), kind: 'failed', of: mould.id as string as ThingId, faults: ['flash'] }]),
    );
    const expected = [...mine.filter((run) => run !== taken), acted[0]].reverse();

    const read = vi.spyOn(IDBObjectStore.prototype, 'get');
    const few = await keeper.history(mould.id as string as ThingId, 10);
    expect(few.isMore).toBe(true);
    expect(read.mock.calls.length).toBeLessThanOrEqual(8);
    expect(few.entries.length).toBeGreaterThanOrEqual(10);
    expect(few.entries).toEqual(expected.slice(0, few.entries.length));
    const all = await keeper.history(mould.id as string as ThingId, 1000);
    expect(all.isMore).toBe(false);
    expect(all.entries).toEqual([...expected, mould]);
  });

  it('has each action whole, in pages and in the tail, whatever was taken back of it, and reads little else', async () => {
    const name = freshName();
    keeper = await aKeeper(name);
    const some = (count: number, step?: Entry['id']) =>
      Array.from({ length: count }, () => anInjected({ id: nextId(), ...(step ? { step } : {}) }));
    const before = some(4 * PAGE_ENTRIES);
    const start = aRecorded('mould', { name: 'Dolphin 1' }, { id: nextId() });
    const whole = [start, ...some(2 * PAGE_ENTRIES, start.id)];
    const after = some(6 * PAGE_ENTRIES);
    mustBe(await keeper.join([...before, ...whole, ...after, aWithdrawn(start)]));
    const acted = mustBe(
      await keeper.act((_, desk) => [{ ...desk.entry(), kind: 'failed', of: start.id as string as ThingId, faults: ['flash'] }]),
    );
    const read = vi.spyOn(IDBObjectStore.prototype, 'get');
    expect(await keeper.action(start.id)).toEqual(whole);
    expect(read.mock.calls.length).toBeLessThanOrEqual(5);
    expect(await keeper.action((acted[0] as Entry).id)).toEqual(acted);
    expect(await keeper.action((before[7] as Entry).id)).toEqual([before[7]]);
  });

  it('tells which takings-back are in force, newest first, also once they are sealed', async () => {
    keeper = await aKeeper(freshName());
    const moulds = ['A', 'B', 'C'].map((name) => aRecorded('mould', { name }, { id: nextId() }));
    const takings = moulds.map((mould) => aWithdrawn(mould));
    mustBe(await keeper.join([...moulds, ...takings]));
    const [first, second, third] = takings as [Entry, Entry, Entry];
    const acted = mustBe(await keeper.act((_, desk) => [{ ...desk.entry(), kind: 'withdrawn', entry: second.id }]));
    expect(await keeper.takingsBack()).toEqual([acted[0], third, first]);
    mustBe(await keeper.act((_, desk) => [{ ...desk.entry(), kind: 'withdrawn', entry: (acted[0] as Entry).id }]));
    expect((await keeper.takingsBack()).map(({ id }) => id)).toContain(second.id);
  });

  it('is not looked for in what is older than the thing', async () => {
    keeper = await aKeeper(freshName());
    const before = Array.from({ length: 12 * PAGE_ENTRIES }, () => anInjected({ id: nextId() }));
    const mould = aRecorded('mould', { name: 'Dolphin 1' });
    const failed = aFailed({ of: mould.id as string as ThingId });
    mustBe(await keeper.join([...before, mould, failed]));
    const read = vi.spyOn(IDBObjectStore.prototype, 'get');
    expect(await keeper.history(mould.id as string as ThingId, 99)).toEqual({ entries: [failed, mould], isMore: false });
    expect(read.mock.calls.length).toBeLessThanOrEqual(4);
  });

  it('leaves out the other entries of the action in which the thing was recorded', async () => {
    keeper = await aKeeper(freshName());
    const mould = aRecorded('mould', { name: 'Dolphin 1' });
    const other = aRecorded('mould', { name: 'Dolphin 2' }, { step: mould.id });
    mustBe(await keeper.join([mould, other]));
    expect((await keeper.history(mould.id as string as ThingId, 9)).entries).toEqual([mould]);
    expect((await keeper.history(other.id as string as ThingId, 9)).entries).toEqual([other]);
  });

  it('is in time order, and right about what was taken back, when pages of joined journals overlap', async () => {
    keeper = await aKeeper(freshName());
    const mould = aRecorded('mould', { name: 'Dolphin 1' });
    const of = mould.id as string as ThingId;
    // More pages than are read in one go lie between the thing’s recording and the entry that is taken back; that taking-back is
    // in the page that begins first and ends last.
    const between = Array.from({ length: 9 }, () => aFailed({ of, note: 'between' }));
    const late = aFailed({ of, note: 'late' });
    mustBe(await keeper.join([mould, aWithdrawn(late)]));
    for (const entry of between) mustBe(await keeper.join([entry]));
    mustBe(await keeper.join([late]));
    const expected = [...between.toReversed(), mould];
    const { entries, isMore } = await keeper.history(of, 1);
    expect(isMore).toBe(true);
    expect(entries.length).toBeGreaterThan(0);
    expect(entries).toEqual(expected.slice(0, entries.length));
    expect((await keeper.history(of, 99)).entries).toEqual(expected);
  });

  it('is right about what was taken back in pages that do not name the thing, whatever is written beside it', async () => {
    keeper = await aKeeper(freshName());
    const mould = aRecorded('mould', { name: 'Dolphin 1' });
    const of = mould.id as string as ThingId;
    const failures = Array.from({ length: 3 }, () => aFailed({ of }));
    const [plain, braced, twice] = failures as [Entry, Entry, Entry];
    const [first, ...others] = Array.from({ length: PAGE_ENTRIES }, () => anInjected({ id: nextId() }));
    mustBe(await keeper.join([mould, ...failures, ...others, first as Entry]));
    const undone = aWithdrawn(twice);
    const back = [aWithdrawn(plain), aWithdrawn(braced, { note: 'wrong one } of the two {', by: '"}' }), undone];
    for (const each of back) mustBe(await keeper.join([each, ...Array.from({ length: PAGE_ENTRIES }, () => anInjected({ id: nextId() }))]));
    mustBe(await keeper.join([aWithdrawn(undone)]));
    expect((await keeper.history(of, 9)).entries).toEqual([twice, mould]);
  });

  it('is read no further once its page was left', async () => {
    keeper = await aKeeper(freshName());
    const mould = aRecorded('mould', { name: 'Dolphin 1' });
    mustBe(await keeper.join([mould, ...Array.from({ length: 12 * PAGE_ENTRIES }, () => anInjected({ id: nextId() }))]));
    const read = vi.spyOn(IDBObjectStore.prototype, 'get');
    const left = new AbortController();
    left.abort();
    await expect(keeper.history(mould.id as string as ThingId, 9, left.signal)).rejects.toThrow();
    expect(read).not.toHaveBeenCalled();
  });

  it('holds exactly the entries in force that name the thing, for random histories in random pages', async () => {
    await fc.assert(
      fc.asyncProperty(histories(40), fc.nat({ max: 40 }), fc.nat({ max: 8 }), async (journal, cut, wanted) => {
        keeper = await aKeeper(freshName());
        for (const part of [journal.filter((_, i) => i % 3 === 0), journal.slice(cut), journal]) mustBe(await keeper.join(part));
        for (const { id } of journal.filter((entry) => entry.kind === 'recorded')) {
          const expected = inForce(inOrder(journal))
            .filter((entry) => mentions(entry, id))
            .reverse();
          const { entries, isMore } = await keeper.history(id as string as ThingId, wanted);
          expect(entries).toEqual(expected.slice(0, entries.length));
          if (entries.length < expected.length) expect(isMore && entries.length >= wanted).toBe(true);
        }
        keeper.close();
      }),
      { numRuns: 20 },
    );
  }, 60_000);
});

it('the journal comes a row at a time as text, and a page that went meanwhile is said', async () => {
  const name = freshName();
  keeper = await aKeeper(name);
  const runs = Array.from({ length: 2 * PAGE_ENTRIES }, () => anInjected({ id: nextId() }));
  mustBe(await keeper.join(runs));
  mustBe(await keeper.act((_, desk) => [{ ...desk.entry(), kind: 'failed', of: nextId() as string as ThingId, faults: ['flash'] }]));
  const rows: Entry[][] = [];
  for await (const text of keeper.journalTexts()) rows.push(JSON.parse(text));
  expect(rows.map(({ length }) => length)).toEqual([PAGE_ENTRIES, PAGE_ENTRIES, 1]);
  expect(rows.flat()).toEqual(await keeper.journal());
  expect(await keeper.journalLength()).toBe(2 * PAGE_ENTRIES + 1);
  const texts = keeper.journalTexts();
  await texts.next();
  const db = new MouldkeepDb(name);
  await db.pages.clear();
  db.close();
  await expect(texts.next()).rejects.toThrow(CopyMoved);
});
