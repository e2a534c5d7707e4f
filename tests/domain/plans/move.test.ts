import { describe, expect, it } from 'vitest';
import { apply } from '../../../src/domain/apply.ts';
import type { PlaceId, ThingId } from '../../../src/domain/brand.ts';
import type { Entry } from '../../../src/domain/entry.ts';
import { beside } from '../../../src/domain/form-problem.ts';
import { planLend, planPutBack } from '../../../src/domain/plans/lend.ts';
import { planMove } from '../../../src/domain/plans/move.ts';
import type { Problem } from '../../../src/domain/problem.ts';
import { isWarning } from '../../../src/domain/warning.ts';
import { aDesign, aDesk, aMould, anInjectedWax, aPlace, aShelf, day } from '../../support/builders.ts';

const cabinet = aPlace({ name: 'Cabinet', kind: 'cabinet' });
const a1 = aPlace({ name: 'A1', in: cabinet.id });
const a2 = aPlace({ name: 'A2', in: cabinet.id, capacity: 36 });
const one = aMould({ name: 'One', at: a1.id });
const two = aMould({ name: 'Two', at: a1.id });
const pile = anInjectedWax({ at: a1.id });
const design = aDesign();
const shelf = aShelf([cabinet, a1, a2, one, two, pile, design]);

describe('moving', () => {
  it('takes several things in one entry, each once, and the new place becomes theirs', () => {
    const entries = planMove(shelf, aDesk(), { things: [one.id, two.id, one.id], to: a2.id }) as readonly Entry[];
    expect(entries).toMatchObject([{ kind: 'moved', things: [one.id, two.id], to: a2.id }]);
    const after = apply(shelf, entries);
    expect(after.things.mould.get(two.id)).toMatchObject({ at: a2.id });
    expect(after.things.mould.get(two.id)?.usual).toBeUndefined();
    expect(after.contents.get(a1.id)).toEqual(new Set([pile.id]));
  });

  it('to somebody who has things away keeps the usual place, as a loan does', () => {
    const plater = aPlace({ name: 'Plater', kind: 'away' });
    const entries = planMove(aShelf([a1, plater, one]), aDesk(), { things: [one.id], to: plater.id });
    expect(entries).toMatchObject([{ usual: 'kept' }]);
    expect(planMove(shelf, aDesk(), { things: [one.id], to: a2.id })).not.toHaveProperty('0.usual');
  });

  it('leaves out what stands there already, and is refused when all do', () => {
    expect(planMove(shelf, aDesk(), { things: [one.id], to: a1.id })).toMatchObject({ says: 'It stands in A1 already.' });
    const both = aShelf([a1, a2, one, aMould({ ...two, at: a2.id })]);
    expect(planMove(both, aDesk(), { things: [one.id, two.id], to: a2.id })).toMatchObject([{ things: [one.id] }]);
  });

  it('puts a place into another by a correction, never into itself', () => {
    const shelf2 = aPlace({ name: 'Shelf', kind: 'shelf' });
    const more = aShelf([cabinet, a1, a2, shelf2]);
    expect(planMove(more, aDesk(), { things: [cabinet.id], to: shelf2.id })).toMatchObject([
      { kind: 'corrected', noun: 'place', of: cabinet.id, fields: { in: shelf2.id } },
    ]);
    expect(planMove(more, aDesk(), { things: [a1.id], to: a1.id })).toMatchObject({ says: 'A1 cannot stand in itself.' });
    expect(planMove(more, aDesk(), { things: [cabinet.id], to: a1.id })).toMatchObject({
      says: 'Cabinet cannot go into A1, which stands in it.',
    });
  });

  it('warns when the place would be over-full, counting the pieces of piles', () => {
    const warned = planMove(shelf, aDesk(), { things: [one.id, two.id, pile.id, pile.id], to: a2.id });
    expect(warned).toHaveLength(1);
    const small = aShelf([a1, { ...a2, capacity: 34 }, one, two, pile]);
    const over = planMove(small, aDesk(), { things: [one.id, two.id, pile.id], to: a2.id });
    expect(isWarning(over) && over.warnings).toEqual(['A2 is made for 34 and would hold 35.']);
    expect(planMove(small, aDesk(), { things: [one.id, two.id, pile.id], to: a2.id, confirmed: true })).toHaveLength(1);
  });

  it('warns when the place is out of use', () => {
    const gone = { ...a2, retired: { on: day('2024-02-03'), reason: 'removed' as const } };
    const warned = planMove(aShelf([a1, gone, one]), aDesk(), { things: [one.id], to: a2.id });
    expect(isWarning(warned) && warned.warnings).toEqual(['A2 is out of use: removed.']);
  });

  it.each([
    ['nothing', { things: [], to: a2.id }, 'things'],
    ['no place', { things: [one.id], to: undefined }, 'to'],
    ['a place that is gone', { things: [one.id], to: 'gone' as PlaceId }, 'to'],
    ['a day gone by', { things: [one.id], to: a2.id, until: day('2024-03-04') }, 'until'],
  ] as const)('is refused with %s', (_, command, field) => {
    expect(beside(planMove(shelf, aDesk(), command) as Problem, field)).toMatch(/\w/);
  });

  it('is refused for what stands nowhere, and for what is gone', () => {
    expect(planMove(shelf, aDesk(), { things: [one.id, design.id], to: a2.id })).toMatchObject({
      says: 'Dolphin toggle is a design: it stands nowhere and cannot be moved.',
      kept: 'Nothing has been moved.',
    });
    expect(planMove(shelf, aDesk(), { things: ['gone' as ThingId], to: a2.id })).toMatchObject({ kept: 'Nothing has been moved.' });
  });
});

