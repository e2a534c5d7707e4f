import type { Day } from '../domain/brand.ts';
import type { Entry } from '../domain/entry.ts';
import { foldInSlices, inOrder } from '../domain/fold.ts';
import { inBreaths } from './breaths.ts';
import { addPages, entriesOf, pagesInSlices } from './pages.ts';
import { GENERATION, type MouldkeepDb, REPLACED } from './schema.ts';
import type { Refolded } from './seal.ts';
import { readMark, rowsInSlices, writeShelf } from './shelf-rows.ts';

/** The studio that was here before another was put in its place. It is kept until somebody lets it go. */
export interface Replaced {
  /** Day it was replaced. */
  readonly on: Day;
  readonly entries: number;
  readonly studio?: string;
}

const ABOUT = 'replaced';
const rowKey = (index: number) => `${REPLACED}${String(index).padStart(6, '0')}`;

export async function readReplaced(db: MouldkeepDb): Promise<Replaced | undefined> {
  return (await db.meta.get(ABOUT))?.value as Replaced | undefined;
}

export async function replacedEntries(db: MouldkeepDb): Promise<Entry[]> {
  const rows = await db.meta.where('key').startsWith(REPLACED).toArray();
  return rows.flatMap(({ value }) => entriesOf({ text: String(value) }));
}

export function forgetReplaced(db: MouldkeepDb): Promise<void> {
  return db.transaction('rw', db.meta, () => forgetRows(db));
}

async function forgetRows(db: MouldkeepDb): Promise<void> {
  await db.meta.where('key').startsWith(REPLACED).delete();
  await db.meta.delete(ABOUT);
}

/**
 * Puts these entries in the place of all that is here, and what was here aside: in one transaction, so that a crash or a full disk leaves
 * the one studio or the other, whole. What had been put aside before is gone then.
 */
export async function replaceStudio(db: MouldkeepDb, entries: readonly Entry[], on: Day, tell?: () => void): Promise<Refolded> {
  const ordered = inOrder(entries);
  const shelf = await inBreaths(foldInSlices(ordered), tell);
  const pages = await inBreaths(pagesInSlices(ordered), tell);
  const shelfRows = await inBreaths(rowsInSlices(shelf));
  return db.transaction('rw', db.tail, db.pages, db.shelf, db.meta, async () => {
    const mark = await readMark(db);
    await forgetRows(db);
    const count = await putAside(db);
    const studio = (await db.shelf.get('studio'))?.text;
    const name = studio === undefined ? undefined : (JSON.parse(studio) as { readonly name?: string }).name;
    if (count > 0) await db.meta.put({ key: ABOUT, value: { on, entries: count, ...(name ? { studio: name } : {}) } satisfies Replaced });
    await Promise.all([db.pages.clear(), db.tail.clear(), db.meta.where('key').startsWith('recall:').delete()]);
    await addPages(db, pages);
    const generation = ((await db.meta.get(GENERATION))?.value as number | undefined) ?? 0;
    await db.meta.put({ key: GENERATION, value: generation + 1 });
    const folds = mark.folds + 1;
    await writeShelf(db, shelf, folds, shelfRows);
    return { shelf, folds };
  });
}

/** Copies pages and tail into `meta`, one at a time. Gives how many entries they hold. */
async function putAside(db: MouldkeepDb): Promise<number> {
  let rows = 0;
  let entries = 0;
  for (const key of await db.pages.toCollection().primaryKeys()) {
    const page = await db.pages.get(key);
    if (!page) continue;
    entries += page.count;
    await db.meta.put({ key: rowKey(rows++), value: page.text });
  }
  const tail = (await db.tail.toArray()).flatMap(entriesOf);
  entries += tail.length;
  if (tail.length > 0) await db.meta.put({ key: rowKey(rows++), value: JSON.stringify(tail) });
  return entries;
}
