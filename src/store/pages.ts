import type { Entry } from '../domain/entry.ts';
import { inForce, inOrder } from '../domain/fold.ts';
import { mentions } from '../domain/journal.ts';
import type { MouldkeepDb, PageRow, TailRow } from './schema.ts';

/** Entries in a page: few enough to read one for a thing's history, many enough that 100,000 are 200 rows. */
export const PAGE_ENTRIES = 500;

export function entriesOf(row: { readonly text: string }): Entry[] {
  return JSON.parse(row.text) as Entry[];
}

export function pagesOf(ordered: readonly Entry[]): PageRow[] {
  const rows: PageRow[] = [];
  for (let i = 0; i < ordered.length; i += PAGE_ENTRIES) {
    const part = ordered.slice(i, i + PAGE_ENTRIES);
    const first = part[0] as Entry;
    rows.push({ id: first.id, last: (part.at(-1) as Entry).id, count: part.length, text: JSON.stringify(part) });
  }
  return rows;
}

/** Every entry of the journal, in time order. Read whole only to fold afresh, to join and to back up; never at start. */
export async function readJournal(db: MouldkeepDb): Promise<Entry[]> {
  const rows: { text: string }[] = await db.transaction('r', db.pages, db.tail, async () => [
    ...(await db.pages.toArray()),
    ...(await db.tail.toArray()),
  ]);
  return inOrder(rows.flatMap(entriesOf));
}

export interface History {
  /** Newest first. */
  readonly entries: readonly Entry[];
  /** Whether older pages have been left unread. */
  readonly isMore: boolean;
}

const PAGES_AT_ONCE = 8;

/** The newest entries in force that name a thing, at least `wanted` of them where there are as many. */
export async function readHistory(db: MouldkeepDb, id: string, wanted: number): Promise<History> {
  const tail: TailRow[] = await db.tail.toArray();
  const found: Entry[] = [];
  const keep = (row: { text: string }) => {
    if (!row.text.includes(id) && !row.text.includes('"withdrawn"')) return;
    found.push(...entriesOf(row).filter((entry) => entry.kind === 'withdrawn' || mentions(entry, id)));
  };
  tail.forEach(keep);
  const keys = (await db.pages.toCollection().primaryKeys()).reverse();
  let next = 0;
  let counting = inForce(inOrder(found));
  while (next < keys.length && counting.length < wanted) {
    const rows = await db.pages.bulkGet(keys.slice(next, next + PAGES_AT_ONCE));
    next += PAGES_AT_ONCE;
    for (const row of rows) if (row) keep(row);
    counting = inForce(inOrder(found));
  }
  return { entries: counting.reverse(), isMore: next < keys.length };
}
