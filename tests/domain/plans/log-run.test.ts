import { describe, expect, it } from 'vitest';
import { apply } from '../../../src/domain/apply.ts';
import type { Celsius, Kilopascals, PlaceId } from '../../../src/domain/brand.ts';
import { beside } from '../../../src/domain/form-problem.ts';
import { type LogRun, planLogRun } from '../../../src/domain/plans/log-run.ts';
import { isProblem, type Problem } from '../../../src/domain/problem.ts';
import { isWarning } from '../../../src/domain/warning.ts';
import { aDesk, aMould, anInjectedWax, anInjector, aPlace, aShelf, aWax, day } from '../../support/builders.ts';

const tray = aPlace({ name: 'Tray', capacity: 400 });
const wax = aWax();
const mould = aMould();
const low = anInjector({ name: 'Bench pot', pressure: 'low' });
const shelf = aShelf([tray, wax, mould, low]);
const plan = (over: Partial<LogRun>, on = shelf) => planLogRun(on, aDesk(), { mould: mould.id, shots: 12, wax: wax.id, ...over });

describe('a run in other units', () => {
  const units = { mass: 'oz', length: 'in', temperature: '°F', pressure: 'psi' } as const;

  it('is warned of in them, and kept as ever', () => {
    const hot = aWax({ injectHighC: 70 as Celsius });
    const weak = anInjector({ name: 'Hand pump', maxKpa: 69 as Kilopascals });
    const command = { wax: hot.id, injector: weak.id, waxC: 75 as Celsius, pressureKpa: 138 as Kilopascals, units };
    const on = aShelf([mould, hot, weak]);
    const warned = plan(command, on);
    expect(isWarning(warned as Problem) && (warned as Problem).says).toMatch(
      /167 °F is hotter than the 158 °F[\s\S]*20 psi is more than the 10 psi/,
    );
    const kept = plan({ ...command, confirmed: true }, on);
    expect(kept).toMatchObject([{ waxC: 75, pressureKpa: 138 }]);
    expect(kept).not.toHaveProperty('0.units');
  });
});

