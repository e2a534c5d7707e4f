import 'fake-indexeddb/auto';
import { Dexie } from 'dexie';
import { describe, expect, test, vi } from 'vitest';
import { foldAll } from '../../src/domain/fold.ts';
import type { Keeper } from '../../src/store/keeper.ts';
import { MouldkeepDb, RESCUED } from '../../src/store/schema.ts';
import { TAIL_KEPT } from '../../src/store/seal.ts';
import { type Texts, writeCopy } from '../../src/store/second-copy.ts';
import { START_DAY } from '../support/builders.ts';
import { closingKeepers } from '../support/closing-keepers.ts';
import { freshName, Idle, mustBe, plainRows } from '../support/database.ts';
import { aJournal } from '../support/entry-builders.ts';
import { plainShelf } from '../support/plain-shelf.ts';
import { newWax, waxNames } from '../support/plans.ts';

const open = closingKeepers();

/** A place for texts that can be broken: so many more writes go well. */
class Memory implements Texts {
  readonly texts = new Map<string, string>();
  writes = Number.POSITIVE_INFINITY;

  keys = async () => [...this.texts.keys()];
  read = async (key: string) => this.texts.get(key);
  async write(key: string, text: string): Promise<void> {
    if (this.writes-- <= 0) throw new Error('killed');
    this.texts.set(key, text);
  }
  async drop(key: string): Promise<void> {
    this.texts.delete(key);
  }
}

async function receive(keeper: Keeper, count: number): Promise<void> {
  for (let i = 0; i < count; i++) mustBe(await keeper.act(newWax(`Wax ${i}`)));
}

/** As a browser does with a database it finds damaged. */
async function throwAway(keeper: Keeper): Promise<void> {
  keeper.close();
  await Dexie.delete(keeper.name);
}

const sum = (keeper: Keeper) => plainShelf(keeper.shelf());

describe('a database that the browser threw away', () => {
  test('is put back from the second copy, pages and tail, and that is told once', async () => {
    const [name, texts] = [freshName(), new Memory()];
    const keeper = await open(name, { texts });
    mustBe(await keeper.join(aJournal()));
    await receive(keeper, TAIL_KEPT + 20);
    await keeper.seal();
    await keeper.writeCopy();
    const [before, journal] = [sum(keeper), await keeper.journal()];
    expect(texts.texts.size).toBe((await plainRows(name, 'pages')).length + 1);
    await throwAway(keeper);

    const again = await open(name, { texts });
    expect(sum(again)).toEqual(before);
    expect(await again.journal()).toEqual(journal);
    expect(await again.recall(RESCUED)).toEqual({ entries: journal.length, last: journal.at(-1)?.id, unread: 0 });
    await again.remember(RESCUED, undefined);
    mustBe(await again.act(newWax('Wax after')));
    await again.writeCopy();
    await again.writeCopy();
    expect(texts.texts.size).toBe((await plainRows(name, 'pages')).length + 1);
    const after = sum(again);
    await throwAway(again);
    const third = await open(name, { texts });
    expect(sum(third)).toEqual(after);
  });

  test('is as it was when the copy was last brought up to date, wherever that was cut off', async () => {
    const [name, texts] = [freshName(), new Memory()];
    const keeper = await open(name, { texts });
    mustBe(await keeper.join(aJournal()));
    await receive(keeper, 30);
    await keeper.writeCopy();
    const copied = await keeper.journal();
    for (let writes = 0; writes < 3; writes++) {
      await receive(keeper, TAIL_KEPT + 5);
      await keeper.seal();
      texts.writes = writes;
      await keeper.writeCopy();
      texts.writes = Number.POSITIVE_INFINITY;
      const other = await open(freshName(), { texts: Object.assign(new Memory(), { texts: new Map(texts.texts) }) });
      const ids = new Set((await other.journal()).map(({ id }) => id));
      expect(copied.filter(({ id }) => !ids.has(id))).toEqual([]);
      expect(sum(other)).toEqual(plainShelf(foldAll(await other.journal())));
    }
  });

  test('under the hands of an open tab leaves the copy as it is', async () => {
    const [name, texts] = [freshName(), new Memory()];
    const keeper = await open(name, { texts });
    await receive(keeper, 3);
    await keeper.writeCopy();
    const copied = [...texts.texts];
    expect(copied).toHaveLength(1);
    await throwAway(keeper);
    const db = new MouldkeepDb(name);
    await db.open();
    await writeCopy(db, texts);
    db.close();
    expect([...texts.texts]).toEqual(copied);
  });

  test('comes back without what of the copy is damaged, which is counted', async () => {
    const [name, texts] = [freshName(), new Memory()];
    const keeper = await open(name, { texts });
    mustBe(await keeper.join(aJournal()));
    await receive(keeper, 2);
    await keeper.writeCopy();
    const entries = (await keeper.journal()).length;
    const [tail = '', page = ''] = [...texts.texts.keys()];
    expect([tail, page]).toEqual([expect.stringContaining('tail'), expect.stringContaining('page')]);
    texts.texts.set(tail, '[{"kind":"recorded"},');
    texts.texts.set(page, String(texts.texts.get(page)).replace('"kind":"', '"kind":"x'));
    await throwAway(keeper);
    const again = await open(name, { texts });
    expect(await again.recall(RESCUED)).toMatchObject({ entries: entries - 3, unread: 2 });
    expect(await again.journal()).toHaveLength(entries - 3);
  });

  test('begins afresh where there is no copy, or none that can be reached', async () => {
    const broken = new Memory();
    broken.keys = () => Promise.reject(new Error('denied'));
    const warn = vi.spyOn(console, 'warn').mockReturnValue();
    for (const texts of [new Memory(), broken, undefined]) {
      const keeper = await open(freshName(), { texts });
      expect(keeper.shelf().entries).toBe(0);
      expect(await keeper.recall(RESCUED)).toBeUndefined();
      mustBe(await keeper.act(newWax('Amber')));
      await keeper.writeCopy();
    }
    expect(warn).toHaveBeenCalledTimes(1);
  });
});

