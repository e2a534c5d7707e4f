import { describe, expect, it } from 'vitest';
import { apply } from '../../src/domain/apply.ts';
import { isToSpare, spare } from '../../src/domain/bench.ts';
import type { PlaceId, ThingId } from '../../src/domain/brand.ts';
import { foldAll } from '../../src/domain/fold.ts';
import { aCorrected, aMoved, aRecorded } from '../support/entry-builders.ts';
import { plainShelf } from '../support/plain-shelf.ts';

const drawers = Array.from({ length: 600 }, (_, i) => aRecorded('place', { name: `Drawer ${i}` }));
const moulds = Array.from({ length: 600 }, (_, i) =>
  aRecorded('mould', { name: `Mould ${i}` }, { at: drawers[i]?.id as string as PlaceId }),
);
const journal = [...drawers, ...moulds];
const first = moulds[0] as (typeof moulds)[number];
const changes = [
  aCorrected(first, { name: 'Renamed' }),
  aMoved({ things: [first.id as string as ThingId], to: drawers[7]?.id as string as PlaceId }),
];

describe('copies of big maps made in advance', () => {
  it('change no sum, neither the first nor the second made on the same shelf, nor the shelf itself', () => {
    const shelf = foldAll(journal);
    expect(isToSpare(shelf)).toBe(true);
    spare(shelf);
    expect(isToSpare(shelf)).toBe(false);
    const sums = [apply(shelf, changes), apply(shelf, changes.slice(0, 1)), apply(shelf, changes)];
    const plain = foldAll(journal);
    const wanted = [apply(plain, changes), apply(plain, changes.slice(0, 1)), apply(plain, changes)];
    expect(sums.map(plainShelf)).toEqual(wanted.map(plainShelf));
    expect(plainShelf(shelf)).toEqual(plainShelf(plain));
    expect(new Set(sums.map(({ things }) => things.mould)).size).toBe(3);
  });

  it('are not made of what is small', () => {
    expect(isToSpare(foldAll(journal.slice(0, 20)))).toBe(false);
  });
});
