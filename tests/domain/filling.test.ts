import { expect, test } from 'vitest';
import { addPlacesOfDesign, piecesByPlace, piecesIn } from '../../src/domain/filling.ts';
import { aCasting, aDesign, aMaster, aMould, aPlace, aShelf, day } from '../support/builders.ts';

const drawer = aPlace();
const other = aPlace();
const design = aDesign();
const shelf = aShelf([
  drawer,
  other,
  design,
  aMould({ at: drawer.id, design: design.id }),
  aMould({ at: drawer.id, retired: { on: day('2024-02-01'), reason: 'torn' } }),
  aMould({ at: drawer.id, retired: { on: day('2024-02-01'), reason: 'torn' } }),
  aMould({ at: drawer.id, retired: { on: day('2024-02-01'), reason: 'lost' } }),
  aMould({ at: drawer.id, retired: { on: day('2024-02-01'), reason: 'given away' } }),
  aMaster({ at: other.id, design: design.id }),
  aCasting({ at: drawer.id, design: design.id, pieces: 26 }),
  aCasting({ at: drawer.id, pieces: 0 }),
  aCasting({ design: design.id, pieces: 5 }),
]);

test('a pile counts its pieces and a mould one; what is lost or given away takes no room, what is worn out does', () => {
  expect(piecesByPlace(shelf, 'mould').get(drawer.id)).toBe(3);
  expect(piecesByPlace(shelf, 'casting').get(drawer.id)).toBe(26);
  expect(piecesIn(shelf, drawer.id)).toBe(29);
  expect(piecesIn(shelf, other.id)).toBe(1);
});

test('the places of a design are summed over moulds, masters and piles', () => {
  const places = new Map();
  addPlacesOfDesign(shelf, design.id, places);
  expect([...places]).toEqual([
    [drawer.id, 27],
    [other.id, 1],
  ]);
});
