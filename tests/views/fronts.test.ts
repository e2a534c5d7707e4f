import { expect, test } from 'vitest';
import { frontInWords, markInWords } from '../../src/views/front-words.ts';
import { frontsOf } from '../../src/views/fronts.ts';
import type { PlaceMarks } from '../../src/views/place-mark.ts';
import { aMaster, aMould, anInjectedWax, aPeriod, aPlace, aShelf, day } from '../support/builders.ts';

const minoan = aPeriod({ name: 'Minoan' });
const room = aPlace({ kind: 'room', name: 'Wax room' });
const chest = aPlace({ kind: 'cabinet', name: 'Plan chest', in: room.id, widthMm: 900, heightMm: 400 });
const box = { x: 15, y: 12, w: 870, h: 95 };
const drawer = aPlace({ name: 'Plan chest, top drawer', label: 'A3', in: chest.id, box, periods: [minoan.id], capacity: 40 });
const tin = aPlace({ kind: 'box', name: 'Tin', in: drawer.id });
const away = aPlace({ kind: 'away', name: 'At the plater' });
const moulds = Array.from({ length: 14 }, () => aMould({ at: drawer.id }));
const shelf = aShelf([
  minoan,
  room,
  chest,
  drawer,
  tin,
  away,
  ...moulds,
  aMaster({ at: tin.id }),
  anInjectedWax({ at: chest.id, pieces: 9 }),
  aMould(),
]);
const marks: PlaceMarks = new Map([
  [drawer.id, [{ kind: 'stray', level: 'note', count: 2 }]],
  [tin.id, [{ kind: 'worn', level: 'act', count: 1 }]],
]);

test('a cabinet shows its drawers to scale, with what is in them and in the boxes inside', () => {
  const { cabinets } = frontsOf(shelf, marks);
  expect(cabinets).toHaveLength(1);
  expect(cabinets[0]).toMatchObject({
    name: 'Plan chest',
    room: 'Wax room',
    widthMm: 900,
    heightMm: 400,
    isDrawn: true,
    pieces: 24,
    loose: 9,
  });
  expect(cabinets[0]?.fronts[0]).toMatchObject({
    label: 'A3',
    name: 'top drawer',
    rect: box,
    pieces: 15,
    counts: { mould: 14, master: 1 },
    capacity: 40,
  });
});

test('marks of a drawer and the boxes in it come together, worst first, and rise to the cabinet', () => {
  const [cabinet] = frontsOf(shelf, marks).cabinets;
  expect(cabinet?.marks.map(markInWords)).toEqual(['1 worn', '2 stray']);
  expect(cabinet?.fronts[0]?.marks).toEqual(cabinet?.marks);
});

test('a mark says one thing or several', () => {
  expect([1, 2].map((count) => markInWords({ kind: 'master unsound', level: 'soon', count }))).toEqual([
    '1 unsound master',
    '2 unsound masters',
  ]);
});

test('a mark about wax says that it may be about the month to come', () => {
  expect(markInWords({ kind: 'wax wrong', level: 'soon', count: 2 })).toBe('2 wax wrong this month or next');
});

test('a front says itself in a sentence', () => {
  const front = frontsOf(shelf, marks).cabinets[0]?.fronts[0];
  expect(front && frontInWords(front)).toBe('Drawer A3, Minoan, 14 moulds, 1 master, 1 worn, 2 stray');
});

test('what belongs to no cabinet, and what stands nowhere, is not forgotten', () => {
  const { elsewhere, nowhere, things } = frontsOf(shelf, marks);
  expect(elsewhere.map(({ label }) => label)).toEqual(['At the plater']);
  expect([nowhere, things]).toEqual([1, 23]);
});

test('a room that holds things itself is listed, and a retired cabinet is not drawn', () => {
  const gone = { ...chest, retired: { on: day('2024-04-01'), reason: 'not wanted' as const } };
  const { cabinets, elsewhere } = frontsOf(aShelf([room, gone, aMaster({ at: room.id })]), new Map());
  expect([cabinets.length, elsewhere.map(({ label }) => label)]).toEqual([0, ['Wax room']]);
});

test('two cabinets put into each other are both drawn, once', () => {
  const a = aPlace({ kind: 'cabinet', name: 'One' });
  const b = aPlace({ kind: 'cabinet', name: 'Other', in: a.id });
  expect(frontsOf(aShelf([{ ...a, in: b.id }, b]), new Map()).cabinets.map(({ name }) => name)).toEqual(['One', 'Other']);
});

test('places put into each other on two phones are shown, and what is in them is counted once', () => {
  const a = aPlace({ kind: 'box', name: 'Tin' });
  const b = aPlace({ kind: 'box', name: 'Tray', in: a.id });
  const { elsewhere } = frontsOf(aShelf([{ ...a, in: b.id }, b, aMould({ at: b.id }), aMaster({ at: a.id })]), new Map());
  expect(elsewhere.map(({ label, pieces }) => [label, pieces])).toEqual([['Tin', 2]]);
});

test('a place taken out of use is drawn as long as something is in it, or in a box inside it', () => {
  const retired = { on: day('2024-04-01'), reason: 'removed' as const };
  const full = { ...drawer, retired };
  const empty = aPlace({ label: 'A4', in: chest.id, retired });
  const inTin = aMaster({ at: tin.id });
  const drawn = (...things: Parameters<typeof aShelf>[0] & object) =>
    frontsOf(aShelf([chest, full, empty, tin, aPlace({ label: 'A5', in: chest.id }), ...things]), new Map()).cabinets[0]?.fronts.map(
      ({ label }) => label,
    );
  expect(drawn(inTin)).toEqual(['A3', 'A5']);
  expect(drawn()).toEqual(['A5']);
  expect(drawn({ ...inTin, retired: { ...retired, reason: 'lost' } })).toEqual(['A5']);
});

test('it is plain data, fit to be remembered, and the very same while nothing changed', () => {
  const fronts = frontsOf(shelf, marks);
  expect(structuredClone(fronts)).toEqual(JSON.parse(JSON.stringify(fronts)));
  expect(frontsOf(shelf, marks)).toBe(fronts);
  expect(frontsOf(shelf, new Map())).not.toBe(fronts);
});
