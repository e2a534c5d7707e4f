import type { EntryId } from '../domain/brand.ts';
import type { Entry } from '../domain/entry.ts';
import { foldInSlices, foldOn, inOrder } from '../domain/fold.ts';
import { FOLD_VERSION, type Shelf } from '../domain/shelf.ts';
import { through } from '../domain/slices.ts';
import { inBreaths } from './breaths.ts';
import { addPages, entriesInSlices, entriesOf, pagesInSlices, pagesOf } from './pages.ts';
import type { MouldkeepDb, TailRow } from './schema.ts';
import { readMark, rowsInSlices, type ShelfMark, shelfOf, writeShelf } from './shelf-rows.ts';

/** Entries in the tail above which it is sealed, and how many of the newest stay, so that undo need not fold afresh. */
export const TAIL_FULL = 400;
export const TAIL_KEPT = 100;

/** What was sealed: the last entry of the sealed shelf before and now, and how many entries lie between. */
export interface Sealed {
  readonly from: EntryId | '';
  readonly upTo: EntryId;
  readonly count: number;
}

/** Only spares two tabs the same work: the transaction alone keeps it whole, also where the browser has no Web Locks. */
function unlessBusy<T>(db: MouldkeepDb, job: () => Promise<T>): Promise<T | null> {
  const locks = typeof navigator === 'undefined' ? undefined : navigator.locks;
  if (!locks) return job();
  return locks.request(`mouldkeep-seal:${db.name}`, { ifAvailable: true }, (lock) => (lock ? job() : null)) as Promise<T | null>;
}

/** The rows to seal: all but the newest, and as many more as it takes that no taking-back stays behind alone. */
function toSeal(rows: readonly TailRow[]): { sealed: Entry[]; keys: string[] } | null {
  const parsed = rows.map(entriesOf);
  let cut = rows.length;
  for (let kept = 0; cut > 0 && kept + (parsed[cut - 1]?.length ?? 0) <= TAIL_KEPT; cut--) kept += parsed[cut - 1]?.length ?? 0;
  const ids = new Set(parsed.slice(0, cut).flatMap((entries) => entries.map((entry) => entry.id)));
  for (let i = cut; i < rows.length; i++) {
    const isTakingBack = (parsed[i] ?? []).some((entry) => entry.kind === 'withdrawn' && ids.has(entry.entry));
    if (!isTakingBack) continue;
    for (; cut <= i; cut++) for (const entry of parsed[cut] ?? []) ids.add(entry.id);
  }
  return cut === 0 ? null : { sealed: inOrder(parsed.slice(0, cut).flat()), keys: rows.slice(0, cut).map((row) => row.id) };
}

/**
 * Seals the older part of the tail: page, changed shelf rows and the emptied tail in one transaction, so that a crash leaves the one
 * state or the other. Null when there was nothing to seal.
 */
export function seal(db: MouldkeepDb): Promise<Sealed | null> {
  return unlessBusy(db, () =>
    db.transaction('rw', db.tail, db.pages, db.shelf, db.meta, async () => {
      const mark = await readMark(db);
      const part = toSeal(await db.tail.toArray());
      const upTo = part?.sealed.at(-1)?.id;
      if (!part || !upTo || mark.foldVersion !== FOLD_VERSION) return null;
      const stored = shelfOf(await db.shelf.toArray(), mark);
      const shelf = foldOn(stored, part.sealed);
      if (!shelf) return null;
      await addPages(db, pagesOf(part.sealed));
      await writeShelf(db, shelf, mark.folds, through(rowsInSlices(shelf, stored)));
      await db.tail.bulkDelete(part.keys);
      return { from: mark.last, upTo, count: part.sealed.length };
    }),
  );
}

interface Whole {
  readonly mark: ShelfMark;
  readonly entries: Entry[];
  readonly tailKeys: string[];
}

async function readWhole(db: MouldkeepDb): Promise<Whole> {
  const { mark, pages, tail } = await db.transaction('r', db.pages, db.tail, db.meta, async () => ({
    pages: await db.pages.toArray(),
    tail: await db.tail.toArray(),
    mark: await readMark(db),
  }));
  return { mark, entries: await inBreaths(entriesInSlices([...pages, ...tail])), tailKeys: tail.map((row) => row.id) };
}

/** Writes the shelf that `whole` and `fresh` sum to, the tail and `fresh` as pages; false when another tab has written since `whole` was read. */
async function replace(db: MouldkeepDb, whole: Whole, fresh: readonly Entry[], shelf: Shelf, tell?: () => void): Promise<boolean> {
  const pages = await inBreaths(pagesInSlices(fresh), tell);
  const shelfRows = await inBreaths(rowsInSlices(shelf));
  return db.transaction('rw', db.tail, db.pages, db.shelf, db.meta, async () => {
    const mark = await readMark(db);
    const rows = await db.tail.toArray();
    const isSame = mark.last === whole.mark.last && mark.folds === whole.mark.folds && rows.length === whole.tailKeys.length;
    if (!isSame || rows.at(-1)?.id !== whole.tailKeys.at(-1)) return false;
    await addPages(db, [...pagesOf(inOrder(rows.flatMap(entriesOf))), ...pages]);
    await writeShelf(db, shelf, mark.folds + 1, shelfRows);
    await db.tail.clear();
    return true;
  });
}

export interface Refolded {
  readonly shelf: Shelf;
  readonly folds: number;
}

/** Folds the whole journal afresh, sealing all of the tail. Tried again when another tab writes meanwhile. */
export async function refold(db: MouldkeepDb): Promise<Refolded> {
  for (;;) {
    const whole = await readWhole(db);
    const shelf = await inBreaths(foldInSlices(whole.entries));
    if (await replace(db, whole, [], shelf)) return { shelf, folds: whole.mark.folds + 1 };
  }
}

/** Union with entries made elsewhere, written as pages, and the sum of it all, with how many were new here; null when none was. */
export async function joinJournal(
  db: MouldkeepDb,
  entries: readonly Entry[],
  tell?: () => void,
): Promise<(Refolded & { readonly added: number }) | null> {
  for (;;) {
    const whole = await readWhole(db);
    const known = new Set(whole.entries.map((entry) => entry.id));
    const fresh = inOrder(entries.filter((entry) => !known.has(entry.id)));
    if (fresh.length === 0) return null;
    const shelf = await inBreaths(foldInSlices([...whole.entries, ...fresh]), tell);
    if (await replace(db, whole, fresh, shelf, tell)) return { shelf, folds: whole.mark.folds + 1, added: fresh.length };
  }
}
