import { describe, expect, it } from 'vitest';
import { RETIREMENTS } from '../../../src/domain/retirement.ts';
import { fateOf, lifetimeOf } from '../../../src/domain/survival/lifetime.ts';
import { aMould, day } from '../../support/builders.ts';

const used = { shots: 137, grade: 'sound', faults: [] } as const;
const retiredFor = (reason: (typeof RETIREMENTS)[number]) => aMould({ ...used, retired: { on: day('2024-05-06'), reason } });

describe('what a mould says about how long its rubber lasts', () => {
  it('is an end when it wore out or tore, nothing when it was a dud, and still whole for every other reason', () => {
    const fates = Object.fromEntries(RETIREMENTS.map((reason) => [reason, fateOf(retiredFor(reason))]));
    const { 'worn out': worn, torn, dud, ...others } = fates;
    expect([worn, torn, dud]).toEqual(['end', 'end', 'nothing']);
    expect(new Set(Object.values(others))).toEqual(new Set(['still whole']));
    expect(lifetimeOf(retiredFor('torn'))).toEqual({ shots: 137, isEnd: true });
    expect(lifetimeOf(retiredFor('lost'))).toEqual({ shots: 137, isEnd: false });
    expect(lifetimeOf(retiredFor('dud'))).toBeUndefined();
  });

  it('is an end when it was graded failed and never put right, whatever became of it then', () => {
    const failed = aMould({ shots: 71, grade: 'failed', faults: ['torn gate', 'flawed skin'] });
    expect(lifetimeOf(failed)).toEqual({ shots: 71, isEnd: true });
    expect(fateOf({ ...failed, retired: { on: day('2024-05-06'), reason: 'replaced' } })).toBe('end');
    expect(fateOf({ ...failed, grade: 'watch' })).toBe('still whole');
    expect(fateOf({ ...failed, grade: 'worn' })).toBe('still whole');
  });

  it('is a dud when it failed for nothing but what it was born with', () => {
    expect(fateOf(aMould({ shots: 3, grade: 'failed', faults: ['bubbles in rubber', 'undercured'] }))).toBe('nothing');
    expect(fateOf(aMould({ shots: 3, grade: 'failed', faults: [] }))).toBe('end');
  });

  it('is nothing without a shot: an intermediate mould never shot, or one whose shots nobody logged', () => {
    expect(fateOf(aMould({ ...used, shots: 0, purpose: 'intermediate' }))).toBe('nothing');
    expect(fateOf(aMould({ shots: 0, retired: { on: day('2024-05-06'), reason: 'worn out' } }))).toBe('nothing');
    expect(fateOf(aMould({ ...used, shots: 2, purpose: 'intermediate' }))).toBe('still whole');
  });
});
