import type { EntryId } from '../domain/brand.ts';
import type { Entry } from '../domain/entry.ts';
import { inOrder } from '../domain/fold.ts';
import { parseEntry } from '../domain/parse-entry.ts';
import { isProblem } from '../domain/problem.ts';
import { GENERATION, type MouldkeepDb, RESCUED } from './schema.ts';
import { joinJournal } from './seal.ts';

/** Texts by name in a place that stays when the browser throws the database away. Any of these may reject. */
export interface Texts {
  keys(): Promise<readonly string[]>;
  read(key: string): Promise<string | undefined>;
  write(key: string, text: string): Promise<void>;
  drop(key: string): Promise<void>;
}

/** What was put back from the second copy. */
export interface Rescued {
  readonly entries: number;
  /** The newest of them. */
  readonly last: EntryId | '';
  /** Entries and texts that could not be read. */
  readonly unread: number;
}

/** Tabs write one after another: each drops what it does not find in the database. */
function inTurnOfTabs(db: MouldkeepDb, job: () => Promise<void>): Promise<void> {
  const locks = typeof navigator === 'undefined' ? undefined : navigator.locks;
  return locks ? (locks.request(`mouldkeep-copy:${db.name}`, job) as Promise<void>) : job();
}

/**
 * What the last copying had no more use for. It goes only with the next: a browser that is killed has dropped a text before the one in its
 * place was on the disk.
 */
const superfluous = new WeakMap<MouldkeepDb, ReadonlySet<string>>();

/** Ids and last entries of the pages that the last copying saw, and of which generation, within which pages are only added: asking for the last entries is a step for each. */
const seen = new WeakMap<MouldkeepDb, { readonly generation: string; readonly lasts: ReadonlyMap<string, string> }>();

/** Ids of the pages, and the last entry of each. Inside the caller's transaction. */
async function pagesOfCopy(db: MouldkeepDb, generation: string): Promise<ReadonlyMap<string, string>> {
  const pages = db.pages.orderBy('last');
  const ids = await pages.primaryKeys();
  const before = seen.get(db);
  if (before?.generation === generation && ids.length === before.lasts.size) return before.lasts;
  const ends = await pages.keys();
  const lasts = new Map(ids.map((id, i) => [id, String(ends[i])]));
  seen.set(db, { generation, lasts });
  return lasts;
}

/**
 * Brings the copy of the journal up to date: pages that it lacks, and the tail as one text. What is new is written before what it replaces is
 * dropped, so that the browser may be killed at any moment; only a studio that was put in another's place (a later generation) drops that first,
 * since the two must never be read as one. `rest` is waited for after each page: the first copy of a big studio is hundreds of them.
 */
export function writeCopy(db: MouldkeepDb, texts: Texts, rest?: () => Promise<void>): Promise<void> {
  return inTurnOfTabs(db, async () => {
    const { isBegun, generation, pages, tail } = await db.transaction('r', db.pages, db.tail, db.meta, async () => {
      const [guard, times] = await db.meta.bulkGet(['guard', GENERATION]);
      const generation = `${times?.value ?? 0}-`;
      return { isBegun: guard !== undefined, generation, pages: await pagesOfCopy(db, generation), tail: await db.tail.toArray() };
    });
    // Thrown away under our hands, and opened again empty: the copy is what is left.
    if (!isBegun) return;
    const there = new Set(await texts.keys());
    const drop = async (isToGo: (key: string) => boolean) => {
      for (const key of [...there].filter(isToGo)) {
        await texts.drop(key);
        there.delete(key);
      }
    };
    await drop((key) => !key.startsWith(generation));
    const wanted = new Set<string>();
    const newest = tail.at(-1);
    if (newest) {
      const key = `${generation}tail-${newest.id}-${tail.length}`;
      wanted.add(key);
      if (!there.has(key)) await texts.write(key, `[${tail.map(({ text }) => text.slice(1, -1)).join(',')}]`);
    }
    for (const [id, last] of pages) {
      const key = `${generation}page-${id}-${last}`;
      wanted.add(key);
      if (there.has(key)) continue;
      const page = await db.pages.get(id);
      if (page) await texts.write(key, page.text);
      await rest?.();
    }
    const [before, now] = [superfluous.get(db), new Set([...there].filter((key) => !wanted.has(key)))];
    superfluous.set(db, now);
    await drop((key) => now.has(key) && before?.has(key) === true);
  });
}

/** Entries of one text of the copy, and how much of it could not be read. */
function entriesIn(text: string | undefined): { readonly read: Entry[]; readonly unread: number } {
  try {
    const parsed = (JSON.parse(text ?? '') as unknown[]).map((raw) => parseEntry(raw));
    const read = parsed.filter((entry): entry is Entry => !isProblem(entry));
    return { read, unread: parsed.length - read.length };
  } catch {
    return { read: [], unread: 1 };
  }
}

/** What a copy still holds of the journal. */
export interface Copied {
  readonly entries: readonly Entry[];
  /** Entries and texts that could not be read. */
  readonly unread: number;
  readonly generation: number;
}

/** Reads the copy of the studio that was here last, in order; undefined where there is none. Needs no database. */
export async function readCopy(texts: Texts): Promise<Copied | undefined> {
  const all = await texts.keys();
  const generation = Math.max(...all.map(generationOf));
  const keys = all.filter((key) => generationOf(key) === generation);
  if (keys.length === 0) return undefined;
  const entries: Entry[] = [];
  let unread = 0;
  for (const key of keys) {
    const part = entriesIn(await texts.read(key));
    entries.push(...part.read);
    unread += part.unread;
  }
  return { entries: inOrder(entries), unread, generation };
}

/**
 * Puts the journal back into a database that is new although a copy of it lies beside: the browser threw away the one that was here, as Chromium does
 * with one it finds damaged. Nothing where there is no copy. Pictures are not in it.
 */
export async function rescue(db: MouldkeepDb, texts: Texts): Promise<void> {
  const copied = await readCopy(texts);
  if (!copied) return;
  const { entries, unread, generation } = copied;
  await db.meta.put({ key: GENERATION, value: generation });
  await joinJournal(db, entries);
  const value: Rescued = { entries: entries.length, last: entries.at(-1)?.id ?? '', unread };
  await db.meta.put({ key: `recall:${RESCUED}`, value });
}

function generationOf(key: string): number {
  return Number.parseInt(key, 10) || 0;
}
