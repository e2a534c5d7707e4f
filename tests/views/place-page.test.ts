import { expect, test } from 'vitest';
import type { Flag } from '../../src/domain/flag.ts';
import { placePage, rowsNowhere } from '../../src/views/place-page.ts';
import { aCasting, aMould, aPeriod, aPlace, aShelf, day, nextId } from '../support/builders.ts';

const period = aPeriod({ name: 'Coptic' });
const chest = aPlace({ kind: 'cabinet', name: 'Plan chest' });
const drawer = aPlace({
  name: 'Drawer three',
  label: 'A3',
  in: chest.id,
  periods: [period.id],
  capacity: 2,
  note: 'sticks in wet weather',
});
const tin = aPlace({ kind: 'box', name: 'Tin', in: drawer.id });
const away = aPlace({ kind: 'away', name: 'Lent', holder: 'the harbour museum' });
const sound = aMould({ name: 'Zebra', at: drawer.id, grade: 'sound' });
const failed = aMould({ name: 'Antelope', at: drawer.id, grade: 'failed' });
const inTin = aMould({ name: 'Bee', at: tin.id });
const lent = aMould({ name: 'Crane', at: away.id, until: day('2024-06-11') });
const nowhere = aMould({ name: 'Dove' });
const shelf = aShelf([period, chest, drawer, tin, away, sound, failed, inTin, lent, nowhere, aCasting({ at: drawer.id, pieces: 0 })]);
const stray: Flag = { kind: 'stray', of: sound.id, level: 'note', rank: 7, says: 'It is Minoan; A3 keeps Coptic.', todo: 'Move it.' };
const flagsTo = (id: string) => (id === sound.id ? [stray] : []);

test('a drawer tells where it is, what fits, and what stands in it and in its boxes: sound things first, used-up waxes and castings not', () => {
  const page = placePage(shelf, drawer.id, new Map(), flagsTo);
  expect(page).toMatchObject({
    title: 'Drawer three',
    path: 'Plan chest › A3',
    room: 'over-full by 1',
    isOverFull: true,
    onFront: { cabinet: chest.id },
  });
  expect(page?.periods.map(({ name }) => name)).toEqual(['Coptic']);
  expect(page?.rows.map(({ title, detail }) => [title, detail])).toEqual([
    ['Bee', expect.stringMatching(/^in Tin · mould/)],
    ['Zebra', expect.stringMatching(/^mould/)],
    ['Antelope', expect.stringMatching(/^mould/)],
  ]);
  expect(page?.facts).toEqual([{ name: 'Note', says: 'sticks in wet weather' }]);
});

test('who has things away is told to the form that lends more, and a place out of use says so', () => {
  expect(placePage(shelf, away.id, new Map(), flagsTo)).toMatchObject({ holder: 'the harbour museum', states: [] });
  const removed = { ...tin, retired: { on: day('2024-05-02'), reason: 'removed' as const } };
  const without = aShelf([chest, drawer, removed]);
  expect(placePage(without, tin.id, new Map(), flagsTo)?.states).toEqual([{ name: 'retired', word: 'removed' }]);
  expect(placePage(without, drawer.id, new Map(), flagsTo)?.inside).toEqual([]);
});

test('a stray is marked with why', () => {
  const row = placePage(shelf, drawer.id, new Map(), flagsTo)?.rows.find(({ id }) => id === sound.id);
  expect(row?.flags).toEqual([{ kind: 'stray', level: 'note', word: 'stray', says: stray.says }]);
});

test('who has what away, and until when', () => {
  const page = placePage(shelf, away.id, new Map(), flagsTo);
  expect(page?.facts).toEqual([{ name: 'Who has the things', says: 'the harbour museum' }]);
  expect(page?.rows[0]).toMatchObject({ title: 'Crane', until: '2024-06-11', detail: expect.stringContaining('until 11 June 2024') });
  expect(page?.onFront).toBeNull();
});

test('what has no place is listed by itself', () => {
  expect(rowsNowhere(shelf, flagsTo).map(({ title }) => title)).toEqual(['Dove']);
});

test('a place with room to spare, a full one, and none at all', () => {
  const fitting = (capacity: number) => placePage(aShelf([{ ...drawer, capacity }, sound]), drawer.id, new Map(), flagsTo)?.room;
  expect([fitting(5), fitting(1)]).toEqual(['room for 4 more', 'just full']);
  expect(placePage(shelf, nextId(), new Map(), flagsTo)).toBeUndefined();
});
