import { describe, expect, it } from 'vitest';
import { ALARM, driftAfter, OWN_WAXES, runsToFalseAlarm, signAgainst } from '../../src/domain/drift.ts';
import type { Drift } from '../../src/domain/shelf.ts';
import { usualRejects } from '../../src/domain/usual-rejects.ts';
import { aMould, aShelf, day } from '../support/builders.ts';
import { chance } from '../support/chance.ts';
import { waxesOf } from '../support/made-up-runs.ts';

interface Record {
  readonly good: number;
  readonly rejects: number;
  readonly drift?: Drift;
}

function withRun(before: Record, good: number, rejects: number): Record {
  const drift = driftAfter(before, { on: day('2024-06-07'), good, rejects });
  return { good: before.good + good, rejects: before.rejects + rejects, ...(drift ? { drift } : {}) };
}

describe('rejects watched run by run', () => {
  const steady: Record = { good: 190, rejects: 10 };

  it('remembers nothing while all is well, and forgets when it is well again', () => {
    expect(withRun(steady, 20, 1).drift).toBeUndefined();
    const bad = withRun(steady, 14, 6);
    expect(bad.drift).toMatchObject({ since: '2024-06-07', waxes: 20, rejects: 6 });
    let now = bad;
    for (let run = 0; run < 6; run++) now = withRun(now, 20, 0);
    expect(now.drift).toBeUndefined();
  });

  it('adds up signs from run to run, and tells of a run that is bad beyond doubt at once', () => {
    const once = withRun(steady, 17, 3);
    const twice = withRun(once, 17, 3);
    expect(twice.drift).toMatchObject({ since: '2024-06-07', waxes: 40, rejects: 6 });
    expect(twice.drift?.sign).toBeGreaterThan(once.drift?.sign ?? 0);
    expect(withRun(steady, 5, 15).drift?.sign).toBeGreaterThan(ALARM);
  });

  it('waits for a record of its own', () => {
    expect(withRun({ good: OWN_WAXES - 1, rejects: 0 }, 5, 15).drift).toBeUndefined();
    expect(withRun({ good: OWN_WAXES, rejects: 0 }, 5, 15).drift).toBeDefined();
  });

  it('changes nothing with a run without waxes', () => {
    const drift = { since: day('2024-01-02'), waxes: 20, rejects: 6, sign: 1.2 };
    expect(driftAfter({ ...steady, drift }, { on: day('2024-06-07'), good: 0, rejects: 0 })).toEqual(drift);
  });

  it('judges a mould without a record by what its rubber spoils', () => {
    expect(signAgainst({ waxes: 18, rejects: 6 }, 0.04)).toBeGreaterThan(2);
    expect(signAgainst({ waxes: 18, rejects: 1 }, 0.04)).toBeLessThan(0.5);
    expect(signAgainst({ waxes: 0, rejects: 0 }, 0.04)).toBe(0);
  });
});

const SMALL = [4, 30] as const;
const LARGE = [50, 400] as const;

/** Runs until the rise is told, up to `most`; and how often it was told in all, looked at afresh each time. */
function watch(
  share: number,
  clumps: number,
  runs: number,
  from: Record,
  next: () => number,
  [least, most]: readonly [number, number] = SMALL,
): { readonly first: number; readonly alarms: number } {
  let mould = from;
  let first = runs;
  let alarms = 0;
  for (let run = 1; run <= runs; run++) {
    const made = waxesOf(share, clumps, least + Math.floor(next() * (most - least + 1)), next);
    mould = withRun(mould, made.good, made.rejects);
    if (!mould.drift || mould.drift.sign < ALARM || mould.drift.rejects < 3) continue;
    first = Math.min(first, run);
    alarms += 1;
    mould = { good: mould.good, rejects: mould.rejects };
  }
  return { first, alarms };
}

describe('how often it is told', () => {
  // Moulds that spoil a third and more are few, and have reasons enough to be looked at.
  it.each([0.01, 0.02, 0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6])('falsely no more than it says, of a mould that steadily spoils %d', (share) => {
    const next = chance(17);
    const rate = (moulds: number, clumps: number, waxes: readonly [number, number]) => {
      let alarms = 0;
      for (let mould = 0; mould < moulds; mould++) alarms += watch(share, clumps, 40, { good: 0, rejects: 0 }, next, waxes).alarms;
      return alarms / (moulds * 40);
    };
    for (const clumps of [Number.POSITIVE_INFINITY, 60]) {
      expect(rate(1000, clumps, SMALL)).toBeLessThan(1 / (runsToFalseAlarm(share) as number));
      expect(rate(50, clumps, LARGE)).toBeLessThan(1 / 400);
    }
  });

  it('more often the more it spoils, and above 60 in 100 nothing is said of it', () => {
    expect([0, 0.3, 0.31, 0.5, 0.6, 0.61].map(runsToFalseAlarm)).toEqual([200, 200, 150, 150, 125, undefined]);
  });

  it('truly within five runs for most, of one that spoilt 1 in 10 and now spoils 1 in 4', () => {
    const next = chance(18);
    const firsts = Array.from({ length: 100 }, () => watch(0.25, 60, 40, { good: 180, rejects: 20 }, next).first);
    expect(firsts.filter((first) => first <= 5).length).toBeGreaterThan(50);
    expect(firsts.filter((first) => first === 40).length).toBeLessThan(10);
  });
});

describe('what is usual for a rubber', () => {
  it('is the share over all its moulds, in hundredths, once there are waxes enough to tell', () => {
    const moulds = [
      aMould({ rubber: 'natural', good: 150, rejects: 10 }),
      aMould({ rubber: 'natural', good: 90, rejects: 3 }),
      aMould({ rubber: 'tin silicone', good: 70, rejects: 30 }),
    ];
    expect(usualRejects(aShelf(moulds).things.mould)).toEqual({ natural: 0.05 });
  });
});
