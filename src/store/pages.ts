import type { EntryId } from '../domain/brand.ts';
import type { Entry } from '../domain/entry.ts';
import { inForce, inOrder, takenBackBy } from '../domain/fold.ts';
import { mentions } from '../domain/journal.ts';
import { through } from '../domain/slices.ts';
import type { MouldkeepDb, PageRow } from './schema.ts';

/** Entries in a page: few enough to read one for a thing's history, many enough that 100,000 are 200 rows. */
export const PAGE_ENTRIES = 500;

export function entriesOf(row: { readonly text: string }): Entry[] {
  return JSON.parse(row.text) as Entry[];
}

export function pagesOf(ordered: readonly Entry[]): PageRow[] {
  return through(pagesInSlices(ordered));
}

export function* pagesInSlices(ordered: readonly Entry[]): Generator<void, PageRow[]> {
  const rows: PageRow[] = [];
  for (let i = 0; i < ordered.length; i += PAGE_ENTRIES) {
    const part = ordered.slice(i, i + PAGE_ENTRIES);
    const first = part[0] as Entry;
    rows.push({ id: first.id, last: (part.at(-1) as Entry).id, count: part.length, text: JSON.stringify(part) });
    yield;
  }
  return rows;
}

/** Rows handed to the database at once: it copies them all before the page gets its turn. */
const ROWS_AT_ONCE = 10;

/** Inside the caller's transaction. */
export async function addPages(db: MouldkeepDb, pages: readonly PageRow[]): Promise<void> {
  for (let i = 0; i < pages.length; i += ROWS_AT_ONCE) await db.pages.bulkAdd(pages.slice(i, i + ROWS_AT_ONCE));
}

/** All entries of some rows, a row at a time. */
export function* entriesInSlices(rows: readonly { readonly text: string }[]): Generator<void, Entry[]> {
  const entries: Entry[] = [];
  for (const row of rows) {
    for (const entry of entriesOf(row)) entries.push(entry);
    yield;
  }
  return entries;
}

/** Every entry of the journal, in time order. Read whole only to fold afresh, to join and to back up; never at start. */
export async function readJournal(db: MouldkeepDb): Promise<Entry[]> {
  const rows: { text: string }[] = await db.transaction('r', db.pages, db.tail, async () => [
    ...(await db.pages.toArray()),
    ...(await db.tail.toArray()),
  ]);
  return inOrder(rows.flatMap(entriesOf));
}

/** Another studio was put in this one's place while it was being read. */
export class CopyMoved extends Error {}

interface JournalRow {
  readonly text: string;
  /** Entries in it, where that is known without reading it. */
  readonly count?: number;
}

/** Pages are never changed once written, so their keys and the tail, taken at one moment, are the journal of that moment. */
export async function journalRows(db: MouldkeepDb): Promise<{ read(): AsyncGenerator<JournalRow> }> {
  const { keys, tail } = await db.transaction('r', db.pages, db.tail, async () => ({
    keys: await db.pages.toCollection().primaryKeys(),
    tail: await db.tail.toArray(),
  }));
  return {
    async *read() {
      for (const key of keys) {
        const page = await db.pages.get(key);
        if (!page) throw new CopyMoved();
        yield page;
      }
      yield* tail;
    },
  };
}

/** How many entries the journal has; a page at a time, and none of them parsed. Throws CopyMoved. */
export async function countEntries(db: MouldkeepDb): Promise<number> {
  let sum = 0;
  for await (const row of (await journalRows(db)).read()) sum += row.count ?? entriesOf(row).length;
  return sum;
}

/** The journal a row at a time, as text: for a worker to read, so that the page never has all of it to parse. Throws CopyMoved. */
export async function* journalTexts(db: MouldkeepDb): AsyncGenerator<string> {
  for await (const { text } of (await journalRows(db)).read()) yield text;
}

export interface History {
  /** Newest first. */
  readonly entries: readonly Entry[];
  /** Whether older pages have been left unread. */
  readonly isMore: boolean;
}

/** So few that taps are answered, and a write let in, between one reading and the next. */
const PAGES_AT_ONCE = 4;

