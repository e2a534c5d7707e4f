import MiniSearch from 'minisearch';
import type { MouldId } from '../../src/domain/brand.ts';
import type { Entry } from '../../src/domain/entry.ts';
import { foldAll } from '../../src/domain/fold.ts';
import { wordsOf } from '../../src/domain/folding.ts';
import { NOUNS } from '../../src/domain/noun.ts';
import { planLogRun } from '../../src/domain/plans/log-run.ts';
import { isProblem } from '../../src/domain/problem.ts';
import { best, search } from '../../src/domain/search.ts';
import { searchIndexOf } from '../../src/domain/search-index.ts';
import { ownTexts } from '../../src/domain/search-words.ts';
import type { Shelf, Thing } from '../../src/domain/shelf.ts';
import { titleOf } from '../../src/domain/title.ts';
import { pageKeeper } from '../support/page-keeper.ts';
import type { Peer, Row } from './peers/peer.ts';
import { plain } from './peers/plain.ts';
import { pouch } from './peers/pouch.ts';
import { rx } from './peers/rx.ts';
import { tiny } from './peers/tiny.ts';
import { bigStudio, type StudioSize } from './studio.ts';

const PEERS: readonly Peer[] = [plain, pouch, rx, tiny];
const LOGS = 15;
const WORDS = ['heron', 'octopus', 'toggle', 'signet', 'dolphin', 'brooch', 'hinge'];
const MISSPELT = ['herom', 'octupus', 'togle', 'signett', 'dolfin', 'broch', 'henge'];

/** Of each the things and entries that it holds, and the time it took, in ms. */
export interface Restored {
  readonly entries: number;
  readonly ms: number;
}

/** Work with a store that holds the things and entries already; all times in ms. */
export interface Used {
  /** Opened anew, until all things are objects in memory. */
  readonly load: number;
  readonly things: number;
  /** Medians. */
  readonly find: number;
  readonly log: number;
}

export interface Searching {
  readonly build: number;
  readonly query: number;
  readonly misspelt: number;
  /** Misspelt words for which nothing was found. */
  readonly missed: number;
}

async function timed<T>(job: () => Promise<T> | T): Promise<{ ms: number; value: T }> {
  const began = performance.now();
  const value = await job();
  return { ms: performance.now() - began, value };
}

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;
}

async function medianOf<T>(inputs: readonly T[], job: (input: T, at: number) => Promise<unknown> | unknown): Promise<number> {
  const times: number[] = [];
  for (const [at, input] of inputs.entries()) times.push((await timed(() => job(input, at))).ms);
  return median(times);
}

const thingsOf = (shelf: Shelf) => NOUNS.flatMap((noun) => [...(shelf.things[noun] as ReadonlyMap<string, Thing>).values()]);
const entryRow = (entry: Entry): Row => ({ id: entry.id, kind: entry.kind, text: JSON.stringify(entry) });
const thingRow = (thing: Thing): Row => ({ id: thing.id, kind: thing.noun, text: JSON.stringify(thing) });

/**
 * A run that was shown as saved is there after a loss of power: our store asks the browser for that, and libraries mostly do not. Here all
 * of them do, so that the same is compared.
 */
const { transaction } = IDBDatabase.prototype;
IDBDatabase.prototype.transaction = function (stores, mode, options) {
  return transaction.call(this, stores, mode, mode === 'readwrite' ? { ...options, durability: 'strict' } : options);
};

function studio(size: StudioSize): { readonly entries: Entry[]; readonly shelf: Shelf } {
  const entries = bigStudio(size);
  return { entries, shelf: foldAll(entries) };
}

const storeName = (who: string, size: StudioSize) => `${who}-${size.entries}`;

