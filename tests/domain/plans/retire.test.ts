import { describe, expect, it } from 'vitest';
import { apply } from '../../../src/domain/apply.ts';
import type { Entry } from '../../../src/domain/entry.ts';
import { rulesOf } from '../../../src/domain/flag.ts';
import { flagsOf, lookAt } from '../../../src/domain/flags.ts';
import { NOUNS } from '../../../src/domain/noun.ts';
import { planRetire } from '../../../src/domain/plans/retire.ts';
import { REASONS, RETIREMENTS } from '../../../src/domain/retirement.ts';
import { type Shelf, type Thing, thingOf } from '../../../src/domain/shelf.ts';
import { aDesign, aDesk, aMaster, aMould, anInjectedWax, anInjector, aPlace, aShelf, aWax, day } from '../../support/builders.ts';

const TODAY = day('2024-03-05');
const flags = (shelf: Shelf, id: string) => {
  const thing = thingOf(shelf, id) as Thing;
  return flagsOf(thing, lookAt(shelf, rulesOf(TODAY, {}))).map(({ kind }) => kind);
};

describe('retiring', () => {
  it('has reasons for every kind of thing, each one that an entry can name', () => {
    for (const noun of NOUNS) {
      expect(REASONS[noun].length, noun).toBeGreaterThan(1);
      expect(REASONS[noun].filter((reason) => !RETIREMENTS.includes(reason))).toEqual([]);
    }
  });

  it('ends the flags of a wax and of a master', () => {
    const design = aDesign();
    const wax = aWax({ grams: -5 });
    const master = aMaster({ design: design.id, state: 'broken' });
    const shelf = aShelf([design, wax, master, aMould({ design: design.id, grade: 'failed' })]);
    expect([flags(shelf, wax.id), flags(shelf, master.id)]).toEqual([['wax low'], ['master unsound']]);
    const retired = [
      ...(planRetire(shelf, aDesk(), { of: wax.id, reason: 'discontinued' }) as readonly Entry[]),
      ...(planRetire(shelf, aDesk(), { of: master.id, reason: 'lost' }) as readonly Entry[]),
    ];
    const after = apply(shelf, retired);
    expect([flags(after, wax.id), flags(after, master.id)]).toEqual([[], []]);
    expect(thingOf(after, master.id)?.retired).toEqual({ on: TODAY, reason: 'lost' });
  });

  it('of a place warns of what stands in it and in the places inside it, and goes through when confirmed', () => {
    const drawer = aPlace({ name: 'Top drawer' });
    const tin = aPlace({ name: 'Tin', in: drawer.id });
    const gone = aMould({ at: drawer.id, retired: { on: TODAY, reason: 'given away' } });
    const shelf = aShelf([drawer, tin, aMould({ at: drawer.id }), aMould({ at: tin.id }), anInjectedWax({ at: tin.id, pieces: 1 }), gone]);
    expect(planRetire(shelf, aDesk(), { of: drawer.id, reason: 'removed' })).toMatchObject({
      warnings: ['Still in Top drawer: 2 moulds, 1 injected wax. It stays on the shelves until they are moved out.'],
    });
    expect(planRetire(shelf, aDesk(), { of: drawer.id, reason: 'removed', confirmed: true })).toMatchObject([{ kind: 'retired' }]);
    expect(planRetire(aShelf([drawer, tin]), aDesk(), { of: drawer.id, reason: 'removed' })).toMatchObject([{ reason: 'removed' }]);
  });

  it('of a wax warns of the injector that holds it', () => {
    const wax = aWax({ name: 'Green' });
    const shelf = aShelf([wax, anInjector({ name: 'Big pot', holds: wax.id })]);
    expect(planRetire(shelf, aDesk(), { of: wax.id, reason: 'used up' })).toMatchObject({ warnings: ['Big pot holds Green.'] });
  });
});
