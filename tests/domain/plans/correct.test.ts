import { describe, expect, it } from 'vitest';
import { apply } from '../../../src/domain/apply.ts';
import type { Celsius, ThingId } from '../../../src/domain/brand.ts';
import type { Entry } from '../../../src/domain/entry.ts';
import { beside } from '../../../src/domain/form-problem.ts';
import { planCorrect } from '../../../src/domain/plans/correct.ts';
import { planCount } from '../../../src/domain/plans/count.ts';
import { planWithdraw } from '../../../src/domain/plans/withdraw.ts';
import type { Problem } from '../../../src/domain/problem.ts';
import type { Thing } from '../../../src/domain/shelf.ts';
import { isWarning } from '../../../src/domain/warning.ts';
import { aDesk, aMould, anInjectedWax, aPlace, aShelf, aWax, codeOf, sha } from '../../support/builders.ts';
import { aMoved, anInjected, aRecorded } from '../../support/entry-builders.ts';

const mould = aMould({ code: codeOf('mould', 1), injection: { waxC: 66 as Celsius } });
const other = aMould({ code: codeOf('mould', 2) });
const cabinet = aPlace({ name: 'Cabinet', kind: 'cabinet' });
const drawer = aPlace({ name: 'A1', in: cabinet.id });
const wax = aWax();
const pile = anInjectedWax();
const shelf = aShelf([mould, other, cabinet, drawer, wax, pile]);
const plan = (of: ThingId, fields: object, pictures = [] as ReturnType<typeof sha>[]) =>
  planCorrect(shelf, aDesk(), { of, fields: { ...fields }, pictures });

describe('correcting', () => {
  it('writes down only what differs', () => {
    const entries = plan(mould.id, { name: mould.name, cavities: 6, injection: { waxC: 66 }, size: null, wax: null }) as readonly Entry[];
    expect(entries).toMatchObject([{ kind: 'corrected', noun: 'mould', of: mould.id, fields: { cavities: 6, size: null } }]);
    expect(Object.keys((entries[0] as { fields: object }).fields)).toEqual(['cavities', 'size']);
    expect(apply(shelf, entries).things.mould.get(mould.id)).toMatchObject({ cavities: 6, size: undefined });
  });

  it('writes nothing down when nothing differs', () => {
    expect(plan(mould.id, { name: mould.name, note: null })).toEqual([]);
  });

  it('gives a cabinet’s new name to the drawers that are called by it, and leaves others theirs', () => {
    const chest = aPlace({ name: 'Old chest', kind: 'cabinet' });
    const named = aPlace({ name: 'Old chest A1', label: 'A1', in: chest.id });
    const second = aPlace({ name: 'Old chest, drawer 2', in: chest.id });
    const own = aPlace({ name: 'Old chest for pins', label: 'A2', in: chest.id });
    const elsewhere = aPlace({ name: 'Old chest A1', label: 'A1', in: cabinet.id });
    const there = aShelf([cabinet, chest, named, second, own, elsewhere]);
    const renamed = planCorrect(there, aDesk(), { of: chest.id, fields: { name: 'New chest' } }) as readonly Entry[];
    const places = apply(there, renamed).things.place;
    expect([chest, named, second, own, elsewhere].map(({ id }) => places.get(id)?.name)).toEqual([
      'New chest',
      'New chest A1',
      'New chest, drawer 2',
      'Old chest for pins',
      'Old chest A1',
    ]);
    expect(renamed[1]?.step).toBe(renamed[0]?.id);
    const long = planCorrect(there, aDesk(), { of: chest.id, fields: { name: 'x'.repeat(117) } }) as readonly Entry[];
    expect(apply(there, long).things.place.get(named.id)?.name).toBe(`${'x'.repeat(117)} A1`);
    expect(apply(there, long).things.place.get(second.id)?.name).toBe('Old chest, drawer 2');
  });

  it('adds pictures', () => {
    expect(plan(mould.id, {}, [sha(3)])).toMatchObject([{ fields: {}, pictures: [sha(3)] }]);
  });

  it('gives a new code, but not one that something else carries', () => {
    expect(plan(mould.id, { code: codeOf('mould', 8) })).toMatchObject([{ fields: { code: codeOf('mould', 8) } }]);
    expect(beside(plan(mould.id, { code: other.code }) as Problem, 'code')).toContain('Dolphin 1 already');
  });

  it.each([
    ['a name cleared', mould.id, { name: null }, 'name'],
    ['a place inside itself', cabinet.id, { in: drawer.id }, 'in'],
    ['a place in itself', drawer.id, { in: drawer.id }, 'in'],
    ['a range turned round from one end', wax.id, { roomHighC: 12 }, 'roomHighC'],
    ['text for a number', wax.id, { keepGrams: 'much' }, 'keepGrams'],
  ] as const)('is refused with %s', (_, of, fields, field) => {
    expect(beside(plan(of, fields) as Problem, field)).toMatch(/\w/);
  });

  it('is refused for what is gone', () => {
    expect(plan('gone' as ThingId, { name: 'A' })).toMatchObject({ kept: 'Nothing was changed; what you typed is still in the form.' });
  });
});

