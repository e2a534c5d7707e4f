import type { Day } from '../../src/domain/brand.ts';
import type { Entry } from '../../src/domain/entry.ts';
import { makeJournal, parseJournal } from '../../src/domain/journal.ts';
import { NOUNS } from '../../src/domain/noun.ts';
import { isProblem } from '../../src/domain/problem.ts';
import type { Thing } from '../../src/domain/shelf.ts';
import { type Keeper, openKeeper } from '../../src/store/keeper.ts';
import { MouldkeepDb } from '../../src/store/schema.ts';
import { thingsOf } from '../../src/store/shelf-rows.ts';
import { answerLabel } from './answer-label.ts';
import { bigFamily } from './family.ts';
import { type LifeTimes, timeLife } from './life.ts';
import { takePhotos } from './photos.ts';
import { addRows, oneStrictRow, openPlain, readRows } from './plain.ts';
import { bigStudio, type StudioSize } from './studio.ts';

/** Readings in one series. */
const IN_SERIES = 5;

/** Opened beside the app, on its origin: does with the app's own store, and with plain IndexedDB, the same work, and times both. */
const bench = {
  async keeper(name: string): Promise<Keeper> {
    const keeper = await openKeeper({
      name,
      now: () => Date.now(),
      today: () => new Date().toISOString().slice(0, 10) as Day,
      bytes: (count) => crypto.getRandomValues(new Uint8Array(count)),
      whenIdle: () => undefined,
    });
    if (isProblem(keeper)) throw new Error(keeper.says);
    return keeper;
  },

  /** Restores a studio into the app's own database from the text of its journal. Gives ms. */
  async restore(name: string, size: StudioSize): Promise<{ ms: number; things: number; entries: number; bytes: number }> {
    const text = makeJournal('bench', bigStudio(size));
    const keeper = await bench.keeper(name);
    const began = performance.now();
    const journal = parseJournal(text);
    if (isProblem(journal)) throw new Error(journal.says);
    const joined = await keeper.join(journal.entries);
    const ms = performance.now() - began;
    if (isProblem(joined)) throw new Error(joined.says);
    const shelf = keeper.shelf();
    const things = NOUNS.reduce((sum, noun) => sum + shelf.things[noun].size, 0);
    keeper.close();
    return { ms, things, entries: joined, bytes: text.length };
  },

  /** Adds the same entries as one row each, with two indexes, to a plain store. Gives ms. */
  async plainRestore(size: StudioSize): Promise<number> {
    const entries: Entry[] = bigStudio(size);
    const db = await openPlain('bench-plain-entries', 'rows', ['on', 'kind']);
    const began = performance.now();
    await addRows(db, 'rows', entries);
    const ms = performance.now() - began;
    db.close();
    indexedDB.deleteDatabase('bench-plain-entries');
    return ms;
  },

  /** Puts the studio's things into a plain store as one row each, for `readThings` to compare. */
  async layOutThings(name: string): Promise<number> {
    const keeper = await bench.keeper(name);
    const shelf = keeper.shelf();
    const things = NOUNS.flatMap((noun) => [...(shelf.things[noun] as ReadonlyMap<string, Thing>).values()]);
    keeper.close();
    const db = await openPlain('bench-plain-things', 'rows', []);
    await addRows(db, 'rows', things);
    db.close();
    return things.length;
  },

  /** Medians of reading all things: our packed rows, read and made into the shelf, against plain `getAll` of one row each. Gives ms. */
  async readThings(name: string, series: number): Promise<{ ours: number; plain: number }> {
    const mine = new MouldkeepDb(name);
    await mine.open();
    const db = await openPlain('bench-plain-things', 'rows', []);
    const timed = async (each: number[], job: () => Promise<unknown>) => {
      for (let i = 0; i < IN_SERIES; i++) {
        const began = performance.now();
        await job();
        each.push(performance.now() - began);
      }
    };
    const [ours, plain]: [number[], number[]] = [[], []];
    // Series in turns, since a machine's speed drifts; not one by one, since each is to clear away what it left behind itself, and not what the other did.
    for (let i = 0; i < series; i++) {
      await timed(ours, async () => thingsOf(await mine.shelf.toArray()));
      await timed(plain, () => readRows(db, 'rows'));
    }
    mine.close();
    db.close();
    return { ours: median(ours), plain: median(plain) };
  },

  /** Restores a lineage of so many things into the app's own database. Gives the original's id. */
  async family(name: string, things: number): Promise<string> {
    const entries = bigFamily(things);
    const keeper = await bench.keeper(name);
    const joined = await keeper.join(entries);
    keeper.close();
    if (isProblem(joined)) throw new Error(joined.says);
    return entries[0]?.id ?? '';
  },

  /** Takes pictures number `from` up to `to`, each of a mould of its own. Gives their bytes. */
  async photos(name: string, from: number, to: number): Promise<number> {
    const keeper = await bench.keeper(name);
    const bytes = await takePhotos(keeper, from, to);
    keeper.close();
    return bytes;
  },

  /** A studio in which little has happened yet. */
  async begin(name: string): Promise<void> {
    const keeper = await bench.keeper(name);
    const begun = await keeper.act((_, desk) => [{ ...desk.entry(), kind: 'corrected', noun: 'studio', fields: { name: 'Begun' } }]);
    keeper.close();
    if (isProblem(begun)) throw new Error(begun.says);
  },

  async soundMoulds(name: string, count: number): Promise<string[]> {
    const keeper = await bench.keeper(name);
    const { mould: moulds, injector: injectors } = keeper.shelf().things;
    keeper.close();
    // Nothing to be warned of, so that one tap logs the run.
    return [...moulds.values()]
      .filter((mould) => !mould.retired && mould.grade !== 'failed' && (mould.cavities ?? 1) === 1)
      .filter(({ runs }) => {
        const last = runs?.at(-1);
        return !last?.injector || injectors.get(last.injector)?.holds === last.wax;
      })
      .slice(-count)
      .map((mould) => mould.id);
  },

  /** What reckoning the lives of all the studio's moulds costs. Gives ms. */
  async life(name: string): Promise<LifeTimes> {
    const keeper = await bench.keeper(name);
    const shelf = keeper.shelf();
    keeper.close();
    return await timeLife(shelf);
  },

  answerLabel,

  /** Median of the bare act: one row added in a strict-durability transaction. Gives ms. */
  async bareRow(times: number): Promise<number> {
    const db = await openPlain('bench-plain-row', 'rows', []);
    const each: number[] = [];
    for (let i = 0; i < times; i++) each.push(await oneStrictRow(db, 'rows', i));
    db.close();
    return median(each);
  },

  /** The barest screen that logs something: nothing but a button, and a line that will say so. */
  async layOutBare(): Promise<void> {
    const db = await openPlain('bench-plain-shown', 'rows', []);
    const button = document.body.appendChild(document.createElement('button'));
    const line = document.body.appendChild(document.createElement('p'));
    let taps = 0;
    button.onclick = async () => {
      await oneStrictRow(db, 'rows', taps);
      taps += 1;
      line.textContent = `${taps} logged`;
    };
  },
};

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}

declare global {
  interface Window {
    bench: typeof bench;
  }
}
window.bench = bench;
