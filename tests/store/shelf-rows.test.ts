import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foldAll } from '../../src/domain/fold.ts';
import type { Shelf } from '../../src/domain/shelf.ts';
import { through } from '../../src/domain/slices.ts';
import { EMPTY_MARK, rowsInSlices, shelfOf } from '../../src/store/shelf-rows.ts';
import { aRecorded } from '../support/entry-builders.ts';
import { histories } from '../support/histories.ts';
import { plainShelf } from '../support/plain-shelf.ts';

const rowsOf = (shelf: Shelf) => through(rowsInSlices(shelf));
const readBack = (shelf: Shelf) => shelfOf(rowsOf(shelf), { ...EMPTY_MARK, last: shelf.last, entries: shelf.entries });
/** What is filled in, as it is written down. */
const plain = (shelf: Shelf) => JSON.parse(JSON.stringify(plainShelf(shelf))) as unknown;

describe('the rows of a shelf', () => {
  it('give back any shelf, in its order', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(histories(), (journal) => {
        const shelf = foldAll(journal);
        expect(plain(readBack(shelf))).toEqual(plain(shelf));
      }),
    );
  });

  it('give back more things than a block holds, with a field that only some blocks have', () => {
    const waxes = Array.from({ length: 1203 }, (_, i) => aRecorded('wax', { name: `Wax ${i}`, ...(i > 900 ? { note: 'late' } : {}) }));
    const shelf = foldAll(waxes);
    const read = readBack(shelf);
    expect([...read.things.wax.keys()]).toEqual(waxes.map(({ id }) => id));
    expect(plain(read)).toEqual(plain(shelf));
    expect(new Set([...read.things.wax.values()].map((wax) => Object.keys(wax).join())).size).toBe(1);
  });

  it('are of one byte a letter, whatever is written in them', () => {
    const name = 'Ζεύς – “5 mm”, 蠟, 🦀, \ud800, "\\u0041", La Tène';
    const shelf = foldAll([aRecorded('wax', { name, note: name }), aRecorded('place', { name })]);
    for (const { text } of rowsOf(shelf)) expect(text).not.toMatch(/[\u0100-\uffff]/);
    expect(plain(readBack(shelf))).toEqual(plain(shelf));
  });

  it('cannot be read when they are damaged', () => {
    const rows = rowsOf(foldAll([aRecorded('wax', { name: 'Green' })]));
    for (const text of ['', '[{"id":', '[{"name":["Green"]}]', '{}', '[null]'])
      expect(() => shelfOf([...rows.filter(({ noun }) => noun !== 'wax'), { noun: 'wax', text }], EMPTY_MARK), text).toThrow();
  });
});