const peers = {
  names: PEERS.map(({ name }) => name),

  /** Our own store: entries joined and summed. */
  async restoreOurs(size: StudioSize): Promise<Restored> {
    const { entries } = studio(size);
    const keeper = await pageKeeper(storeName('ours', size));
    const { ms, value } = await timed(() => keeper.join(entries));
    if (value !== entries.length) throw new Error('not all entries were joined');
    keeper.close();
    return { entries: entries.length, ms };
  },

  /** The shelf read when our store opens again, things found by their words, runs logged and shown. */
  async useOurs(size: StudioSize): Promise<Used> {
    const opened = await timed(() => pageKeeper(storeName('ours', size)));
    const keeper = opened.value;
    const shelf = keeper.shelf();
    searchIndexOf(shelf);
    const find = await medianOf(WORDS, (word) => {
      const found = best(searchIndexOf(shelf), search(searchIndexOf(shelf), [word]), 60);
      if (found.count === 0) throw new Error(`${word} was not found`);
    });
    const moulds = [...shelf.things.mould.values()].filter((mould) => !mould.retired).slice(0, LOGS);
    const log = await medianOf(moulds, async ({ id }) => {
      const entries = await keeper.act((now, desk) => planLogRun(now, desk, { mould: id as MouldId, shots: 5, confirmed: true }));
      if (isProblem(entries)) throw new Error(entries.says);
    });
    keeper.close();
    return { load: opened.ms, things: thingsOf(shelf).length, find, log };
  },

  /** Entries only: the sums that ours writes as well are `fill`'s. */
  async restore(at: number, size: StudioSize): Promise<Restored> {
    const peer = PEERS[at] as Peer;
    const rows = bigStudio(size).map(entryRow);
    const store = await peer.open(storeName(`peer-${at}`, size));
    const { ms } = await timed(() => store.add('entries', rows));
    await store.close();
    return { entries: rows.length, ms };
  },

  /** Puts the things of `whole` beside the entries restored with `size`. */
  async fill(at: number, size: StudioSize, whole: StudioSize): Promise<void> {
    const store = await (PEERS[at] as Peer).open(storeName(`peer-${at}`, size));
    await store.add('things', thingsOf(studio(whole).shelf).map(thingRow));
    await store.close();
  },

  async use(at: number, size: StudioSize, whole: StudioSize): Promise<Used> {
    const peer = PEERS[at] as Peer;
    const { entries, shelf } = studio(whole);
    const opened = await timed(async () => {
      const store = await peer.open(storeName(`peer-${at}`, size));
      return { store, rows: await store.things() };
    });
    const { store, rows } = opened.value;
    const things = thingsOf(shelf).length;
    if (rows.length !== things) throw new Error(`${peer.name} gave ${rows.length} of ${things} things`);
    const find = await medianOf(WORDS, async (word) => {
      if ((await store.find(word)) === 0) throw new Error(`${word} was not found`);
    });
    const moulds = [...shelf.things.mould.values()].slice(0, LOGS);
    const log = await medianOf(moulds, (mould, number) => {
      const run = { ...(entries.at(-1 - number) as Entry), id: `run-${number}` } as unknown as Entry;
      return store.log(entryRow(run), thingRow({ ...mould, shots: mould.shots + 5 }));
    });
    await store.close();
    return { load: opened.ms, things: rows.length, find, log };
  },

  /** Both searches over the same things: built, asked for a word, and for one with a slip in it. */
  async searches(size: StudioSize): Promise<{ ours: Searching; mini: Searching }> {
    const { entries } = studio(size);
    // A shelf of its own: an index once made for a shelf is kept.
    const shelf = foldAll(entries);
    const built = await timed(() => searchIndexOf(shelf));
    const ask = (word: string, mayCorrect: boolean) => best(built.value, search(built.value, wordsOf(word), mayCorrect), 60).count;
    let missed = 0;
    const ours = {
      build: built.ms,
      query: await medianOf(WORDS, (word) => ask(word, false)),
      misspelt: await medianOf(MISSPELT, (word) => {
        if (ask(word, true) === 0) missed += 1;
      }),
      missed,
    };
    const documents = thingsOf(shelf).map((thing) => ({ id: thing.id, title: titleOf(shelf, thing), own: ownTexts(thing).join(' ') }));
    const mini = new MiniSearch({ fields: ['title', 'own'], searchOptions: { boost: { title: 2 }, prefix: true } });
    const building = await timed(() => mini.addAll(documents));
    let missedByMini = 0;
    const theirs = {
      build: building.ms,
      query: await medianOf(WORDS, (word) => mini.search(word)),
      misspelt: await medianOf(MISSPELT, (word) => {
        if (mini.search(word, { fuzzy: 0.2 }).length === 0) missedByMini += 1;
      }),
      missed: missedByMini,
    };
    return { ours: { ...ours, missed }, mini: { ...theirs, missed: missedByMini } };
  },
};

declare global {
  interface Window {
    peers: typeof peers;
  }
}
window.peers = peers;
