import type { EntryId } from '../../src/domain/brand.ts';
import type { Entry } from '../../src/domain/entry.ts';
import { sha } from './builders.ts';
import { aKeeper, mustBe, plainRows } from './database.ts';
import { aJournal } from './entry-builders.ts';

export const STORES = ['tail', 'pages', 'shelf', 'pictures', 'thumbs', 'meta'] as const;
/** Every row of a saved database. Bytes are lists of numbers. */
export type SavedDatabase = { readonly [S in (typeof STORES)[number]]: readonly Record<string, unknown>[] };

/** What the saved database shows of itself, known apart from its rows. */
export const SAVED = { wax: 'saved wax', waxes: 106, last: 'the newest', picture: [82, 73, 70, 70], thumb: [255, 216] } as const;

/**
 * Writes a small studio as this version keeps it: joined and sealed pages, a tail with a taking-back, pictures, what is recalled. Rows of
 * every table come back as plain data. Only for the version being developed: what a released version wrote is never made again.
 */
export async function makeSavedDatabase(name: string): Promise<SavedDatabase> {
  const keeper = await aKeeper(name);
  mustBe(await keeper.join(aJournal()));
  for (let i = 0; i < SAVED.waxes - 1; i++) mustBe(await keeper.act((_, desk) => [wax(desk.entry(), SAVED.wax)]));
  await keeper.seal();
  const acted = mustBe(await keeper.act((_, desk) => [wax(desk.entry(), 'taken back'), wax(desk.entry(), 'with it')]));
  mustBe(await keeper.act((_, desk) => [{ ...desk.entry(), kind: 'withdrawn', entry: (acted[0] as Entry).id as EntryId }]));
  mustBe(await keeper.act((_, desk) => [wax(desk.entry(), SAVED.last)]));
  const bytes = Uint8Array.from(SAVED.picture).buffer;
  await keeper.keepPictures([
    { sha: sha(1), type: 'image/webp', bytes, thumb: { type: 'image/jpeg', bytes: Uint8Array.from(SAVED.thumb).buffer } },
  ]);
  await keeper.remember('fronts', { cabinets: 1 });
  keeper.close();
  const saved = await Promise.all(STORES.map(async (store) => [store, (await plainRows<object>(name, store)).map(withoutBuffers)]));
  return Object.fromEntries(saved) as SavedDatabase;
}

function wax(common: ReturnType<Parameters<Parameters<Awaited<ReturnType<typeof aKeeper>>['act']>[0]>[1]['entry']>, name: string): Entry {
  return { ...common, kind: 'recorded', noun: 'wax', fields: { name } };
}

function withoutBuffers(row: object): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(row).map(([key, value]) => [key, value instanceof ArrayBuffer ? [...new Uint8Array(value)] : value]),
  );
}

/** Lays a saved database out again with nothing but IndexedDB. Dexie keeps version 1 as the browser's version 10. */
export function layOut(name: string, version: number, saved: SavedDatabase, schema: Readonly<Record<string, string>>): Promise<void> {
  return new Promise((resolve, reject) => {
    const open = indexedDB.open(name, version * 10);
    open.onerror = () => reject(open.error);
    open.onupgradeneeded = () => {
      for (const store of STORES) {
        const [keyPath = '', ...indexes] = (schema[store] ?? '').split(', ');
        const made = open.result.createObjectStore(store, { keyPath });
        for (const index of indexes) made.createIndex(index, index);
        for (const row of saved[store])
          made.put(Array.isArray(row['bytes']) ? { ...row, bytes: Uint8Array.from(row['bytes']).buffer } : row);
      }
    };
    open.onsuccess = () => {
      open.result.close();
      resolve();
    };
  });
}
