import { isToSpare, spare } from '../domain/bench.ts';
import type { Day, EntryId, Sha256, ThingId } from '../domain/brand.ts';
import { CLOCK_ZERO, clockOf } from '../domain/clock.ts';
import { type Desk, makeDesk } from '../domain/desk.ts';
import type { Entry } from '../domain/entry.ts';
import { takenBackBy } from '../domain/fold.ts';
import type { Picture } from '../domain/picture.ts';
import { isProblem, type Problem, problem } from '../domain/problem.ts';
import type { Shelf } from '../domain/shelf.ts';
import { append, checked, Stale } from './append.ts';
import { codesOf } from './codes.ts';
import { openingProblem, storageProblem } from './failure.ts';
import { beginFreshLog } from './fresh-log.ts';
import { type Ahead, Held } from './held.ts';
import { type Loaded, load, mayOpen } from './load.ts';
import { openOtherTabs } from './other-tabs.ts';
import { countEntries, entriesOf, type History, journalTexts, readAction, readHistory, readJournal, readTakingsBack } from './pages.ts';
import { dropPictures, keepPictures, readPicture, thumbReader } from './pictures.ts';
import { MouldkeepDb, type TailRow } from './schema.ts';
import { joinJournal, type Refolded, refold, seal, TAIL_FULL } from './seal.ts';
import type { Texts } from './second-copy.ts';
import { makeTurns } from './turns.ts';
import type { Vault } from './vault.ts';

/** What the store is told from outside: names, time, chance, and when there is time to spare. */
export interface KeeperOptions {
  readonly name: string;
  readonly now: () => number;
  readonly today: () => Day;
  readonly bytes: (count: number) => Uint8Array;
  readonly by?: () => string | undefined;
  /** Told what the first screen showed last, before the shelf itself is read, unless a newer Mouldkeep wrote it. */
  readonly early?: (fronts: unknown) => unknown;
  /** Where a second copy of the journal is kept, in case the browser throws the database away. */
  readonly texts?: Texts | undefined;
  /** Waits until nobody taps or types: between pages of the second copy. */
  readonly rest?: () => Promise<void>;
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
  /**
   * Adds entries made elsewhere (a backup, the other phone, the demo); those known already change nothing. Gives how many were new. `tell` is
   * called about twice for each page of them.
   */
  join(entries: readonly Entry[], tell?: () => void): Promise<number | Problem>;
  /** Whether one of the newest entries takes this action back. A sealed taking-back is not looked up: that would read the journal. */
  isTakenBack(action: EntryId): boolean;
  /** The newest entries that name a thing. Read no further once the signal says so; then it throws the signal's reason. */
  history(id: ThingId, wanted: number, signal?: AbortSignal): Promise<History>;
  /** Every entry of an action, named by its first, whether in force or not. */
  action(first: EntryId): Promise<readonly Entry[]>;
  /** Takings-back in force among the newest entries, newest first. */
  takingsBack(): Promise<readonly Entry[]>;
  journal(): Promise<readonly Entry[]>;
  /** How many entries the journal has, takings-back and what they took back included. Throws when the studio is replaced meanwhile. */
  journalLength(): Promise<number>;
  /** The same a row at a time, each the text of a list of entries, for a worker to read. Throws when the studio is replaced meanwhile. */
  journalTexts(): AsyncGenerator<string>;
  /** Throws the stored shelf away and sums the journal afresh. */
  refold(): Promise<Problem | undefined>;
  /** Seals the older entries of the tail into a page, when there are enough of them. */
  seal(): Promise<void>;
  /** Brings the second copy of the journal up to date, where there is one. It is also done a moment after each change. */
  writeCopy(): Promise<void>;
  /** Takes in what other tabs wrote while this one slept. */
  catchUp(): Promise<void>;
  keepPictures(pictures: readonly Picture[]): Promise<Problem | undefined>;
  /** Throws away those of these pictures that no entry names. */
  dropPictures(shas: readonly Sha256[]): Promise<Problem | undefined>;
  picture(sha: Sha256, size: 'whole' | 'thumb'): Promise<Blob | undefined>;
  /** Small things that can be made again, such as what the first screen showed last. */
  recall(key: string): Promise<unknown>;
  remember(key: string, value: unknown): Promise<void>;
  /** What backups, restoring and the pictures' upkeep need; its code comes with the first call. */
  vault(): Promise<Vault>;
  close(): void;
}

