import 'fake-indexeddb/auto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, it } from 'vitest';
import { foldAll } from '../../src/domain/fold.ts';
import { CODE_VERSION, MouldkeepDb } from '../../src/store/schema.ts';
import { sha } from '../support/builders.ts';
import { aKeeper, freshName, mustBe, plainRows } from '../support/database.ts';
import { aJournal } from '../support/entry-builders.ts';
import { layOut, makeSavedDatabase, SAVED, type SavedDatabase, STORES } from '../support/make-database-fixture.ts';
import { plainShelf, plainSum } from '../support/plain-shelf.ts';

const fixture = (file: string) => fileURLToPath(new URL(`../fixtures/${file}`, import.meta.url));
const readFixture = <T>(file: string) => JSON.parse(readFileSync(fixture(file), 'utf8')) as T;
type Schema = Readonly<Record<string, string>>;

/** Each version Dexie was told of, with its stores as they were written down. */
function versions(): { version: number; stores: Schema }[] {
  const { _versions } = new MouldkeepDb('never opened') as unknown as { _versions: { _cfg: { version: number; storesSource: Schema } }[] };
  return _versions.map(({ _cfg }) => ({ version: _cfg.version, stores: _cfg.storesSource }));
}

// With MAKE_FIXTURE=1, writes the fixtures of a version that is not released yet. What a released version wrote stays as it is.
beforeAll(async () => {
  if (process.env['MAKE_FIXTURE'] !== '1') return;
  const newest = versions().at(-1);
  writeFileSync(fixture(`schema-v${newest?.version}.json`), `${JSON.stringify(newest?.stores, null, 2)}\n`);
  writeFileSync(fixture(`database-v${newest?.version}.json`), `${JSON.stringify(await makeSavedDatabase(freshName()), null, 1)}\n`);
});

describe('the schema', () => {
  it.each(versions())('of version $version is as it was when it was saved: a change needs a new version', ({ version, stores }) => {
    expect(stores).toEqual(readFixture(`schema-v${version}.json`));
  });

  it('has a saved database for every version, and code that may write to the newest', () => {
    expect(versions().map(({ version }) => existsSync(fixture(`database-v${version}.json`)))).not.toContain(false);
    expect(CODE_VERSION).toBeLessThanOrEqual(versions().length);
  });

  it('is what a browser ends up with', async () => {
    const name = freshName();
    (await aKeeper(name)).close();
    const open = indexedDB.open(name);
    const db = await new Promise<IDBDatabase>((resolve) => {
      open.onsuccess = () => resolve(open.result);
    });
    expect(db.version).toBe(10);
    const found = [...db.objectStoreNames].map((store) => {
      const { keyPath, indexNames } = db.transaction(store).objectStore(store);
      return [store, [keyPath, ...indexNames].join(', ')];
    });
    expect(Object.fromEntries(found)).toEqual(readFixture('schema-v1.json'));
    db.close();
  });
});

describe('a database saved by version 1', () => {
  async function saved(): Promise<string> {
    const name = freshName();
    await layOut(name, 1, readFixture<SavedDatabase>('database-v1.json'), readFixture<Schema>('schema-v1.json'));
    return name;
  }

  it('has rows in every table, sealed pages and a tail', () => {
    const rows = readFixture<SavedDatabase>('database-v1.json');
    for (const store of STORES) expect(rows[store].length, store).toBeGreaterThan(0);
    expect(rows.pages.length).toBeGreaterThan(1);
    expect(JSON.stringify(rows.tail)).toContain('withdrawn');
  });

  it('opens, and everything in it is read', async () => {
    const name = await saved();
    const keeper = await aKeeper(name);
    const shelf = keeper.shelf();
    const names = [...shelf.things.wax.values()].map((wax) => wax.name);
    expect(names.filter((wax) => wax === SAVED.wax)).toHaveLength(SAVED.waxes - 1);
    expect(names.at(-1)).toBe(SAVED.last);
    expect(names).not.toContain('taken back');
    expect(names).not.toContain('with it');
    expect([...shelf.things.design.values()][0]?.name).toBe('Dolphin toggle, leaping');
    const [mould] = [...shelf.things.mould.values()];
    expect(mould).toMatchObject({ shots: 11, good: 39, rejects: 5, grade: 'watch', looks: [sha(1)] });
    const bytes = async (size: 'whole' | 'thumb') => [
      ...new Uint8Array((await (await keeper.picture(sha(1), size))?.arrayBuffer()) as ArrayBuffer),
    ];
    expect(await bytes('whole')).toEqual(SAVED.picture);
    expect(await bytes('thumb')).toEqual(SAVED.thumb);
    expect(await keeper.recall('fronts')).toEqual({ cabinets: 1 });
    const journal = await keeper.journal();
    expect(journal).toHaveLength(aJournal().length + SAVED.waxes - 1 + 4);
    expect(plainShelf(shelf)).toEqual(plainShelf(foldAll(journal)));
    keeper.close();
  });

  it('is gone on with', async () => {
    const name = await saved();
    const keeper = await aKeeper(name);
    const before = plainSum(keeper.shelf());
    const acted = mustBe(await keeper.act((_, desk) => [{ ...desk.entry(), kind: 'recorded', noun: 'want', fields: { pieces: 3 } }]));
    mustBe(await keeper.act((_, desk) => [{ ...desk.entry(), kind: 'withdrawn', entry: acted[0]?.id as never }]));
    expect(plainSum(keeper.shelf())).toEqual(before);
    expect(await keeper.refold()).toBeUndefined();
    expect(plainSum(keeper.shelf())).toEqual(before);
    expect(await plainRows(name, 'tail')).toEqual([]);
    keeper.close();
  });
});
