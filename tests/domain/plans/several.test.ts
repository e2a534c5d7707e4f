import { describe, expect, it } from 'vitest';
import { apply } from '../../../src/domain/apply.ts';
import type { ThingId } from '../../../src/domain/brand.ts';
import type { Entry } from '../../../src/domain/entry.ts';
import { planRetireMany, reasonsFor } from '../../../src/domain/plans/retire-many.ts';
import { planSetUsual } from '../../../src/domain/plans/set-usual.ts';
import { isWarning } from '../../../src/domain/warning.ts';
import { aDesk, aMaster, aMould, anInjector, aPlace, aShelf, aWax, day } from '../../support/builders.ts';

const a1 = aPlace({ name: 'A1' });
const a2 = aPlace({ name: 'A2' });
const away = aPlace({ name: 'The plater', kind: 'away' });
const out = aMould({ name: 'Out', at: a2.id, usual: a1.id });
const also = aMould({ name: 'Also out', at: a1.id, usual: a2.id });
const home = aMould({ name: 'Home', at: a1.id });
const lent = aMould({ name: 'Lent', at: away.id, usual: a1.id });
const master = aMaster({ at: a1.id });
const wax = aWax();
const shelf = aShelf([a1, a2, away, out, also, home, lent, master, wax, anInjector({ holds: wax.id })]);

describe('the usual place of several', () => {
  it('becomes where each stands, in one action; those at home are left alone', () => {
    const entries = planSetUsual(shelf, aDesk(), [out.id, also.id, home.id, master.id]) as readonly Entry[];
    expect(entries).toMatchObject([
      { kind: 'moved', things: [out.id], to: a2.id },
      { kind: 'moved', things: [also.id], to: a1.id, step: entries[0]?.id },
    ]);
    const after = apply(shelf, entries);
    expect(after.things.mould.get(out.id)).toMatchObject({ at: a2.id });
    expect(after.things.mould.get(out.id)?.usual).toBeUndefined();
    expect(after.things.mould.get(home.id)).toEqual(home);
  });

  it('is refused when all are at home, one is lent, or one is gone', () => {
    expect(planSetUsual(shelf, aDesk(), [home.id])).toMatchObject({ says: 'They stand in their usual places already.' });
    expect(planSetUsual(shelf, aDesk(), [out.id, lent.id])).toMatchObject({ says: 'Lent is away: nobody’s hands are a usual place.' });
    expect(planSetUsual(shelf, aDesk(), ['gone' as ThingId])).toMatchObject({ problem: true });
    expect(planSetUsual(shelf, aDesk(), [])).toMatchObject({ problem: true });
  });
});

describe('retiring several', () => {
  it('is one action, each thing once', () => {
    const entries = planRetireMany(shelf, aDesk(), { things: [out.id, home.id, out.id], reason: 'torn' }) as readonly Entry[];
    expect(entries).toMatchObject([
      { kind: 'retired', of: out.id, reason: 'torn' },
      { of: home.id, step: entries[0]?.id },
    ]);
    expect(entries).toHaveLength(2);
  });

  it('asks about all that still rests on them, and then takes all or none', () => {
    const warned = planRetireMany(shelf, aDesk(), { things: [a1.id, wax.id], reason: 'replaced' });
    expect(isWarning(warned) && warned.warnings).toHaveLength(2);
    expect(planRetireMany(shelf, aDesk(), { things: [a1.id, wax.id], reason: 'replaced', confirmed: true })).toHaveLength(2);
    const gone = { ...home, retired: { on: day('2024-02-01'), reason: 'lost' as const } };
    expect(planRetireMany(aShelf([out, gone]), aDesk(), { things: [out.id, gone.id], reason: 'torn' })).toMatchObject({ problem: true });
    expect(planRetireMany(shelf, aDesk(), { things: [], reason: 'torn' })).toMatchObject({ problem: true });
  });

  it('offers the reasons that fit every one of them', () => {
    expect(reasonsFor(shelf, [out.id, home.id])).toContain('torn');
    expect(reasonsFor(shelf, [out.id, master.id])).toEqual(['worn out', 'replaced', 'lost', 'given away', 'not wanted']);
    expect(reasonsFor(shelf, [])).toEqual([]);
  });
});
