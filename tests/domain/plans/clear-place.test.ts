import { describe, expect, it } from 'vitest';
import { apply } from '../../../src/domain/apply.ts';
import type { Entry } from '../../../src/domain/entry.ts';
import { beside } from '../../../src/domain/form-problem.ts';
import { isGone } from '../../../src/domain/gone.ts';
import { type ClearPlace, planClearPlace } from '../../../src/domain/plans/clear-place.ts';
import { planOrderPlaces } from '../../../src/domain/plans/order-places.ts';
import { isProblem, type Problem } from '../../../src/domain/problem.ts';
import type { Place } from '../../../src/domain/shelf.ts';
import { aDesk, aMould, aPlace, aShelf, day } from '../../support/builders.ts';

const room = aPlace({ name: 'Workshop', kind: 'room' });
const loft = aPlace({ name: 'Loft', kind: 'room' });
const chest = aPlace({ name: 'Chest', kind: 'cabinet', in: room.id });
const a1 = aPlace({ name: 'A1', in: chest.id });
const a2 = aPlace({ name: 'A2', in: chest.id });
const tin = aPlace({ name: 'Tin', kind: 'box', in: a1.id });
const other = aPlace({ name: 'Other drawer' });
const [one, two] = [aMould({ at: a1.id }), aMould({ at: a2.id })];
const shelf = aShelf([room, loft, chest, a1, a2, tin, other, one, two]);
const plan = (command: Partial<ClearPlace>) => planClearPlace(shelf, aDesk(), { of: chest.id, reason: 'removed', ...command });

describe('taking out a place', () => {
  it('a cabinet goes with its drawers; what is in them goes elsewhere, all in one action', () => {
    const entries = plan({ to: other.id }) as readonly Entry[];
    const after = apply(shelf, entries);
    expect(after.contents.get(other.id)).toEqual(new Set([one.id, two.id]));
    expect(after.things.place.get(tin.id)?.in).toBe(other.id);
    for (const { id } of [chest, a1, a2]) expect(isGone(after, after.things.place.get(id) as Place)).toBe(true);
    expect(new Set(entries.map(({ id, step }) => step ?? id)).size).toBe(1);
  });

  it('a room lets its cabinets go to another room, or to none', () => {
    const after = apply(shelf, plan({ of: room.id, to: loft.id }) as readonly Entry[]);
    expect(after.things.place.get(chest.id)?.in).toBe(loft.id);
    expect(after.things.mould.get(one.id)?.at).toBe(a1.id);
    expect(apply(shelf, plan({ of: room.id }) as readonly Entry[]).things.place.get(chest.id)).toMatchObject({
      id: chest.id,
      in: undefined,
    });
  });

  it('is refused while things would have no place, and into itself', () => {
    const says = (command: Partial<ClearPlace>) => beside(plan(command) as Problem, 'to');
    expect(says({})).toBe('Say where the 2 things in Chest go first.');
    expect(says({ to: a2.id })).toContain('is taken out itself');
    expect(says({ to: tin.id })).toContain('cannot go into Tin');
    expect(says({ of: room.id, to: a1.id })).toContain('Chest cannot go into A1');
    expect(says({ to: one.id as string as Place['id'] })).toContain('no longer recorded');
    const gone = aShelf([chest, a1, one, aPlace({ ...other, retired: { on: day('2024-01-01'), reason: 'broken' } })]);
    expect(isProblem(planClearPlace(gone, aDesk(), { of: chest.id, to: other.id, reason: 'removed' }))).toBe(true);
    expect(isProblem(plan({ to: other.id, reason: 'torn' }))).toBe(true);
    expect(isProblem(plan({ of: one.id as string as Place['id'], to: other.id }))).toBe(true);
  });
});

it('cabinets are put in order, writing down only what changes', () => {
  const [a, b] = [aPlace({ kind: 'cabinet', order: 1 }), aPlace({ kind: 'cabinet', order: 2 })];
  const c = aPlace({ kind: 'cabinet', order: 3 });
  const three = aShelf([a, b, c]);
  expect(planOrderPlaces(three, aDesk(), [b.id, a.id, c.id])).toMatchObject([
    { of: b.id, fields: { order: 1 } },
    { of: a.id, fields: { order: 2 } },
  ]);
  expect(planOrderPlaces(three, aDesk(), [a.id, b.id, c.id])).toEqual([]);
  expect(isProblem(planOrderPlaces(three, aDesk(), [a.id, a.id]))).toBe(true);
  expect(isProblem(planOrderPlaces(aShelf([a]), aDesk(), [a.id, b.id]))).toBe(true);
});
