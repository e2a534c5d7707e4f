import { expect, test } from 'vitest';
import { insteadOf } from '../../src/domain/instead.ts';
import { fateOf } from '../../src/domain/survival/lifetime.ts';
import { aDesign, aMaster, aMould, aShelf } from '../support/builders.ts';

// Common practice, no source.
const design = aDesign({});

test('a worn original is moulded, cast in wax, the wax repaired and moulded again: the first mould is only an intermediate step, the second is the production mould', () => {
  const original = aMaster({ design: design.id, size: 'large', kind: 'original', state: 'worn' });
  const first = aMould({
    design: design.id,
    size: 'large',
    master: original.id,
    purpose: 'intermediate',
    grade: 'sound',
    faults: [],
    shots: 3,
  });
  const dressed = aMaster({ design: design.id, size: 'large', kind: 'dressed wax', state: 'sound', from: [first.id] });
  const second = aMould({
    design: design.id,
    size: 'large',
    master: dressed.id,
    purpose: 'production',
    grade: 'failed',
    faults: ['torn gate'],
  });
  const shelf = aShelf([design, original, dressed, first, second]);
  const { moulds, lastResort, masters } = insteadOf(shelf, second.id);
  // The first mould is no stand-in for the second; a new one comes from the dressed wax before the worn original.
  expect([moulds, lastResort]).toEqual([[], []]);
  expect(masters.map(({ id }) => id)).toEqual([dressed.id, original.id]);
  // Its few shots still say what its rubber stood.
  expect(fateOf(first)).toBe('still whole');
});

test('a mould with a flawed skin may still be good enough to shoot waxes from', () => {
  const flawed = aMould({ design: design.id, size: 'large', grade: 'watch', faults: ['flawed skin'], shots: 44 });
  const failed = aMould({ design: design.id, size: 'large', grade: 'failed', faults: ['torn keys'] });
  expect(fateOf(flawed)).toBe('still whole');
  expect(insteadOf(aShelf([design, flawed, failed]), failed.id).moulds.map(({ id }) => id)).toEqual([flawed.id]);
});
