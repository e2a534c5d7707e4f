import { describe, expect, it } from 'vitest';
import { apply } from '../../../src/domain/apply.ts';
import type { Entry } from '../../../src/domain/entry.ts';
import { beside } from '../../../src/domain/form-problem.ts';
import { planFailMould } from '../../../src/domain/plans/fail-mould.ts';
import { planInspect } from '../../../src/domain/plans/inspect.ts';
import { planLogRun } from '../../../src/domain/plans/log-run.ts';
import { planRetire } from '../../../src/domain/plans/retire.ts';
import type { Problem } from '../../../src/domain/problem.ts';
import { isWarning } from '../../../src/domain/warning.ts';
import { aDesign, aDesk, aMaster, aMould, aPlace, aShelf, day, sha } from '../../support/builders.ts';

const drawer = aPlace();
const mould = aMould({ at: drawer.id });
const master = aMaster();
const design = aDesign();
const shelf = aShelf([drawer, mould, master, design]);

describe('a failed mould', () => {
  it('keeps its place, with its faults, note and photo', () => {
    const faults = ['torn gate', 'torn gate', 'curled'] as const;
    const entries = planFailMould(shelf, aDesk(), { mould: mould.id, faults, note: '  at the tail ', pictures: [sha(5)] });
    expect(entries).toMatchObject([{ kind: 'failed', of: mould.id, faults: ['torn gate', 'curled'], note: 'at the tail' }]);
    const after = apply(shelf, entries as readonly Entry[]).things.mould.get(mould.id);
    expect(after).toMatchObject({ grade: 'failed', at: drawer.id, gradeNote: 'at the tail', looks: [sha(5)] });
  });

  it('is refused without a fault, and when the mould is gone', () => {
    const refused = planFailMould(shelf, aDesk(), { mould: mould.id, faults: [] }) as Problem;
    expect(beside(refused, 'faults')).toContain('at least one fault');
    expect(planFailMould(aShelf(), aDesk(), { mould: mould.id, faults: ['flash'] })).toMatchObject({
      says: 'This mould is no longer recorded.',
    });
  });
});

describe('a failure found later', () => {
  it('is written down for its day, which has come', () => {
    const command = { mould: mould.id, faults: ['torn keys'] } as const;
    expect(planFailMould(shelf, aDesk(), { ...command, on: day('2024-02-29') })).toMatchObject([{ kind: 'failed', on: '2024-02-29' }]);
    expect(beside(planFailMould(shelf, aDesk(), { ...command, on: day('2024-03-06') }) as Problem, 'on')).toContain('has not come yet');
    expect(beside(planFailMould(shelf, aDesk(), { ...command, on: '2023-02-29' as never }) as Problem, 'on')).toContain('not a day');
  });
});

it('nothing happens to a mould before it is made, in a failure, a look or a run', () => {
  const on = day('2023-05-06');
  const made = aShelf([{ ...mould, made: day('2023-05-07') }]);
  const plans = (over: { readonly on: typeof on }) => [
    planFailMould(made, aDesk(), { mould: mould.id, faults: ['torn keys'], ...over }),
    planInspect(made, aDesk(), { of: mould.id, grade: 'watch', ...over }),
    planLogRun(made, aDesk(), { mould: mould.id, shots: 3, ...over }),
  ];
  for (const refused of plans({ on })) expect(beside(refused as Problem, 'on')).toBe('It was made on 7 May 2023, after that day.');
  for (const written of plans({ on: day('2023-05-07') })) expect(written).toHaveLength(1);
});

describe('a look', () => {
  it('grades a mould or a master and says when to look again', () => {
    const next = day('2024-06-05');
    const entries = planInspect(shelf, aDesk(), { of: mould.id, grade: 'watch', faults: ['flash'], next });
    expect(entries).toMatchObject([{ kind: 'inspected', grade: 'watch', faults: ['flash'], next }]);
    expect(planInspect(shelf, aDesk(), { of: master.id, grade: 'sound' })).toMatchObject([{ of: master.id }]);
  });

  it.each([
    ['no grade', { grade: undefined }, 'grade'],
    ['failed without a fault', { grade: 'failed' }, 'faults'],
    ['a look gone by', { grade: 'worn', next: day('2024-03-04') }, 'next'],
    ['a day to come', { grade: 'worn', on: day('2024-03-06') }, 'on'],
  ] as const)('is refused with %s', (_, over, field) => {
    expect(beside(planInspect(shelf, aDesk(), { of: mould.id, ...over }) as Problem, field)).toMatch(/\w/);
  });

  it('is refused for what is neither mould nor master', () => {
    expect(planInspect(shelf, aDesk(), { of: design.id as never, grade: 'sound' })).toMatchObject({
      says: 'Only moulds and masters are inspected.',
    });
  });

  it('that finds a faulty mould sound is asked about', () => {
    const command = { of: mould.id, grade: 'sound', faults: ['torn keys'] } as const;
    expect(isWarning(planInspect(shelf, aDesk(), command))).toBe(true);
    expect(planInspect(shelf, aDesk(), { ...command, confirmed: true })).toMatchObject([{ grade: 'sound' }]);
  });
});

describe('a look of an earlier day', () => {
  it('is asked about when the mould was looked at since', () => {
    const seen = aMould({ grade: 'worn', gradeOn: day('2024-02-20') });
    const look = (on: string, confirmed = false) =>
      planInspect(aShelf([seen]), aDesk(), { of: seen.id, grade: 'watch', on: day(on), confirmed });
    expect(look('2024-02-19')).toMatchObject({ warnings: [expect.stringContaining('It was looked at since, on 20 February 2024')] });
    expect(look('2024-02-19', true)).toMatchObject([{ grade: 'watch', on: '2024-02-19' }]);
    expect(look('2024-02-20')).toMatchObject([{ on: '2024-02-20' }]);
  });
});

describe('retiring', () => {
  it('takes a thing out of use where it stands', () => {
    const entries = planRetire(shelf, aDesk(), { of: mould.id, reason: 'dud' }) as readonly Entry[];
    expect(apply(shelf, entries).things.mould.get(mould.id)).toMatchObject({ retired: { reason: 'dud' }, at: drawer.id });
  });

  it('is refused a second time', () => {
    const gone = aMould({ retired: { on: day('2024-01-09'), reason: 'torn' } });
    expect(planRetire(aShelf([gone]), aDesk(), { of: gone.id, reason: 'lost' })).toMatchObject({
      says: 'Dolphin 1 was retired already, on 9 January 2024: torn.',
    });
  });
});
