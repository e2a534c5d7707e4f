import { describe, expect, it } from 'vitest';
import type { PlaceId } from '../../src/domain/brand.ts';
import type { FlagKind } from '../../src/domain/entry.ts';
import { rulesOf } from '../../src/domain/flag.ts';
import { mouldFlags } from '../../src/domain/flag-mould.ts';
import type { Mould, Run } from '../../src/domain/shelf.ts';
import { aMould, day } from '../support/builders.ts';

const rules = rulesOf(day('2025-06-20'), {});
const kinds = (mould: Mould) => mouldFlags(mould, rules).map(({ kind, level }) => `${kind} ${level}`);
const only = (mould: Mould, kind: FlagKind) => mouldFlags(mould, rules).find((flag) => flag.kind === kind);
const run = (on: string, good: number, rejects: number): Run => ({ on: day(on), good, rejects });

describe('a mould’s grade', () => {
  it('asks for a failed one to be moved out, names its faults, and says no more about it', () => {
    const failed = aMould({
      grade: 'failed',
      gradeOn: day('2025-06-03'),
      faults: ['torn gate', 'curled'],
      shots: 9000,
      nextLook: day('2024-01-01'),
    });
    expect(kinds(failed)).toEqual(['failed act']);
    expect(only(failed, 'failed')?.says).toBe('Failed on 3 June 2025: torn gate, curled, and still in its place.');
  });

  it('rests once the failed one was moved', () => {
    expect(kinds(aMould({ grade: 'failed', gradeOn: day('2025-06-03'), atSince: day('2025-06-04') }))).toEqual(['failed note']);
    expect(kinds(aMould({ grade: 'failed', gradeOn: day('2025-06-03'), atSince: day('2025-06-03') }))).toEqual(['failed act']);
  });

  it('does not take the place it was recorded in for a move, when it failed before that', () => {
    const failed = { grade: 'failed', gradeOn: day('2024-10-01'), since: day('2025-06-03'), atSince: day('2025-06-03') } as const;
    expect(kinds(aMould(failed))).toEqual(['failed act']);
    expect(kinds(aMould({ ...failed, usual: aMould().id as string as PlaceId }))).toEqual(['failed note']);
    expect(kinds(aMould({ ...failed, atSince: day('2025-06-04') }))).toEqual(['failed note']);
  });

  it('says nothing of a retired one', () => {
    expect(kinds(aMould({ grade: 'failed', retired: { on: day('2025-06-05'), reason: 'torn' } }))).toEqual([]);
  });

  it('tells worn, watched and faulty ones apart', () => {
    expect(kinds(aMould({ grade: 'worn', faults: ['flash'] }))).toEqual(['worn soon']);
    expect(kinds(aMould({ grade: 'watch' }))).toEqual(['worn note']);
    expect(kinds(aMould({ grade: 'watch', faults: ['flash'] }))).toEqual(['faults soon']);
    expect(kinds(aMould({ grade: 'sound', faults: [] }))).toEqual([]);
  });
});

describe('shots and age against what the rubber is expected to last', () => {
  it('warns from four fifths of its shots, and calls for action at all of them', () => {
    const life = { rubber: 'platinum silicone', expectedShots: 200 } as const;
    expect(kinds(aMould({ ...life, shots: 159 }))).toEqual([]);
    expect(kinds(aMould({ ...life, shots: 160 }))).toEqual(['old shots soon']);
    expect(kinds(aMould({ ...life, shots: 200 }))).toEqual(['old shots act']);
    expect(only(aMould({ ...life, shots: 210 }), 'old shots')?.says).toBe(
      '210 shots, 105 % of the 200 expected of it (as set for this mould).',
    );
  });

  it('warns from four fifths of its years, and again at all of them', () => {
    const tin = { rubber: 'tin silicone', shots: 1 } as const;
    expect(kinds(aMould({ ...tin, made: day('2021-07-20') }))).toEqual([]);
    expect(kinds(aMould({ ...tin, made: day('2021-05-20') }))).toEqual(['old rubber note']);
    expect(kinds(aMould({ ...tin, made: day('2020-05-20') }))).toEqual(['old rubber soon']);
    expect(only(aMould({ ...tin, made: day('2020-06-20') }), 'old rubber')?.says).toContain(
      '5.0 years old; tin silicone is expected to last 5',
    );
  });
});

