import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Millimetres } from '../../src/domain/brand.ts';
import type { Entry, Recorded } from '../../src/domain/entry.ts';
import { foldAll, foldOn } from '../../src/domain/fold.ts';
import { isLivingMould } from '../../src/domain/last-of-kind.ts';
import type { Mould, Shelf } from '../../src/domain/shelf.ts';
import { sizeBasis } from '../../src/domain/size/basis.ts';
import { smallerThanLabel } from '../../src/domain/size/expected.ts';
import { learn, learnedFrom } from '../../src/domain/size/learn.ts';
import { castingSteps } from '../../src/domain/size/step.ts';
import { smallCastings } from '../../src/views/small-castings.ts';
import { nextId } from '../support/builders.ts';
import { aCast, aCorrected, aMeasured, anInjected, anInspected, aRecorded, aRetired, aWithdrawn } from '../support/entry-builders.ts';

const mm = (length: number) => length as Millimetres;
/** An entry's id as that of the thing it recorded. */
const the = (entry: { readonly id: string }) => entry.id as never;
const sizes = [
  { label: 'small', mm: mm(20) },
  { label: 'large', mm: mm(21) },
];
const drawer = aRecorded('place', { name: 'Drawer', kind: 'drawer' });
const wax = aRecorded('wax', { name: 'Green' });
const owl = aRecorded('design', { name: 'Owl', metals: ['bronze', 'pewter'], sizes });
const original = aRecorded('master', { kind: 'original', lengthMm: mm(21.4) });
const moulds = Array.from({ length: 12 }, (_, i) =>
  aRecorded('mould', { master: the(original), design: the(owl), size: i % 5 === 0 ? 'small' : 'large', rubber: 'natural', wax: the(wax) }),
);
const [first, second] = moulds as [Recorded<'mould'>, Recorded<'mould'>];
const start = [drawer, wax, owl, original, ...moulds] as readonly Entry[];
const looked = (shelf: Shelf) => {
  const slices = smallCastings(shelf);
  let turns = 0;
  for (;;) {
    const { done, value } = slices.next();
    turns += 1;
    if (done) return { turns, found: value };
  }
};
const run = (over: object = {}) =>
  anInjected({ mould: the(first), wax: the(wax), to: the(drawer), good: 4, shots: 4, rejects: {}, ...over });

describe('moulds whose castings come out small', () => {
  it('are found in turns the first time, and answered at once after a run, a move or a look', () => {
    let shelf = foldAll(start);
    const { turns, found } = looked(shelf);
    expect(turns).toBe(2);
    expect(found.size).toBe(9);
    for (const entry of [run(), run(), anInspected({ of: the(second), grade: 'worn' })] as readonly Entry[]) {
      shelf = foldOn(shelf, [entry]) as Shelf;
      expect(looked(shelf)).toEqual({ turns: 1, found });
      expect(looked(shelf).found).toBe(found);
    }
    // One that is retired has no mark, and the others need not be reckoned again.
    shelf = foldOn(shelf, [aRetired({ of: the(second), reason: 'torn' })]) as Shelf;
    const without = looked(shelf);
    expect(without.turns).toBe(1);
    expect([...without.found].sort()).toEqual([...found].filter((id) => id !== second.id).sort());
  });

  it('are reckoned again when a reading, a size or the lineage changes', () => {
    const shelf = foldAll(start);
    const before = looked(shelf).found;
    const longer = foldOn(shelf, [aCorrected(original, { lengthMm: mm(24) })]) as Shelf;
    expect(looked(longer)).toMatchObject({ turns: expect.not.toSatisfy((turns: number) => turns === 1), found: new Set() });
    expect(looked(shelf).found).toEqual(before);
  });
});

it('what is kept is what reckoning afresh gives, whatever happens to the studio', () => {
  const KINDS = [
    'run',
    'other wax',
    'length',
    'reading',
    'pile reading',
    'master of a pile',
    'rubber',
    'sizes',
    'cast',
    'back',
    'retire',
  ] as const;
  const steps = fc.array(
    fc.record({ kind: fc.constantFrom(...KINDS), which: fc.nat(11), length: fc.double({ min: 18, max: 24, noNaN: true }) }),
    {
      minLength: 1,
      maxLength: 12,
    },
  );
  fc.assert(
    fc.property(steps, (all) => {
      const first = run();
      const journal: Entry[] = [...start, first];
      const piles: Entry[] = [first];
      let shelf = foldAll(journal);
      for (const { kind, which, length } of all) {
        const mould = moulds[which] as Recorded<'mould'>;
        const pile = piles[which % Math.min(2, piles.length)] as Entry;
        const entry = ((): Entry | undefined => {
          switch (kind) {
            case 'run':
              return run({ mould: the(mould) });
            case 'other wax':
              return run({ mould: the(mould), wax: nextId() });
            case 'length':
              return aCorrected(original, { lengthMm: mm(length) });
            case 'reading':
              return aMeasured({ of: the(original), sizes: [{ name: 'length', mm: mm(length) }] });
            case 'pile reading':
              return aMeasured({ of: the(pile), sizes: [{ name: 'length', mm: mm(length * 0.97) }] });
            case 'master of a pile':
              return aRecorded('master', { kind: 'dressed wax', from: [pile.id] });
            case 'rubber':
              return aCorrected(mould, { rubber: which % 2 ? 'tin silicone' : 'natural', wax: null });
            case 'sizes':
              return aCorrected(owl, {
                sizes: [
                  { label: 'large', mm: mm(length) },
                  { label: 'small', mm: mm(19) },
                ],
              });
            case 'cast':
              return aCast({ mould: the(mould), metal: 'bronze', sound: 3, scrap: {}, to: the(drawer) });
            case 'back':
              return journal.length > start.length + 1 ? aWithdrawn(journal.at(-1) as Entry) : undefined;
            case 'retire':
              return aRetired({ of: the(mould), reason: 'torn' });
          }
        })();
        if (!entry) continue;
        journal.push(entry);
        if (entry.kind === 'injected' || entry.kind === 'cast') piles.push(entry);
        shelf = foldOn(shelf, [entry]) ?? foldAll(journal);
        const kept = looked(shelf).found;
        const [known, afresh] = [learnedFrom(shelf), learn(shelf)];
        for (const each of shelf.things.mould.values() as Iterable<Mould>) {
          const line = castingSteps(shelf, each, 'bronze');
          expect(known.over(line)).toEqual(afresh.over(line));
          expect(kept.has(each.id)).toBe(isLivingMould(each) && smallerThanLabel(shelf, each) !== undefined);
        }
        expect(sizeBasis(shelf)).toBe(sizeBasis(shelf));
      }
    }),
    { numRuns: 30 },
  );
});