describe('counting', () => {
  it('puts the pieces of a pile at what was counted', () => {
    const entries = planCount(shelf, aDesk(), { of: pile.id, pieces: 0 }) as readonly Entry[];
    expect(apply(shelf, entries).things.injectedWax.get(pile.id)).toMatchObject({ pieces: 0 });
  });

  it('is refused below nothing, in halves, and for what is no pile', () => {
    for (const pieces of [-1, 0.5])
      expect(beside(planCount(shelf, aDesk(), { of: pile.id, pieces }) as Problem, 'pieces')).toMatch(/whole number/);
    expect(planCount(shelf, aDesk(), { of: mould.id, pieces: 3 })).toMatchObject({ says: 'Only injected waxes and castings are counted.' });
  });
});

describe('taking back', () => {
  it('takes the whole action back', () => {
    const first = aMoved();
    const second = aMoved({ step: first.id });
    expect(planWithdraw(shelf, aDesk(), { entry: second, whole: [first, second] })).toMatchObject([{ kind: 'withdrawn', entry: first.id }]);
  });

  it('asks first when things stand in the place, or the waxes were used', () => {
    const recording = aRecorded('place', { name: 'B1' });
    const placed = { ...aPlace(), id: recording.id as never };
    const warned = planWithdraw(aShelf([placed, aMould({ at: placed.id })]), aDesk(), { entry: recording, whole: [recording] });
    expect(isWarning(warned) && warned.warnings[0]).toContain('1 thing stands in Drawer A2');
    const run = anInjected({ good: 39, onto: pile.id });
    const used = planWithdraw(shelf, aDesk(), { entry: run, whole: [run] });
    expect(isWarning(used) && used.warnings[0]).toContain('Of the 39 waxes this run made, 33 are still on hand');
    expect(planWithdraw(shelf, aDesk(), { entry: run, whole: [run], confirmed: true })).toHaveLength(1);
  });

  it('asks before a mould with shots goes out of sight', () => {
    const recording = aRecorded('mould', { name: 'New' });
    const thing = aMould({ id: recording.id as never, shots: 7 });
    expect(isWarning(planWithdraw(aShelf([thing]), aDesk(), { entry: recording, whole: [recording] }))).toBe(true);
    expect(planWithdraw(aShelf([{ ...thing, shots: 0 }]), aDesk(), { entry: recording, whole: [recording] })).toHaveLength(1);
  });

  it('says all that goes with it, when it was recorded with others in one go', () => {
    const first = aRecorded('place', { name: 'B1' });
    const others = ['Bull', 'Heron'].map((name) => aRecorded('mould', { name }, { step: first.id }));
    const shots = anInjected({ mould: others[0]?.id as never, shots: 88, good: 0, step: first.id });
    const whole = [first, ...others, shots];
    const things = [
      { ...aPlace(), id: first.id as never },
      ...others.map(({ id }, i) => aMould({ id: id as never, at: first.id as never, shots: i === 0 ? 88 : 0 })),
    ];
    const warned = (more: readonly Thing[]) => planWithdraw(aShelf([...things, ...more]), aDesk(), { entry: others[1] ?? first, whole });
    expect(warned([])).toMatchObject({
      warnings: ['All that was recorded in the same go would go out of sight: 1 place, 2 moulds.'],
    });
    const later = aMould({ id: others[1]?.id as never, at: first.id as never, shots: 5 });
    const more = [later, aMould({ at: first.id as never })];
    expect(warned(more)).toMatchObject({
      warnings: [
        expect.stringContaining('1 place, 2 moulds'),
        '1 thing stands in its places and would have no place.',
        'Its moulds have 5 shots logged since, which would go out of sight with them.',
      ],
    });
  });
});
