import type { EntryId } from '../domain/brand.ts';
import { NOUNS } from '../domain/noun.ts';
import { contentsOf, FOLD_VERSION, type Shelf, type Thing, type Things } from '../domain/shelf.ts';
import type { MouldkeepDb, ShelfRow } from './schema.ts';

/** What the stored shelf sums: kept beside its rows and written with them in one transaction. */
export interface ShelfMark {
  readonly last: EntryId | '';
  readonly entries: number;
  readonly foldVersion: number;
  /** How often the shelf was summed afresh. A tab that knows another number has missed older entries, and reads again. */
  readonly folds: number;
}

const STUDIO = 'studio';

/** Things written as text in one slice: those of a noun may be thousands. */
const SLICE = 500;

function* textOf(things: Iterable<Thing>): Generator<void, string> {
  const all = [...things];
  const parts: string[] = [];
  for (let i = 0; i < all.length; i += SLICE) {
    parts.push(JSON.stringify(all.slice(i, i + SLICE)).slice(1, -1));
    yield;
  }
  return `[${parts.join(',')}]`;
}

/** Rows of `shelf` that differ from those of `stored` (all, when there is none). */
export function* rowsInSlices(shelf: Shelf, stored?: Shelf): Generator<void, ShelfRow[]> {
  const rows: ShelfRow[] = [];
  for (const noun of NOUNS) {
    if (stored && stored.things[noun] === shelf.things[noun]) continue;
    rows.push({ noun, text: yield* textOf((shelf.things[noun] as ReadonlyMap<string, Thing>).values()) });
  }
  if (stored?.studio !== shelf.studio) rows.push({ noun: STUDIO, text: JSON.stringify(shelf.studio) });
  return rows;
}

function thingsIn(text: string): Map<string, Thing> {
  const things = new Map<string, Thing>();
  for (const thing of JSON.parse(text) as Thing[]) things.set(thing.id, thing);
  return things;
}

export function thingsOf(rows: readonly ShelfRow[]): Things {
  const byNoun = new Map(rows.map((row) => [row.noun, row.text]));
  return Object.fromEntries(NOUNS.map((noun) => [noun, thingsIn(byNoun.get(noun) ?? '[]')])) as unknown as Things;
}

export function shelfOf(rows: readonly ShelfRow[], mark: ShelfMark): Shelf {
  const things = thingsOf(rows);
  const studio = rows.find(({ noun }) => noun === STUDIO)?.text ?? '{}';
  return { last: mark.last, entries: mark.entries, studio: JSON.parse(studio) as Shelf['studio'], things, contents: contentsOf(things) };
}

export const EMPTY_MARK: ShelfMark = { last: '', entries: 0, foldVersion: FOLD_VERSION, folds: 0 };

/** Inside the caller's transaction. `rows` are the shelf's, from `rowsInSlices`. */
export async function writeShelf(db: MouldkeepDb, shelf: Shelf, folds: number, rows: readonly ShelfRow[]): Promise<void> {
  await db.shelf.bulkPut([...rows]);
  const mark: ShelfMark = { last: shelf.last, entries: shelf.entries, foldVersion: FOLD_VERSION, folds };
  await db.meta.put({ key: 'shelf', value: mark });
}

export async function readMark(db: MouldkeepDb): Promise<ShelfMark> {
  const row = await db.meta.get('shelf');
  return (row?.value as ShelfMark | undefined) ?? EMPTY_MARK;
}
