import type { EntryId } from '../domain/brand.ts';
import { NOUNS, type Noun } from '../domain/noun.ts';
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

/** Things of one block: written in one slice, since those of a noun may be thousands. */
const BLOCK = 500;

const WIDE = /[\u0100-\uffff]/g;

/** JSON in one byte a letter: a single dash or Greek letter would make the whole row twice as long to read. */
function narrow(json: string): string {
  return json.replace(WIDE, (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, '0')}`);
}

/** Values of so many things by field, null where a thing has none. A field that none of them has is left out, and the noun, which all share. */
type Block = { readonly [field: string]: readonly unknown[] } & { readonly id: readonly string[] };

function blockOf(things: readonly Thing[]): Block {
  const fields = new Set<string>();
  for (const thing of things) for (const field in thing) if (thing[field as keyof Thing] !== undefined) fields.add(field);
  fields.delete('noun');
  return Object.fromEntries(
    [...fields].map((field) => [field, things.map((thing) => thing[field as keyof Thing] ?? null)]),
  ) as unknown as Block;
}

/** Fields in the outer place and things in the inner: names are written and read once a block, and it is a third shorter than things one by one. */
function* textOf(things: Iterable<Thing>): Generator<void, string> {
  const all = [...things];
  const blocks: string[] = [];
  for (let i = 0; i < all.length; i += BLOCK) {
    blocks.push(narrow(JSON.stringify(blockOf(all.slice(i, i + BLOCK)))));
    yield;
  }
  return `[${blocks.join(',')}]`;
}

function thingsIn(noun: Noun, text: string): Map<string, Thing> {
  const things = new Map<string, Thing>();
  const blocks = JSON.parse(text) as Block[];
  const form = { noun, ...Object.fromEntries(blocks.flatMap((block) => Object.keys(block)).map((field) => [field, undefined])) };
  for (const block of blocks) {
    const read = block.id.map(() => ({ ...form }) as Record<string, unknown>);
    for (const field in block) {
      const values = block[field] as readonly unknown[];
      for (let i = 0; i < read.length; i++) if (values[i] !== null) (read[i] as Record<string, unknown>)[field] = values[i];
    }
    for (let i = 0; i < read.length; i++) things.set(block.id[i] as string, read[i] as unknown as Thing);
  }
  return things;
}

/** Rows of `shelf` that differ from those of `stored` (all, when there is none). */
export function* rowsInSlices(shelf: Shelf, stored?: Shelf): Generator<void, ShelfRow[]> {
  const rows: ShelfRow[] = [];
  for (const noun of NOUNS) {
    if (stored && stored.things[noun] === shelf.things[noun]) continue;
    rows.push({ noun, text: yield* textOf((shelf.things[noun] as ReadonlyMap<string, Thing>).values()) });
  }
  if (stored?.studio !== shelf.studio) rows.push({ noun: STUDIO, text: narrow(JSON.stringify(shelf.studio)) });
  return rows;
}

export function thingsOf(rows: readonly ShelfRow[]): Things {
  const byNoun = new Map(rows.map((row) => [row.noun, row.text]));
  return Object.fromEntries(NOUNS.map((noun) => [noun, thingsIn(noun, byNoun.get(noun) ?? '[]')])) as unknown as Things;
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