/**
 * Last entry of the newest page, or of the newest that ends before `end`; empty where there is none. Asked when it is needed: that of every
 * page would be walked through one by one, hundreds of times as many steps as reading the keys of the pages.
 */
async function lastBefore(db: MouldkeepDb, end?: string): Promise<string> {
  const pages = end === undefined ? db.pages.orderBy('last') : db.pages.where('last').below(end);
  return (await pages.reverse().limit(1).keys()).map(String)[0] ?? '';
}

/** Every entry of an action, named by its first, whether in force or not: in the tail, or in pages that follow one another. */
export async function readAction(db: MouldkeepDb, first: EntryId): Promise<Entry[]> {
  const isOf = (entry: Entry) => (entry.step ?? entry.id) === first;
  const partOf = (row: { readonly text: string }) => (row.text.includes(first) ? entriesOf(row).filter(isOf) : []);
  const found = (await db.tail.toArray()).flatMap(partOf);
  const keys = await db.pages.where('last').aboveOrEqual(first).primaryKeys();
  for (const key of keys) {
    const page = await db.pages.get(key);
    const part = page ? partOf(page) : [];
    if (part.length === 0 && key > first) break;
    found.push(...part);
  }
  return inOrder(found);
}

const TAKING_BACK = '"kind":"withdrawn"';

/**
 * What a row says of a thing, and all that it takes back: whatever is newer may take back what an older row says. Of the rows that do not
 * name the thing only the takings-back are made of the text, each a record with no other inside; a brace in one of its words, and the row
 * is read whole.
 */
function saidOf(row: { readonly text: string }, id: string): Entry[] {
  return row.text.includes(id) ? entriesOf(row).filter((entry) => entry.kind === 'withdrawn' || mentions(entry, id)) : takingsBackIn(row);
}

function takingsBackIn(row: { readonly text: string }): Entry[] {
  const { text } = row;
  const found: Entry[] = [];
  for (let at = text.indexOf(TAKING_BACK); at >= 0; at = text.indexOf(TAKING_BACK, at + TAKING_BACK.length)) {
    try {
      found.push(JSON.parse(text.slice(text.lastIndexOf('{', at), text.indexOf('}', at) + 1)) as Entry);
    } catch {
      return entriesOf(row).filter(({ kind }) => kind === 'withdrawn');
    }
  }
  return found;
}

/** Pages that are looked through for what was taken back: some thousands of entries. */
const PAGES_LATELY = 8;

/** Takings-back in force among the newest entries, newest first. */
export async function readTakingsBack(db: MouldkeepDb): Promise<Entry[]> {
  const rows = [...(await db.pages.orderBy('last').reverse().limit(PAGES_LATELY).toArray()), ...(await db.tail.toArray())];
  const takings = inOrder(rows.flatMap(takingsBackIn));
  const undone = takenBackBy(takings);
  return takings.filter(({ id, step }) => !undone.has(step ?? id)).reverse();
}

/** The newest entries in force that name a thing, at least `wanted` of them where there are as many. Throws the signal's reason. */
export async function readHistory(db: MouldkeepDb, id: string, wanted: number, signal?: AbortSignal): Promise<History> {
  const found: Entry[] = [];
  for (const row of await db.tail.toArray()) found.push(...saidOf(row, id));
  // Newest first: journals that were joined overlap in time.
  const keys = (await db.pages.orderBy('last').primaryKeys()).reverse();
  let next = 0;
  let unread = await lastBefore(db);
  // An unread page may hold entries up to its last one, and takings-back of older ones; what is newer than that is certain.
  const certain = () => inForce(inOrder(found)).filter((entry) => entry.id > unread);
  const isEnough = () => found.length >= wanted && certain().length >= wanted;
  // A thing is named by its first entry, and nothing older can be about it.
  const isMore = () => next < keys.length && unread >= id;
  while (isMore() && !isEnough()) {
    signal?.throwIfAborted();
    const rows = (await db.pages.bulkGet(keys.slice(next, next + PAGES_AT_ONCE))).filter((row) => row !== undefined);
    for (const row of rows) found.push(...saidOf(row, id));
    next += PAGES_AT_ONCE;
    unread = next < keys.length ? await lastBefore(db, rows.at(-1)?.last) : '';
  }
  return { entries: certain().reverse(), isMore: isMore() };
}
