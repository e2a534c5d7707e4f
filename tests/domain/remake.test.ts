import { describe, expect, it } from 'vitest';
import { chanceOfMissing, daysToCastings, shotsFor, startBy, wantedKinds } from '../../src/domain/remake.ts';
import type { Thing, Want } from '../../src/domain/shelf.ts';
import { aCasting, aDesign, aMould, anInjectedWax, aShelf, day, nextId } from '../support/builders.ts';

const design = aDesign({ keep: 10, route: 'lost wax' });
const aWant = (over: Partial<Want>): Want => ({ id: nextId(), noun: 'want', since: day('2024-03-05'), design: design.id, ...over }) as Want;
const large = aMould({ design: design.id, size: 'large', grade: 'sound', purpose: 'production' });
const kinds = (...things: readonly Thing[]) =>
  wantedKinds(aShelf(things)).map(({ moulds, design: _, ...kind }) => ({ ...kind, moulds: moulds.length }));

describe('what is wanted of a design and size', () => {
  it('is its wants and what is to be kept, less castings and waxes on hand, due with the first want', () => {
    const wants = [
      aWant({ size: 'large', pieces: 30, due: day('2024-06-20') }),
      aWant({ size: 'large', pieces: 5, due: day('2024-06-01') }),
    ];
    const piles = [
      aCasting({ design: design.id, size: 'large', pieces: 8 }),
      anInjectedWax({ design: design.id, size: 'large', pieces: 4 }),
    ];
    expect(kinds(design, large, ...wants, ...piles)).toEqual([{ size: 'large', pieces: 33, forWants: 23, due: '2024-06-01', moulds: 1 }]);
  });

  it('shares what is to be kept out over the sizes that have moulds', () => {
    const small = aMould({ design: design.id, size: 'small', grade: 'sound', purpose: 'production' });
    expect(kinds(design, large, small)).toEqual([
      { size: 'large', pieces: 5, forWants: 0, moulds: 1 },
      { size: 'small', pieces: 5, forWants: 0, moulds: 1 },
    ]);
  });

  it('takes pieces of no known size for whichever size lacks them', () => {
    const { size: _, ...unsized } = aCasting({ design: design.id, pieces: 7 });
    expect(kinds(design, large, unsized as Thing)).toMatchObject([{ size: 'large', pieces: 3 }]);
  });

  it('is nothing when enough is there, when the design is done with, or when it is poured straight into the mould', () => {
    expect(kinds(design, large, aCasting({ design: design.id, size: 'large', pieces: 10 }))).toEqual([]);
    expect(kinds({ ...design, retired: { on: day('2024-05-06'), reason: 'discontinued' } }, large)).toEqual([]);
    expect(kinds({ ...design, route: 'poured in the mould' }, large)).toEqual([]);
    expect(kinds(aDesign({ keep: 0 }))).toEqual([]);
  });

  it('counts no failed, retired or intermediate mould among those that could make it', () => {
    const others = [
      aMould({ design: design.id, size: 'large', grade: 'failed' }),
      aMould({ design: design.id, size: 'large', grade: 'sound', purpose: 'intermediate' }),
    ];
    expect(kinds(design, large, ...others)).toMatchObject([{ moulds: 1 }]);
    expect(kinds(design, ...others)).toMatchObject([{ pieces: 10, moulds: 0 }]);
  });
});

describe('the shots that takes', () => {
  it('follows the mould’s own yield: good waxes a shot, and castings that came out sound', () => {
    const steady = aMould({ shots: 95, good: 95 * 2, rejects: 0, cavities: 2, sound: 0, scrap: 0 });
    expect(shotsFor(steady, 18)).toBe(10);
    expect(shotsFor({ ...steady, good: 95, rejects: 95 }, 18)).toBeGreaterThan(18);
    // Shots from before Mouldkeep, whose waxes nobody counted, say nothing of it.
    expect(shotsFor({ ...steady, shots: 1234 }, 18)).toBe(10);
    expect(shotsFor({ ...steady, sound: 40, scrap: 40 }, 18)).toBeGreaterThan(15);
  });
});

describe('the chance that pieces will be missing', () => {
  it.each([
    [[], 1],
    [[undefined], undefined],
    [[0.75], 0.25],
    [[0.5, 0.5], 0.25],
    [[0.9, undefined], 0.1],
  ])('with moulds that make them by %j', (chances, missing) => {
    const found = chanceOfMissing(chances);
    if (missing === undefined) expect(found).toBeUndefined();
    else expect(found).toBeCloseTo(missing, 12);
  });
});

it('a new mould is begun as long before the castings are wanted as its rubber cures and casting takes', () => {
  expect(daysToCastings('tin silicone')).toBe(7);
  expect(startBy(day('2024-06-20'), 'tin silicone')).toBe('2024-06-13');
  expect(startBy(day('2024-06-20'), 'natural')).toBe('2024-06-15');
});