describe('a run', () => {
  it('counts the good waxes of all cavities, the wax used, and makes a pile where they went', () => {
    const entries = plan({ rejects: { bubbles: 3, flash: 0 }, to: tray.id });
    expect(entries).toMatchObject([{ kind: 'injected', shots: 12, good: 45, rejects: { bubbles: 3 }, to: tray.id }]);
    if (isProblem(entries)) throw new Error(entries.says);
    expect((entries[0] as { grams: number }).grams).toBeCloseTo(100.8);
    const after = apply(shelf, entries);
    expect(after.things.mould.get(mould.id)).toMatchObject({ shots: 149, good: 546, rejects: 50 });
    expect([...after.things.injectedWax.values()]).toMatchObject([{ pieces: 45, at: tray.id, mould: mould.id, wax: wax.id, state: 'raw' }]);
  });

  it('puts the waxes on the raw pile of this mould and wax at that place, and on no other', () => {
    const mine = { mould: mould.id, wax: wax.id, at: tray.id } as const;
    const dressed = anInjectedWax({ ...mine, state: 'dressed' });
    const pile = anInjectedWax(mine);
    const entries = plan({ to: tray.id }, aShelf([tray, wax, mould, dressed, pile]));
    expect(entries).toMatchObject([{ onto: pile.id }]);
    expect(entries).not.toHaveProperty('0.to');
    expect(plan({ to: tray.id }, aShelf([tray, wax, mould, dressed]))).toMatchObject([{ to: tray.id }]);
  });

  it.each([
    ['no shots', { shots: 0 }, 'shots'],
    ['half a shot', { shots: 2.5 }, 'shots'],
    ['more rejects than waxes', { rejects: { flash: 40, bent: 9 } }, 'rejects'],
    ['a negative count', { rejects: { flash: -1 } }, 'rejects'],
    ['a day to come', { on: day('2024-03-06') }, 'on'],
    ['a place that is gone', { to: 'gone' as PlaceId }, 'to'],
    ['wax hotter than can be', { waxC: 400 as Celsius, confirmed: true }, 'waxC'],
    ['a note without end', { note: 'x'.repeat(4001) }, 'note'],
  ] as const)('is refused with %s, beside the field', (_, over, field) => {
    const refused = plan(over as Partial<LogRun>) as Problem;
    expect(isProblem(refused)).toBe(true);
    expect(beside(refused, field)).toMatch(/\w/);
    expect(refused.kept).toContain('still in the form');
  });

  it('says how many waxes the shots give when there are more rejects', () => {
    expect(plan({ shots: 2, rejects: { flash: 9 } })).toMatchObject({
      says: '9 rejects are more than the 8 waxes that 2 shots of 4 waxes each give.',
    });
    expect(plan({ shots: 1, rejects: { flash: 9 } })).toMatchObject({
      says: '9 rejects are more than the 4 waxes that 1 shot of 4 waxes each gives.',
    });
  });

  it('of a failed or retired mould goes through only when confirmed', () => {
    const failed = aMould({
      grade: 'failed',
      gradeOn: day('2024-02-01'),
      faults: ['torn gate'],
      retired: { on: day('2024-02-02'), reason: 'torn' },
    });
    const command = { mould: failed.id, shots: 3 };
    const warned = planLogRun(aShelf([failed]), aDesk(), command);
    expect(isWarning(warned) && warned.warnings).toEqual([
      'This mould was retired on 2 February 2024: torn.',
      'This mould was marked failed on 1 February 2024: torn gate.',
    ]);
    expect(planLogRun(aShelf([failed]), aDesk(), { ...command, confirmed: true })).toMatchObject([{ kind: 'injected' }]);
  });

  it.each([
    ['a wax for high pressure in a low-pressure injector', { pressure: 'needs high' }, {}, 'needs the high-pressure injector'],
    ['a wax for low pressure only in the high-pressure one', { pressure: 'low only' }, { injector: 'high' }, 'for low pressure only'],
    ['a sticky wax', { use: 'sticky' }, {}, 'not for injecting'],
    ['wax above its range', {}, { waxC: 72 as Celsius }, 'hotter than the 71'],
    ['wax below its range', {}, { waxC: 62 as Celsius }, 'cooler than the 63'],
    ['more pressure than the injector is made for', {}, { pressureKpa: 146 as Kilopascals }, '145 kPa'],
  ] as const)('with %s is warned of', (_, ofWax, over, says) => {
    const chosen = aWax(ofWax);
    const high = anInjector({ name: 'Tall press', pressure: 'high' });
    const { injector, ...rest } = { injector: 'low', ...over } as { injector: string };
    const on = aShelf([mould, chosen, low, high]);
    const warned = planLogRun(on, aDesk(), {
      mould: mould.id,
      shots: 5,
      wax: chosen.id,
      injector: injector === 'high' ? high.id : low.id,
      ...rest,
    });
    expect(isWarning(warned) && warned.warnings.join()).toContain(says);
  });

  it('says of each injector how it works', () => {
    const fussy = aWax({ name: 'Turquoise', pressure: 'needs high' });
    const says = (pressure: 'hand' | 'low') => {
      const pot = anInjector({ name: 'Pot', pressure });
      const warned = planLogRun(aShelf([mould, fussy, pot]), aDesk(), { mould: mould.id, shots: 5, wax: fussy.id, injector: pot.id });
      return isWarning(warned) && warned.says;
    };
    expect([says('hand'), says('low')]).toEqual([
      'Turquoise needs the high-pressure injector; Pot is worked by hand.',
      'Turquoise needs the high-pressure injector; Pot is a low-pressure one.',
    ]);
  });

  it('with an injector said to hold another wax is warned of', () => {
    const other = aWax({ name: 'Violet' });
    const filled = anInjector({ holds: other.id });
    const warned = planLogRun(aShelf([mould, wax, other, filled]), aDesk(), {
      mould: mould.id,
      shots: 5,
      wax: wax.id,
      injector: filled.id,
    });
    expect(isWarning(warned) && warned.warnings).toEqual(['Big pot is said to hold Violet, not Green.']);
  });
});
