import { describe, expect, it } from 'vitest';
import { DEFAULT_LIFE, expectedLife, yearsOld } from '../../src/domain/life.ts';
import { RUBBERS } from '../../src/domain/mould.ts';
import { aMould, day } from '../support/builders.ts';

describe('how long a mould is expected to last', () => {
  it('takes the mould’s own figure before the studio’s, and that before memory', () => {
    const studio = { life: { natural: { shots: 640, years: 12 } } };
    expect(expectedLife(aMould({ rubber: 'natural', expectedShots: 95 }), studio).shots).toEqual({ value: 95, from: 'this mould' });
    expect(expectedLife(aMould({ rubber: 'natural' }), studio).shots).toEqual({ value: 640, from: 'the studio' });
    expect(expectedLife(aMould({ rubber: 'natural' }), studio).years).toEqual({ value: 12, from: 'the studio' });
    expect(expectedLife(aMould({ rubber: 'natural' }), {}).shots).toEqual({ value: DEFAULT_LIFE.natural.shots, from: 'memory' });
  });

  it('keeps the default years when the studio gave only shots', () => {
    const life = expectedLife(aMould({ rubber: 'tin silicone' }), { life: { 'tin silicone': { shots: 44 } } });
    expect(life).toEqual({
      shots: { value: 44, from: 'the studio' },
      years: { value: DEFAULT_LIFE['tin silicone'].years, from: 'memory' },
    });
  });

  it('expects nothing of an unknown rubber', () => {
    const { rubber: _, ...unknown } = aMould();
    expect(expectedLife(unknown, {})).toEqual({});
  });

  it('ranks the rubbers as the trade does: natural lasts longest, tin silicone shortest', () => {
    const shots = (['natural', 'vulcanised silicone', 'platinum silicone', 'tin silicone'] as const).map(
      (rubber) => DEFAULT_LIFE[rubber].shots,
    );
    expect(shots).toEqual([...shots].sort((a, b) => b - a));
    expect(RUBBERS).toHaveLength(4);
  });

  it('tells an age in years', () => {
    expect(yearsOld(day('2015-06-15'), day('2025-06-15'))).toBeCloseTo(10, 9);
    expect(yearsOld(day('2024-01-31'), day('2024-08-01'))).toBeCloseTo(0.5, 1);
  });
});
