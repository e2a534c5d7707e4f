import { describe, expect, it } from 'vitest';
import type { WaxId } from '../../../src/domain/brand.ts';
import type { Entry } from '../../../src/domain/entry.ts';
import { foldOn } from '../../../src/domain/fold.ts';
import { beside } from '../../../src/domain/form-problem.ts';
import { planDiscardWax } from '../../../src/domain/plans/discard-wax.ts';
import { planReceiveWax } from '../../../src/domain/plans/receive-wax.ts';
import { planWeighWax } from '../../../src/domain/plans/weigh-wax.ts';
import { isProblem, type Problem } from '../../../src/domain/problem.ts';
import type { Shelf } from '../../../src/domain/shelf.ts';
import { isWarning } from '../../../src/domain/warning.ts';
import { aDesk, aShelf, aWax, day, nextId } from '../../support/builders.ts';

const wax = aWax({ grams: 640 });
const shelf = aShelf([wax]);
const gone = nextId<WaxId>();

function gramsAfter(entries: readonly Entry[] | Problem): number | undefined {
  if (isProblem(entries)) throw new Error(entries.says);
  return (foldOn(shelf, entries) as Shelf).things.wax.get(wax.id)?.grams;
}

describe('wax received', () => {
  it('adds to the tub, with its lot', () => {
    const entries = planReceiveWax(shelf, aDesk(), { wax: wax.id, grams: 2500, lot: '  B-17 ' });
    expect(gramsAfter(entries)).toBe(3140);
    expect(entries).toMatchObject([{ kind: 'received', lot: 'B-17' }]);
  });

  it.each([
    [undefined, 'Say how much, as a number.'],
    [Number.NaN, 'Say how much, as a number.'],
    [-1, 'Wax cannot weigh less than nothing.'],
    [0, 'Say how much came in.'],
  ])('refuses %s grams', (grams, says) => {
    const outcome = planReceiveWax(shelf, aDesk(), { wax: wax.id, grams });
    expect(isProblem(outcome) && beside(outcome, 'grams')).toBe(says);
  });

  it('refuses more than ten tonnes, a day to come, and a wax that is not there', () => {
    expect(isProblem(planReceiveWax(shelf, aDesk(), { wax: wax.id, grams: 10_000_001 }))).toBe(true);
    expect(isProblem(planReceiveWax(shelf, aDesk(), { wax: wax.id, grams: 5, on: day('2024-03-06') }))).toBe(true);
    expect(isProblem(planReceiveWax(shelf, aDesk(), { wax: gone, grams: 5 }))).toBe(true);
  });
});

describe('wax weighed', () => {
  it('on an earlier day is asked about, since nothing after it is taken off again', () => {
    const weigh = (on: string, confirmed = false) => planWeighWax(shelf, aDesk(), { wax: wax.id, grams: 588, on: day(on), confirmed });
    expect(weigh('2024-03-04')).toMatchObject({ warnings: [expect.stringContaining('588 g will be reckoned to be left now')] });
    expect(weigh('2024-03-04', true)).toMatchObject([{ kind: 'weighed', on: '2024-03-04' }]);
    expect(weigh('2024-03-05')).toMatchObject([{ kind: 'weighed' }]);
  });

  it('takes the scale’s word', () => {
    expect(gramsAfter(planWeighWax(shelf, aDesk(), { wax: wax.id, grams: 588.5 }))).toBe(588.5);
    expect(gramsAfter(planWeighWax(shelf, aDesk(), { wax: wax.id, grams: 0 }))).toBe(0);
    expect(gramsAfter(planWeighWax(shelf, aDesk(), { wax: wax.id, grams: 740 }))).toBe(740);
  });

  it('asks first when there is far more than reckoned', () => {
    const asked = planWeighWax(shelf, aDesk(), { wax: wax.id, grams: 741 });
    expect(isWarning(asked) && asked.warnings[0]).toBe(
      'That is 101 g more than the 640 g reckoned. Did some come in, or was the tub weighed too?',
    );
    expect(gramsAfter(planWeighWax(shelf, aDesk(), { wax: wax.id, grams: 741, confirmed: true }))).toBe(741);
  });

  it('refuses less than nothing', () => {
    expect(isProblem(planWeighWax(shelf, aDesk(), { wax: wax.id, grams: -0.1, confirmed: true }))).toBe(true);
  });
});

describe('wax discarded', () => {
  it('leaves the tub as discarded', () => {
    const entries = planDiscardWax(shelf, aDesk(), { wax: wax.id, grams: 90, note: 'burnt' });
    expect(gramsAfter(entries)).toBe(550);
    expect(entries).toMatchObject([{ kind: 'issued', reason: 'discarded', note: 'burnt' }]);
  });

  it('asks first when it is more than there is, and then leaves the tub at nothing, in one action', () => {
    const asked = planDiscardWax(shelf, aDesk(), { wax: wax.id, grams: 700 });
    expect(isWarning(asked) && asked.warnings[0]).toContain('Only 640 g are reckoned');
    const entries = planDiscardWax(shelf, aDesk(), { wax: wax.id, grams: 700, confirmed: true });
    expect(gramsAfter(entries)).toBe(0);
    if (isProblem(entries)) return;
    expect(entries.map(({ kind }) => kind)).toEqual(['weighed', 'issued']);
    expect(entries[1]?.step).toBe(entries[0]?.id);
  });

  it('does not count as wax used', () => {
    const after = foldOn(shelf, planDiscardWax(shelf, aDesk(), { wax: wax.id, grams: 90 }) as readonly Entry[]) as Shelf;
    expect(after.things.wax.get(wax.id)?.used).toBeUndefined();
  });

  it('refuses nothing, less than nothing, and a wax that is not there', () => {
    for (const grams of [0, -4, undefined])
      expect(isProblem(planDiscardWax(shelf, aDesk(), { wax: wax.id, grams, confirmed: true }))).toBe(true);
    expect(isProblem(planDiscardWax(shelf, aDesk(), { wax: gone, grams: 4 }))).toBe(true);
  });
});
