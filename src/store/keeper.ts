import type { Code, Day, Sha256, ThingId } from '../domain/brand.ts';
import { CLOCK_ZERO, clockOf } from '../domain/clock.ts';
import { type Desk, makeDesk } from '../domain/desk.ts';
import type { Entry } from '../domain/entry.ts';
import { foldOn, inOrder } from '../domain/fold.ts';
import { NOUNS } from '../domain/noun.ts';
import { isProblem, type Problem, problem } from '../domain/problem.ts';
import type { Shelf, Thing } from '../domain/shelf.ts';
import { storageProblem } from './failure.ts';
import { entriesOf, type History, readHistory, readJournal } from './pages.ts';
import { keepPictures, type Picture, readPicture } from './pictures.ts';
import { MouldkeepDb, type TailRow } from './schema.ts';
import { type Loaded, load } from './load.ts';
import { joinJournal, refold, seal, TAIL_FULL } from './seal.ts';
import { readMark } from './shelf-rows.ts';

/** What the store is told from outside: names, time, chance, and when there is time to spare. */
export interface KeeperOptions {
  readonly name: string;
  readonly now: () => number;
  readonly today: () => Day;
  readonly bytes: (count: number) => Uint8Array;
  readonly by?: () => string | undefined;
  /** Told what the first screen showed last, before the shelf itself is read. */
  readonly early?: (fronts: unknown) => void;
  /** Runs a job when nothing else is going on. */
  readonly whenIdle: (job: () => void) => void;
}

export type MakePlan = (shelf: Shelf, desk: Desk) => readonly Entry[] | Problem;

/** The studio's records on this device: the shelf in memory, and the only way to change it. */
export interface Keeper {
  readonly name: string;
  shelf(): Shelf;
  /** Called with each new shelf, after it is safely written; returns how to stop. */
  subscribe(listener: (shelf: Shelf) => void): () => void;
  /**
   * Plans against the shelf as it is, writes the entries in one strict transaction, then shows them. When another tab was quicker the plan is
   * made again on what it wrote. A Problem means nothing was written.
   */
  act(plan: MakePlan): Promise<readonly Entry[] | Problem>;
  /** Adds entries made elsewhere (a backup, the other phone, the demo); those known already change nothing. Gives how many were new. */
  join(entries: readonly Entry[]): Promise<number | Problem>;
  history(id: ThingId, wanted: number): Promise<History>;
  journal(): Promise<readonly Entry[]>;
  /** Throws the stored shelf away and sums the journal afresh. */
  refold(): Promise<Problem | undefined>;
  /** Seals the older entries of the tail into a page, when there are enough of them. */
  seal(): Promise<void>;
  /** Takes in what other tabs wrote while this one slept. */
  catchUp(): Promise<void>;
  keepPictures(pictures: readonly Picture[]): Promise<Problem | undefined>;
  picture(sha: Sha256, size: 'whole' | 'thumb'): Promise<Blob | undefined>;
  /** Small things that can be made again, such as what the first screen showed last. */
  recall(key: string): Promise<unknown>;
  remember(key: string, value: unknown): Promise<void>;
  close(): void;
}

/** Another tab has written since this shelf was read: plan again. */
class Stale extends Error {}
const TRIES = 6;

export async function openKeeper(options: KeeperOptions): Promise<Keeper | Problem> {
  const db = new MouldkeepDb(options.name);
  try {
    await db.open();
    if (options.early) options.early((await db.meta.get('recall:fronts'))?.value);
    const loaded = await load(db, options.bytes);
    if (isProblem(loaded)) {
      db.close();
      return loaded;
    }
    return keeperOf(db, loaded, options);
  } catch (error) {
    return storageProblem(error);
  }
}

