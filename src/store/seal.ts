import type { EntryId } from '../domain/brand.ts';
import type { Entry } from '../domain/entry.ts';
import { foldAll, foldOn, inOrder } from '../domain/fold.ts';
import { FOLD_VERSION, type Shelf } from '../domain/shelf.ts';
import { entriesOf, pagesOf, readJournal } from './pages.ts';
import type { MouldkeepDb, TailRow } from './schema.ts';
import { readMark, shelfOf, writeShelf } from './shelf-rows.ts';

/** Entries in the tail above which it is sealed, and how many of the newest stay, so that undo need not fold afresh. */
export const TAIL_FULL = 400;
const TAIL_KEPT = 100;

/** One tab at a time; where the browser has no Web Locks, transactions alone keep it whole. */
function alone<T>(db: MouldkeepDb, job: () => Promise<T>): Promise<T> {
  const locks = typeof navigator === 'undefined' ? undefined : navigator.locks;
  return locks ? (locks.request(`mouldkeep-seal:${db.name}`, job) as Promise<T>) : job();
}

/** The rows to seal: all but the newest, and as many more as it takes that no taking-back stays behind alone. */
function toSeal(rows: readonly TailRow[]): { sealed: Entry[]; rows: TailRow[] } | null {
  const parsed = rows.map(entriesOf);
  let cut = rows.length;
  for (let kept = 0; cut > 0 && kept + (parsed[cut - 1]?.length ?? 0) <= TAIL_KEPT; cut--) kept += parsed[cut - 1]?.length ?? 0;
  const ids = new Set(parsed.slice(0, cut).flatMap((entries) => entries.map((entry) => entry.id)));
  for (let i = cut; i < rows.length; i++) {
    const isTakingBack = (parsed[i] ?? []).some((entry) => entry.kind === 'withdrawn' && ids.has(entry.entry));
    if (!isTakingBack) continue;
    for (; cut <= i; cut++) for (const entry of parsed[cut] ?? []) ids.add(entry.id);
  }
  return cut === 0 ? null : { sealed: inOrder(parsed.slice(0, cut).flat()), rows: rows.slice(0, cut) };
}

/**
 * Seals the older part of the tail: page, changed shelf rows and the emptied tail in one transaction, so that a crash leaves the one
 * state or the other. Gives the id of the last entry sealed,
 * or null when there was nothing to seal.
 */
export function seal(db: MouldkeepDb): Promise<EntryId | null> {
  return alone(db, () =>
    db.transaction('rw', db.tail, db.pages, db.shelf, db.meta, async () => {
      const mark = await readMark(db);
      const rows = await db.tail.toArray();
      const part = toSeal(rows);
      if (!part || mark.foldVersion !== FOLD_VERSION) return null;
      const stored = shelfOf(await db.shelf.toArray(), mark);
      const shelf = foldOn(stored, part.sealed);
      if (!shelf) return null;
      await db.pages.bulkAdd(pagesOf(part.sealed));
      await writeShelf(db, shelf, stored);
      await db.tail.bulkDelete(part.rows.map((row) => row.id));
      return part.sealed.at(-1)?.id ?? null;
    }),
  );
}

/** Folds the whole journal afresh, sealing all of the tail. Tried again when another tab writes meanwhile. */
export function refold(db: MouldkeepDb): Promise<Shelf> {
  return alone(db, async () => {
    for (;;) {
      const keys = await db.tail.toCollection().primaryKeys();
      const shelf = foldAll(await readJournal(db));
      if (await replace(db, shelf, keys)) return shelf;
    }
  });
}

function replace(db: MouldkeepDb, shelf: Shelf, keys: readonly string[]): Promise<boolean> {
  return db.transaction('rw', db.tail, db.pages, db.shelf, db.meta, async () => {
    const rows = await db.tail.toArray();
    if (rows.length !== keys.length || rows.at(-1)?.id !== keys.at(-1)) return false;
    await db.pages.bulkAdd(pagesOf(inOrder(rows.flatMap(entriesOf))));
    await writeShelf(db, shelf);
    await db.tail.clear();
    return true;
  });
}

/** Union with entries made elsewhere, written as pages, and the sum of it all. Gives how many were new here. */
export function joinJournal(db: MouldkeepDb, entries: readonly Entry[]): Promise<number> {
  return alone(db, async () => {
    for (;;) {
      const keys = await db.tail.toCollection().primaryKeys();
      const here = await readJournal(db);
      const known = new Set(here.map((entry) => entry.id));
      const fresh = inOrder(entries.filter((entry) => !known.has(entry.id)));
      if (fresh.length === 0) return 0;
      const shelf = foldAll([...here, ...fresh]);
      const isDone = await db.transaction('rw', db.tail, db.pages, db.shelf, db.meta, async () => {
        if (!(await replace(db, shelf, keys))) return false;
        await db.pages.bulkAdd(pagesOf(fresh));
        return true;
      });
      if (isDone) return fresh.length;
    }
  });
}
