import { expect, test } from 'vitest';
import { startDrawing } from '../../src/domain/drawing/drawing.ts';
import { drawingOf } from '../../src/domain/drawing/drawing-of.ts';
import { mergeFronts } from '../../src/domain/drawing/merge.ts';
import { heldInFronts } from '../../src/views/drawing-holds.ts';
import { frontsOf } from '../../src/views/fronts.ts';
import { roomsOf } from '../../src/views/rooms.ts';
import { aMould, anInjectedWax, aPlace, aShelf, day } from '../support/builders.ts';
import { must } from '../support/drawings.ts';

const workshop = aPlace({ name: 'Workshop', kind: 'room', order: 1 });
const loft = aPlace({ name: 'Loft', kind: 'room', order: 3 });
const chest = aPlace({ name: 'Chest', kind: 'cabinet', in: workshop.id, order: 2 });
const index = aPlace({ name: 'Card index', kind: 'cabinet', in: workshop.id, order: 1 });
const rack = aPlace({ name: 'Rack', kind: 'cabinet', order: 2 });
const gone = aPlace({ name: 'Old', kind: 'cabinet', retired: { on: day('2024-01-01'), reason: 'removed' } });
const box = (y: number) => ({ x: 0, y, w: 400, h: 100 });
const a1 = aPlace({ label: 'A1', in: chest.id, box: box(0), order: 1 });
const a2 = aPlace({ label: 'A2', kind: 'drawer', open: true, in: chest.id, box: box(100), order: 2 });
const tin = aPlace({ name: 'Tin', kind: 'box', in: a2.id });
const shelf = aShelf([
  workshop,
  loft,
  chest,
  index,
  rack,
  gone,
  a1,
  a2,
  tin,
  aMould({ at: a1.id }),
  aMould({ at: a2.id }),
  anInjectedWax({ at: tin.id, pieces: 12 }),
]);

test('rooms come with their cabinets in the studio’s order, those in no room first, and what is gone is left out', () => {
  expect(roomsOf(shelf).map(({ name, cabinets }) => [name, cabinets.map((each) => each.name)])).toEqual([
    ['In no room', ['Rack']],
    ['Workshop', ['Card index', 'Chest']],
    ['Loft', []],
  ]);
  expect(roomsOf(shelf)[1]?.cabinets[1]?.says).toBe('2 fronts, 14 pieces');
  expect(roomsOf(aShelf([loft]))).toHaveLength(1);
});

test('the shelves show cabinets room by room, and an open front as one', () => {
  const { cabinets } = frontsOf(shelf, new Map());
  expect(cabinets.map(({ name, room }) => [name, room])).toEqual([
    ['Rack', undefined],
    ['Card index', 'Workshop'],
    ['Chest', 'Workshop'],
  ]);
  expect(cabinets[2]?.fronts.map(({ isOpen }) => isOpen)).toEqual([false, true]);
});

test('a front of a drawing holds what stands in it, in boxes too, and what was merged into it', () => {
  const drawing = drawingOf(shelf, chest);
  expect(heldInFronts(shelf, drawing, [a2.id])).toEqual({ pieces: 13, says: '1 mould, 12 injected waxes, 1 box or cabinet' });
  const merged = must(mergeFronts(drawing, [a1.id, a2.id]));
  expect(heldInFronts(shelf, merged, [a1.id]).pieces).toBe(14);
  expect(heldInFronts(shelf, startDrawing(100, 100), ['new-1'])).toEqual({ pieces: 0, says: '' });
});
