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
/** A store that takes longer over a tenth of the journal is not asked to restore all of it. */
const PATIENCE_MS = 6000;

/** The same work done once by one store; all times in ms. */
export interface Work {
  readonly name: string;
  readonly restored: readonly { readonly entries: number; readonly ms: number }[];
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

/** Sums of the studios asked for, made once. */
const made = new Map<number, { readonly entries: Entry[]; readonly shelf: Shelf }>();
function studio(size: StudioSize) {
  const known = made.get(size.entries);
  if (known) return known;
  const entries = bigStudio(size);
  const fresh = { entries, shelf: foldAll(entries) };
  made.set(size.entries, fresh);
  return fresh;
}

const peers = {
  count: PEERS.length,

  /** Our own store: entries joined and summed, the shelf read when it opens again, things found by their words, runs logged and shown. */
  async ours(sizes: readonly StudioSize[]): Promise<Work> {
    const restored: { entries: number; ms: number }[] = [];
    for (const size of sizes) {
      const { entries } = studio(size);
      const keeper = await pageKeeper(`ours-${size.entries}`);
      const { ms, value } = await timed(() => keeper.join(entries));
      if (value !== entries.length) throw new Error('not all entries were joined');
      restored.push({ entries: entries.length, ms });
      keeper.close();
    }
    const opened = await timed(() => pageKeeper(`ours-${sizes.at(-1)?.entries}`));
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
    return { name: 'Mouldkeep', restored, load: opened.ms, things: thingsOf(shelf).length, find, log };
  },

  async peer(at: number, sizes: readonly StudioSize[]): Promise<Work> {
    const peer = PEERS[at] as Peer;
    const restored: { entries: number; ms: number }[] = [];
    const whole = studio(sizes.at(-1) as StudioSize);
    for (const size of sizes) {
      if (restored.some(({ ms }) => ms > PATIENCE_MS)) break;
      const rows = studio(size).entries.map(entryRow);
      const store = await peer.open(`peer-${at}-${size.entries}`);
      const { ms } = await timed(() => store.add('entries', rows));
      restored.push({ entries: rows.length, ms });
      await store.close();
    }
    const things = thingsOf(whole.shelf);
    const name = `peer-${at}-things`;
    const filled = await peer.open(name);
    await filled.add('things', things.map(thingRow));
    await filled.add('entries', whole.entries.slice(0, 1000).map(entryRow));
    await filled.close();
    const opened = await timed(async () => {
      const store = await peer.open(name);
      return { store, rows: await store.things() };
    });
    const { store, rows } = opened.value;
    if (rows.length !== things.length) throw new Error(`${peer.name} gave ${rows.length} of ${things.length} things`);
    const find = await medianOf(WORDS, async (word) => {
      if ((await store.find(word)) === 0) throw new Error(`${word} was not found`);
    });
    const moulds = [...whole.shelf.things.mould.values()].slice(0, LOGS);
    const log = await medianOf(moulds, (mould, number) => {
      const entry = whole.entries[2000 + number] as Entry;
      return store.log(entryRow(entry), thingRow({ ...mould, shots: mould.shots + 5 }));
    });
    await store.close();
    return { name: peer.name, restored, load: opened.ms, things: rows.length, find, log };
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