function keeperOf(db: MouldkeepDb, loaded: Loaded, options: KeeperOptions): Keeper {
  let { base, tail, shelf } = loaded;
  const listeners = new Set<(shelf: Shelf) => void>();
  const channel = new BroadcastChannel(`mouldkeep:${options.name}`);

  function show(next: Shelf): void {
    shelf = next;
    for (const listener of listeners) listener(next);
  }

  async function reload(): Promise<void> {
    const again = await load(db, options.bytes);
    if (isProblem(again)) return;
    ({ base, tail } = again);
    show(again.shelf);
  }

  /** Sums further entries onto the shelf; from the sealed shelf, or from the whole journal, when an older one is taken back. */
  async function take(entries: readonly Entry[]): Promise<void> {
    tail = inOrder([...tail, ...entries]);
    const next = foldOn(shelf, entries) ?? foldOn(base, tail);
    if (next) return show(next);
    await refold(db);
    await reload();
    channel.postMessage({ reload: true });
  }

  channel.onmessage = (event: MessageEvent<{ rows?: TailRow[]; reload?: true }>) => {
    if (event.data.reload) void reload();
    else if (event.data.rows) void take(event.data.rows.flatMap(entriesOf));
  };
  db.on('versionchange', () => {
    db.close();
    channel.close();
  });

  async function catchUp(): Promise<void> {
    const rows = await db.tail.where('id').above(shelf.last).toArray();
    const mark = await readMark(db);
    if (mark.last > shelf.last) return reload();
    if (rows.length > 0) await take(rows.flatMap(entriesOf));
  }

  async function append(row: TailRow): Promise<void> {
    await db.transaction('rw', db.tail, db.meta, async () => {
      const newest = (await db.tail.orderBy('id').reverse().limit(1).primaryKeys())[0];
      if (newest === undefined ? (await readMark(db)).last > shelf.last : newest > shelf.last) throw new Stale();
      await db.tail.add(row);
    });
  }

  const keeper: Keeper = {
    name: options.name,
    shelf: () => shelf,
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    async act(plan) {
      for (let attempt = 0; attempt < TRIES; attempt++) {
        const before = shelf;
        const desk = makeDesk({
          today: options.today(),
          nowMs: options.now(),
          clock: before.last === '' ? CLOCK_ZERO : clockOf(before.last),
          device: loaded.device,
          by: options.by?.(),
          bytes: options.bytes,
          isTaken: codesOf(before),
        });
        const entries = plan(before, desk);
        if (isProblem(entries)) return entries;
        const first = entries[0];
        if (!first) return entries;
        const row: TailRow = { id: first.id, text: JSON.stringify(entries) };
        try {
          await append(row);
        } catch (error) {
          if (!(error instanceof Stale)) return storageProblem(error);
          await catchUp();
          continue;
        }
        await take(entries);
        channel.postMessage({ rows: [row] });
        if (tail.length > TAIL_FULL) options.whenIdle(() => void keeper.seal());
        return entries;
      }
      return problem('Another tab is writing all the time, so it could not be saved.', 'Nothing was changed. Close the other tab and try again.');
    },
    async join(entries) {
      try {
        const added = await joinJournal(db, entries);
        await reload();
        channel.postMessage({ reload: true });
        return added;
      } catch (error) {
        return storageProblem(error);
      }
    },
    history: (id, wanted) => readHistory(db, id, wanted),
    journal: () => readJournal(db),
    async refold() {
      try {
        await refold(db);
        await reload();
        channel.postMessage({ reload: true });
        return undefined;
      } catch (error) {
        return storageProblem(error);
      }
    },
    async seal() {
      const upTo = await seal(db);
      if (upTo === null) return;
      const sealed = tail.filter((entry) => entry.id <= upTo);
      const next = foldOn(base, sealed);
      if (!next) return reload();
      base = next;
      tail = tail.slice(sealed.length);
    },
    catchUp,
    async keepPictures(pictures) {
      try {
        await keepPictures(db, pictures);
        return undefined;
      } catch (error) {
        return storageProblem(error);
      }
    },
    picture: (sha, size) => readPicture(db, sha, size),
    recall: async (key) => (await db.meta.get(`recall:${key}`))?.value,
    async remember(key, value) {
      await db.meta.put({ key: `recall:${key}`, value });
    },
    close() {
      channel.close();
      db.close();
    },
  };
  return keeper;
}

function codesOf(shelf: Shelf): (code: Code) => boolean {
  let codes: Set<Code | undefined> | undefined;
  return (code) => {
    codes ??= new Set(NOUNS.flatMap((noun) => [...(shelf.things[noun] as ReadonlyMap<string, Thing>).values()].map((thing) => thing.code)));
    return codes.has(code);
  };
}