describe('rejects that rise', () => {
  const drift = { since: day('2025-05-20'), waxes: 45, rejects: 9, sign: 3.8 };
  const drifting = { shots: 200, good: 190 + 36, rejects: 10 + 9, gradeOn: day('2025-01-02'), grade: 'sound', drift } as const;
  const runs = [run('2025-06-10', 12, 3)];

  it('says both shares in numbers', () => {
    const flag = only(aMould({ ...drifting, runs }), 'rejects');
    expect(flag?.says).toBe('Since 20 May 2025 9 of 45 waxes were thrown out (20 %); before that 5 % of 200.');
    expect(flag?.level).toBe('soon');
  });

  it('rests when the mould was looked at on or after the last run', () => {
    expect(only(aMould({ ...drifting, runs, gradeOn: day('2025-06-10') }), 'rejects')).toBeUndefined();
    expect(only(aMould({ ...drifting, runs, gradeOn: day('2025-06-09') }), 'rejects')).toBeDefined();
  });

  it('does not fuss over weak signs or few rejects', () => {
    expect(only(aMould({ ...drifting, runs, drift: { ...drift, sign: 3.6 } }), 'rejects')).toBeUndefined();
    expect(only(aMould({ ...drifting, runs, drift: { ...drift, rejects: 2 } }), 'rejects')).toBeUndefined();
  });

  it('judges a new mould by what is usual for its rubber', () => {
    const usual = rulesOf(day('2025-06-20'), {}, { 'tin silicone': 0.04 });
    const first = aMould({
      rubber: 'tin silicone',
      shots: 15,
      good: 10,
      rejects: 12,
      gradeOn: day('2025-01-02'),
      runs: [run('2025-06-10', 10, 12)],
    });
    const of = (mould: Mould) => mouldFlags(mould, usual).find(({ kind }) => kind === 'rejects')?.says;
    expect(of(first)).toBe('12 of its first 22 waxes were thrown out (55 %); moulds of tin silicone spoil 4 %.');
    expect(of({ ...first, good: 16, rejects: 2 })).toBeUndefined();
    expect(of({ ...first, rubber: 'natural' })).toBeUndefined();
  });
});

describe('a look that is due', () => {
  it('is due on the day set at the last one', () => {
    expect(kinds(aMould({ nextLook: day('2025-06-21') }))).toEqual([]);
    expect(only(aMould({ nextLook: day('2025-06-20') }), 'look due')?.says).toBe('A look is due today.');
    expect(only(aMould({ nextLook: day('2025-06-05') }), 'look due')?.says).toBe('A look was due on 5 June 2025, 15 days ago.');
  });

  it('is due after the studio’s usual days, if it was shot since', () => {
    const studio = rulesOf(day('2025-06-20'), { lookDays: 40 });
    const due = (mould: Mould) => mouldFlags(mould, studio).some((flag) => flag.kind === 'look due');
    const runs = [run('2025-06-01', 30, 0)];
    expect(due(aMould({ gradeOn: day('2025-05-11'), grade: 'sound', runs }))).toBe(true);
    expect(due(aMould({ gradeOn: day('2025-05-12'), grade: 'sound', runs }))).toBe(false);
    expect(due(aMould({ gradeOn: day('2025-01-02'), grade: 'sound', runs: [run('2025-01-01', 30, 0)] }))).toBe(false);
    expect(due(aMould({ gradeOn: day('2025-01-02'), grade: 'sound' }))).toBe(false);
  });

  it('counts from the day it was recorded when nobody ever looked', () => {
    const flag = only(aMould({ since: day('2024-03-20'), runs: [run('2024-06-01', 30, 0)] }), 'look due');
    expect(flag?.says).toContain('Never looked at since it was recorded 15 months ago');
  });
});

describe('set aside', () => {
  it('carries the day it comes back, until that day', () => {
    const mould = aMould({ grade: 'worn', aside: { worn: day('2025-06-21') } });
    expect(only(mould, 'worn')?.asideUntil).toBe('2025-06-21');
    expect(only({ ...mould, aside: { worn: day('2025-06-20') } }, 'worn')?.asideUntil).toBeUndefined();
  });

  it('leaves other kinds on the list', () => {
    const mould = aMould({ grade: 'worn', nextLook: day('2025-06-01'), aside: { worn: day('2025-09-01') } });
    expect(only(mould, 'look due')?.asideUntil).toBeUndefined();
  });
});