describe('lending', () => {
  const until = day('2024-04-01');

  it('records the holder the first time, and remembers the usual place', () => {
    const entries = planLend(shelf, aDesk(), { things: [one.id], holder: ' The plater ', until }) as readonly Entry[];
    expect(entries).toMatchObject([
      { kind: 'recorded', noun: 'place', fields: { kind: 'away', name: 'The plater', holder: 'The plater' } },
      { kind: 'moved', things: [one.id], until, usual: 'kept', step: entries[0]?.id },
    ]);
    const after = apply(shelf, entries);
    expect(after.things.mould.get(one.id)).toMatchObject({ at: entries[0]?.id, usual: a1.id, until });
    const again = planLend(after, aDesk(), { things: [two.id], holder: 'the PLATER' });
    expect(again).toMatchObject([{ kind: 'moved', to: entries[0]?.id }]);
    const back = planPutBack(after, aDesk(), [one.id]) as readonly Entry[];
    const home = apply(after, back).things.mould.get(one.id);
    expect(home).toMatchObject({ at: a1.id });
    expect(home?.until).toBeUndefined();
  });

  it('is refused without a holder, back before today, or for a place', () => {
    expect(beside(planLend(shelf, aDesk(), { things: [one.id], holder: '  ' }) as Problem, 'holder')).toBe('Say who has it.');
    expect(beside(planLend(shelf, aDesk(), { things: [one.id], holder: 'x'.repeat(121) }) as Problem, 'holder')).toBe(
      'That is 121 characters; 120 fit here.',
    );
    expect(beside(planLend(shelf, aDesk(), { things: [one.id], holder: 'Ann', until: day('2024-03-04') }) as Problem, 'until')).toMatch(
      /gone by/,
    );
    expect(planLend(shelf, aDesk(), { things: [a1.id], holder: 'Ann' })).toMatchObject({ kept: 'Nothing has been lent.' });
  });

  it('puts things back each in its own place, and says which has none', () => {
    const away = aPlace({ name: 'Ann', kind: 'away' });
    const out = [aMould({ name: 'Out one', at: away.id, usual: a1.id }), aMould({ name: 'Out two', at: away.id, usual: a2.id })] as const;
    const things = [out[0].id, out[1].id];
    expect(planPutBack(aShelf([a1, a2, away, ...out]), aDesk(), things)).toMatchObject([{ to: a1.id }, { to: a2.id }]);
    expect(planPutBack(shelf, aDesk(), [one.id])).toMatchObject({
      says: 'Nobody has said where One usually stands. Choose a place for it.',
    });
  });
});
