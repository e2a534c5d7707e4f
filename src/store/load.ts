import { base32FromBytes } from '../domain/crockford.ts';
import type { Entry } from '../domain/entry.ts';
import { foldOn, inOrder } from '../domain/fold.ts';
import { type Problem, problem } from '../domain/problem.ts';
import { FOLD_VERSION, type Shelf } from '../domain/shelf.ts';
import { entriesOf } from './pages.ts';
import { CODE_VERSION, type MetaRow, type MouldkeepDb, type ShelfRow, type TailRow } from './schema.ts';
import { refold } from './seal.ts';
import type { Texts } from './second-copy.ts';
import { EMPTY_MARK, type ShelfMark, shelfOf } from './shelf-rows.ts';

export interface Loaded {
  readonly device: string;
  /** The shelf as last sealed. */
  readonly base: Shelf;
  /** Entries since then. */
  readonly tail: Entry[];
  /** The sum of both. */
  readonly shelf: Shelf;
  /** How often the stored shelf was summed afresh. */
  readonly folds: number;
}

interface Rows {
  readonly meta: MetaRow[];
  readonly shelf: ShelfRow[];
  readonly tail: TailRow[];
}

function readRows(db: MouldkeepDb): Promise<Rows> {
  return db.transaction('r', db.meta, db.shelf, db.tail, async () => ({
    meta: await db.meta.where('key').anyOf('guard', 'device', 'shelf').toArray(),
    shelf: await db.shelf.toArray(),
    tail: await db.tail.toArray(),
  }));
}

/** This device's name, drawn at the first opening; of two tabs that open at once the first one's stays. */
function beginDevice(db: MouldkeepDb, drawn: string): Promise<string> {
  return db.transaction('rw', db.meta, async () => {
    const known = (await db.meta.get('device'))?.value as string | undefined;
    if (known === undefined) await db.meta.put({ key: 'device', value: drawn });
    await db.meta.put({ key: 'guard', value: { lowest: CODE_VERSION } });
    return known ?? drawn;
  });
}

/** The stored shelf and what followed; null when the shelf cannot be used and has to be summed afresh. */
function sum(rows: Rows, mark: ShelfMark): Omit<Loaded, 'device'> | null {
  if (mark.foldVersion !== FOLD_VERSION) return null;
  const tail = inOrder(rows.tail.flatMap(entriesOf));
  try {
    const base = shelfOf(rows.shelf, mark);
    const shelf = foldOn(base, tail);
    return shelf && { base, tail, shelf, folds: mark.folds };
  } catch {
    return null; // A damaged shelf is only a sum; the journal still has everything.
  }
}

/** Whether this code may open what the guard row stands before; a newer Mouldkeep may have raised it. */
export function mayOpen(guard: unknown): boolean {
  return ((guard as { lowest: number } | undefined)?.lowest ?? 0) <= CODE_VERSION;
}

/** What a database that is new begins with. */
export interface Begin {
  readonly bytes: (count: number) => Uint8Array;
  readonly texts?: Texts | undefined;
}

/** A copy that cannot be reached is no reason not to open. */
async function rescueFrom(db: MouldkeepDb, texts: Texts): Promise<boolean> {
  try {
    if ((await texts.keys()).length === 0) return false;
    await (await import('./second-copy.ts')).rescue(db, texts);
    return true;
  } catch (error) {
    console.warn('The second copy could not be put back:', error);
    return false;
  }
}

/** What is there; in a database that is new, what the second copy puts back first. */
async function readOrRescue(db: MouldkeepDb, { texts }: Begin): Promise<Rows> {
  const rows = await readRows(db);
  const isNew = rows.meta.every(({ key }) => key !== 'guard');
  return isNew && texts && (await rescueFrom(db, texts)) ? readRows(db) : rows;
}

/** Reads the shelf and the tail; folds the journal afresh when the stored shelf is of another fold, or the tail takes back what it sums. */
export async function load(db: MouldkeepDb, begin: Begin): Promise<Loaded | Problem> {
  const rows = await readOrRescue(db, begin);
  const meta = new Map(rows.meta.map((row) => [row.key, row.value]));
  const guard = meta.get('guard');
  if (!mayOpen(guard)) {
    return problem(
      'These shelves were written by a newer Mouldkeep.',
      'Nothing was changed. Load this page again while online to get the newer one.',
    );
  }
  const known = meta.get('device') as string | undefined;
  const device = guard && known ? known : await beginDevice(db, base32FromBytes(begin.bytes(6)));
  const summed = sum(rows, (meta.get('shelf') as ShelfMark | undefined) ?? EMPTY_MARK);
  if (summed) return { device, ...summed };
  const { shelf, folds } = await refold(db);
  return { device, base: shelf, tail: [], shelf, folds };
}
