import { describe, expect, it } from 'vitest';
import type { Code, Day, MouldId, PlaceId } from '../../src/domain/brand.ts';
import type { Mould } from '../../src/domain/shelf.ts';
import { findCode } from '../../src/views/find-code.ts';
import { labelCandidates } from '../../src/views/label-candidates.ts';
import { aDesign, aMould, aPlace, aShelf } from '../support/builders.ts';
import { chance } from '../support/chance.ts';
import { drawCodes } from '../support/codes.ts';

const codes = drawCodes(400, chance(11)).filter((code) => code.startsWith('M'));
const [first, second, third] = codes as [Code, Code, Code];
const drawer = aPlace({ id: 'p1' as PlaceId, name: 'A3', label: 'A3', kind: 'drawer' });
const TORN = { on: '2024-03-05' as Day, reason: 'torn' } as const;

function mould(id: string, name: string, more: Partial<Mould> = {}): Mould {
  const { code: _, ...unlabelled } = aMould({ id: id as MouldId, name, at: drawer.id });
  return { ...unlabelled, ...more };
}

describe('what carries a code', () => {
  it('is one thing, with its kind and place', () => {
    const shelf = aShelf([drawer, mould('m1', 'Owl seal', { code: first }), mould('m2', 'Toggle', { code: second })]);
    expect(findCode(shelf, second)).toMatchObject([{ thing: { id: 'm2' }, title: 'Toggle', detail: 'mould · A3' }]);
  });

  it('is several when a code was given out twice, those out of use last', () => {
    const gone = mould('m1', 'Old owl', { code: first, retired: TORN });
    const found = findCode(aShelf([drawer, gone, mould('m2', 'Owl seal', { code: first })]), first);
    expect(found.map(({ thing }) => thing.id)).toEqual(['m2', 'm1']);
    expect(found[1]?.detail).toContain('out of use: torn');
  });

  it('says the design of what has a number for a name', () => {
    const omega = aDesign({ name: 'Omega brooch' });
    const shelf = aShelf([drawer, omega, mould('m2', 'M-002', { code: second, design: omega.id })]);
    expect(findCode(shelf, second)[0]?.detail).toBe('mould · Omega brooch · A3');
    expect(labelCandidates(shelf, third, 'omega').shown).toHaveLength(1);
  });

  it('is nothing when the label is new', () => {
    expect(findCode(aShelf([drawer, mould('m1', 'Owl seal', { code: first })]), third)).toEqual([]);
  });
});

describe('what a label can be put on', () => {
  const shelf = aShelf([
    drawer,
    mould('m1', 'Owl seal', { code: first }),
    mould('m2', 'Owl toggle'),
    mould('m3', 'Bée brooch'),
    mould('m4', 'Owl dud', { retired: TORN }),
  ]);

  it('is every thing of its kind in use, those without a label first', () => {
    expect(labelCandidates(shelf, third, '').shown.map(({ thing }) => thing.id)).toEqual(['m3', 'm2', 'm1']);
    const numbered = aShelf([mould('m10', 'Owl 10'), mould('m2', 'Owl 2')]);
    expect(labelCandidates(numbered, third, '').shown.map(({ thing }) => thing.id)).toEqual(['m2', 'm10']);
    expect(labelCandidates(shelf, 'P0000000' as Code, '').shown.map(({ thing }) => thing.id)).toEqual(['p1']);
  });

  it('is narrowed by parts of the name or the label it has, whatever the accents', () => {
    expect(labelCandidates(shelf, third, 'owl se').shown.map(({ thing }) => thing.id)).toEqual(['m1']);
    expect(labelCandidates(shelf, third, 'BEE').shown.map(({ thing }) => thing.id)).toEqual(['m3']);
    expect(labelCandidates(shelf, third, first.toLowerCase()).shown.map(({ thing }) => thing.id)).toEqual(['m1']);
    expect(labelCandidates(shelf, third, 'no such').shown).toEqual([]);
  });

  it('shows twenty and counts the rest', () => {
    const many = aShelf(Array.from({ length: 27 }, (_, i) => mould(`m${i}`, `Pin ${i}`)));
    expect(labelCandidates(many, third, 'pin')).toMatchObject({ more: 7, shown: { length: 20 } });
  });
});
