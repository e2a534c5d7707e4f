import 'fake-indexeddb/auto';
import { IDBObjectStore } from 'fake-indexeddb';
import { afterEach, describe, expect, it, vi } from 'vitest';
import type { Sha256 } from '../../src/domain/brand.ts';
import type { Entry } from '../../src/domain/entry.ts';
import { isProblem } from '../../src/domain/problem.ts';
import { TAIL_FULL } from '../../src/store/seal.ts';
import { sha } from '../support/builders.ts';
import { aKeeper, freshName, mustBe, plainRows } from '../support/database.ts';
import { newWax } from '../support/plans.ts';

afterEach(() => vi.restoreAllMocks());

function bytes(...values: number[]): ArrayBuffer {
  return Uint8Array.from(values).buffer;
}
const picture = { sha: sha(5), type: 'image/webp', bytes: bytes(1, 2, 3, 4), thumb: { type: 'image/jpeg', bytes: bytes(9, 8) } };

describe('pictures', () => {
  it('are kept once, and read back whole and small after opening again', async () => {
    const name = freshName();
    const keeper = await aKeeper(name);
    expect(await keeper.keepPictures([picture])).toBeUndefined();
    expect(await keeper.keepPictures([picture])).toBeUndefined();
    keeper.close();
    const again = await aKeeper(name);
    const [whole, thumb] = [await again.picture(sha(5), 'whole'), await again.picture(sha(5), 'thumb')];
    expect([whole?.type, thumb?.type]).toEqual(['image/webp', 'image/jpeg']);
    expect([...new Uint8Array((await whole?.arrayBuffer()) as ArrayBuffer)]).toEqual([1, 2, 3, 4]);
    expect([...new Uint8Array((await thumb?.arrayBuffer()) as ArrayBuffer)]).toEqual([9, 8]);
    expect(await again.picture(sha(6), 'whole')).toBeUndefined();
    expect(await plainRows(name, 'pictures')).toHaveLength(1);
    again.close();
  });

  it('are thrown away only when no entry names them, in the tail or in a page, taken back or not', async () => {
    const name = freshName();
    const keeper = await aKeeper(name);
    const shas = [sha(5), sha(6), sha(7)];
    await keeper.keepPictures(shas.map((each) => ({ ...picture, sha: each })));
    const named = (each: Sha256) =>
      keeper.act((_, desk) => [{ ...desk.entry(), kind: 'recorded', noun: 'wax', fields: { name: 'violet' }, pictures: [each] }]);
    const sealed = mustBe(await named(sha(5)));
    mustBe(await keeper.act((_, desk) => [{ ...desk.entry(), kind: 'withdrawn', entry: (sealed[0] as Entry).id }]));
    mustBe(await keeper.act(newWax('green', TAIL_FULL)));
    await keeper.seal();
    mustBe(await named(sha(6)));
    expect(await plainRows(name, 'pages')).toHaveLength(1);
    expect(await keeper.dropPictures(shas)).toBeUndefined();
    expect((await plainRows<{ sha: string }>(name, 'pictures')).map((row) => row.sha)).toEqual([sha(5), sha(6)].sort());
    expect(await plainRows(name, 'thumbs')).toHaveLength(2);
    keeper.close();
  });

  it('say so, and keep neither picture nor thumbnail, when there is no room', async () => {
    const name = freshName();
    const keeper = await aKeeper(name);
    const put = IDBObjectStore.prototype.put;
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, ...given) {
      if (this.name === 'thumbs') throw new DOMException('full', 'QuotaExceededError');
      return put.apply(this, given);
    } as typeof put);
    const failed = await keeper.keepPictures([picture]);
    expect(isProblem(failed) && failed.says).toMatch(/no room left/);
    vi.restoreAllMocks();
    expect(await plainRows(name, 'pictures')).toEqual([]);
    keeper.close();
  });
});
