import { expect, test } from 'vitest';
import { childrenOf, pathText, placesWithin } from '../../src/domain/nesting.ts';
import { aPlace, aShelf } from '../support/builders.ts';

const room = aPlace({ kind: 'room', name: 'Wax room' });
const chest = aPlace({ kind: 'cabinet', name: 'Plan chest', label: 'PC', in: room.id });
const ten = aPlace({ name: 'Tenth drawer', label: 'A10', in: chest.id, order: 7 });
const two = aPlace({ name: 'Second drawer', label: 'A2', in: chest.id, order: 7 });
const first = aPlace({ name: 'Last drawer', label: 'Z', in: chest.id, order: 1 });
const box = aPlace({ kind: 'box', name: 'Tin', in: two.id });
const shelf = aShelf([room, chest, ten, two, first, box]);

test('a path names the cabinet and the labels inside it, without the room', () => {
  expect(pathText(shelf, two.id)).toBe('Plan chest › A2');
  expect(pathText(shelf, box.id)).toBe('Plan chest › A2 › Tin');
  expect(pathText(shelf, room.id)).toBe('Wax room');
  expect(pathText(shelf, undefined)).toBe('');
});

test('children come in the studio’s order, then by label as numbers are counted', () => {
  expect(childrenOf(shelf).get(chest.id)).toEqual([first, two, ten]);
  expect(childrenOf(shelf).get(undefined)).toEqual([room]);
});

test('a place whose outer place is not recorded stands at the top', () => {
  const stray = aPlace({ in: room.id });
  expect(childrenOf(aShelf([stray])).get(undefined)).toEqual([stray]);
});

test('a place holds itself and all that is in it, also when two places are in each other', () => {
  expect(placesWithin(shelf, chest.id)).toEqual([chest.id, first.id, two.id, ten.id, box.id]);
  const a = aPlace();
  const b = aPlace({ in: a.id });
  const ring = aShelf([{ ...a, in: b.id }, b]);
  expect(placesWithin(ring, a.id)).toEqual([a.id, b.id]);
});