test('a studio put in another’s place leaves nothing of that in the copy, and one emptied comes back empty', async () => {
  const [name, texts] = [freshName(), new Memory()];
  const keeper = await open(name, { texts });
  mustBe(await keeper.join(aJournal()));
  await receive(keeper, 2);
  await keeper.writeCopy();
  const kept = (await keeper.journal()).at(-1);
  const vault = await keeper.vault();
  const old = [...texts.texts];
  expect(await vault.replace(kept ? [kept] : [], START_DAY)).toBeUndefined();
  texts.writes = 0;
  await keeper.writeCopy();
  expect(texts.texts.size).toBe(0);
  texts.writes = Number.POSITIVE_INFINITY;
  await keeper.writeCopy();
  expect(texts.texts.size).toBe(1);
  // Whatever is left of the one before is never read as a part of this one.
  for (const [key, text] of old) texts.texts.set(key, text);
  await throwAway(keeper);
  const again = await open(name, { texts });
  expect(await again.journal()).toEqual([kept]);
  expect(await (await again.vault()).replace([], START_DAY)).toBeUndefined();
  await again.writeCopy();
  expect(texts.texts.size).toBe(0);
  await throwAway(again);
  expect((await open(name, { texts })).shelf().entries).toBe(0);
});

test('a moment after each change the copy is brought up to date, when there is time to spare', async () => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  try {
    const [texts, idle] = [new Memory(), new Idle()];
    const keeper = await open(freshName(), { texts, whenIdle: idle.whenIdle });
    const acting = keeper.act(newWax('Amber'));
    await vi.advanceTimersByTimeAsync(50);
    mustBe(await acting);
    expect(idle.waiting).toBe(0);
    await vi.advanceTimersByTimeAsync(1000);
    expect(idle.waiting).toBe(1);
    idle.run();
    await vi.waitFor(() => expect([...texts.texts.values()].join()).toContain('Amber'));
    expect(waxNames(keeper.shelf())).toEqual(['Amber']);
  } finally {
    vi.useRealTimers();
  }
});