/** Another tab that writes without a pause wins most of them: what it wrote has to be read before each. */
const TRIES = 30;

/** ms from a change to the second copy of it; and from the opening, when whoever opened it waits for other things. */
const COPY_AFTER = 400;
const FIRST_COPY_AFTER = 5000;

export async function openKeeper(options: KeeperOptions): Promise<Keeper | Problem> {
  const db = new MouldkeepDb(options.name);
  try {
    await db.open();
    if (options.early) await tellEarly(db, options.early);
    const loaded = await load(db, options);
    if (!isProblem(loaded)) {
      void beginFreshLog(options.name);
      return keeperOf(db, loaded, options);
    }
    db.close();
    return loaded;
  } catch (error) {
    db.close();
    return openingProblem(error);
  }
}

/** Only a likeness of the first screen, so nothing that goes wrong with it stands in the way of opening. */
async function tellEarly(db: MouldkeepDb, early: (fronts: unknown) => unknown): Promise<void> {
  try {
    const [guard, fronts] = await db.meta.bulkGet(['guard', 'recall:fronts']);
    if (mayOpen(guard?.value)) await early(fronts?.value);
  } catch {
    // The screen itself follows.
  }
}

function keeperOf(db: MouldkeepDb, loaded: Loaded, options: KeeperOptions): Keeper {
  const held = new Held(db, loaded, options);
  const inTurn = makeTurns();
  const readThumb = thumbReader(db);
  const others = openOtherTabs(options.name, ({ rows, reload, folds }) => {
    if (reload) void quietly(() => held.reload());
    else if (rows) void quietly(() => takeTold(rows, folds ?? held.folds));
  });

  /** For what nobody waits for: when it fails, the next catching up or acting tells. */
  function quietly(job: () => Promise<unknown>): Promise<void> {
    return inTurn(job).then(
      () => undefined,
      () => undefined,
    );
  }

  /** A Problem instead of a rejection. */
  function safely<T>(job: () => Promise<T>): Promise<T | Problem> {
    return job().catch(storageProblem);
  }

  /** Rows of a studio that was replaced meanwhile must not come back with a message that was late. */
  async function takeTold(rows: readonly TailRow[], folds: number): Promise<void> {
    if (folds > held.folds) await held.reload();
    else if (folds === held.folds) await held.take(rows.flatMap(entriesOf));
  }
  db.on('versionchange', () => {
    db.close();
    others.leave();
    return false; // Dexie's own answer is to open again at the next write, whatever the newer code has made of the database.
  });

  /** When there is time, so that the next action need not copy what is big. */
  function spareSoon(): void {
    if (isToSpare(held.shelf)) options.whenIdle(() => spare(held.shelf));
  }

  /** The next second copy, while it waits; not put off by further changes. */
  let copying: ReturnType<typeof setTimeout> | undefined;
  function copySoon(): void {
    if (!options.texts || copying !== undefined) return;
    copying = setTimeout(() => {
      copying = undefined;
      options.whenIdle(() => void keeper.writeCopy());
    }, COPY_AFTER);
  }

  function adopt(whole: Refolded): void {
    if (db.isOpen()) others.tell({ reload: true });
    held.adopt(whole);
    copySoon();
  }

  async function refoldAll(): Promise<undefined> {
    adopt(await refold(db));
  }

  function deskFor({ last }: Shelf): Desk {
    return makeDesk({
      today: options.today(),
      nowMs: options.now(),
      clock: last === '' ? CLOCK_ZERO : clockOf(last),
      device: loaded.device,
      by: options.by?.(),
      bytes: options.bytes,
      isTaken: codesOf(held.shelf),
    });
  }

  /** Shows entries that are safely written, and tells the other tabs. */
  async function showWritten(row: TailRow, entries: readonly Entry[], ahead?: Ahead): Promise<void> {
    others.tellSoon({ rows: [row], folds: held.folds }, () => {
      copySoon();
      spareSoon();
    });
    const isAfresh = await held.take(entries, ahead);
    if (isAfresh) options.whenIdle(() => void quietly(refoldAll));
    else if (held.tail.length > TAIL_FULL) options.whenIdle(() => void keeper.seal());
  }

  async function act(plan: MakePlan): Promise<readonly Entry[] | Problem> {
    for (let attempt = 0; attempt < TRIES; attempt++) {
      const before = held.shelf;
      const planned = plan(before, deskFor(before));
      const entries = isProblem(planned) ? planned : checked(planned);
      if (isProblem(entries)) return entries;
      const first = entries[0];
      if (!first) return entries;
      const row: TailRow = { id: first.id, text: JSON.stringify(entries) };
      let ahead: Ahead | undefined;
      try {
        await append(db, row, { last: before.last, folds: held.folds, newest: held.newestRow }, () => {
          ahead = held.ahead(entries);
        });
      } catch (error) {
        const failure = error instanceof Stale ? await safely(() => held.catchUp()) : storageProblem(error);
        if (failure) return failure;
        continue;
      }
      const shown = await safely(() => showWritten(row, entries, ahead));
      return shown ? problem('It was saved, but cannot be shown.', 'Load this page again to see it.') : entries;
    }
    return problem(
      'Another tab is writing all the time, so it could not be saved.',
      'Nothing was changed. Close the other tab and try again.',
    );
  }

  const keeper: Keeper = {
    name: options.name,
    shelf: () => held.shelf,
    subscribe(listener) {
      held.listeners.add(listener);
      return () => held.listeners.delete(listener);
    },
    act: (plan) => inTurn(() => act(plan)),
    join: (entries, tell) =>
      safely(() =>
        inTurn(async () => {
          const joined = await joinJournal(db, entries, tell);
          if (!joined) return 0;
          adopt(joined);
          return joined.added;
        }),
      ),
    isTakenBack: (action) => takenBackBy(held.tail).has(action),
    history: (id, wanted, signal) => readHistory(db, id, wanted, signal),
    action: (first) => readAction(db, first),
    takingsBack: () => readTakingsBack(db),
    journal: () => readJournal(db),
    journalLength: () => countEntries(db),
    journalTexts: () => journalTexts(db),
    refold: () => safely(() => inTurn(refoldAll)),
    seal: () =>
      quietly(async () => {
        const sealed = await seal(db);
        if (sealed) await held.follow(sealed);
      }),
    async writeCopy() {
      const { texts, rest } = options;
      if (!texts || !db.isOpen()) return;
      const { writeCopy } = await import('./second-copy.ts');
      await writeCopy(db, texts, rest).catch(() => undefined); // The next change tries again.
    },
    catchUp: () => quietly(() => held.catchUp()),
    keepPictures: (pictures) => safely(() => keepPictures(db, pictures).then(() => undefined)),
    dropPictures: (shas) => safely(() => dropPictures(db, shas).then(() => undefined)),
    picture: (sha, size) => (size === 'whole' ? readPicture(db, sha) : readThumb(sha)),
    recall: async (key) => (await db.meta.get(`recall:${key}`))?.value,
    remember: (key, value) =>
      db.meta.put({ key: `recall:${key}`, value }).then(
        () => undefined,
        () => undefined,
      ),
    vault: async () => (await import('./vault.ts')).openVault(db, loaded.device, { inTurn, adopt }),
    close() {
      clearTimeout(firstCopy);
      clearTimeout(copying);
      others.close();
      db.close();
    },
  };
  const firstCopy = setTimeout(copySoon, FIRST_COPY_AFTER);
  spareSoon();
  void keeper.catchUp(); // What was written between reading the shelf and listening to the channel.
  return keeper;
}
