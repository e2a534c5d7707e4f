import { expect, test } from 'vitest';
import type { PlaceId, Sha256 } from '../../src/domain/brand.ts';
import { foldAll } from '../../src/domain/fold.ts';
import { underDrawing } from '../../src/views/under-drawing.ts';
import { aRecorded } from '../support/entry-builders.ts';

const sha = (digit: string) => digit.repeat(64) as Sha256;

test('a cabinet can be drawn over its own pictures and those of its room, each once; a new one over those of the room chosen', () => {
  const room = aRecorded('place', { name: 'Cellar', kind: 'room' }, { pictures: [sha('1'), sha('2')] });
  const within = { in: room.id as string as PlaceId };
  const cabinet = aRecorded('place', { name: 'Map chest', kind: 'cabinet', ...within }, { pictures: [sha('3'), sha('1')] });
  const shelf = foldAll([room, cabinet]);
  const place = shelf.things.place.get(cabinet.id as string as PlaceId);
  expect(underDrawing(shelf, place, room.id)).toEqual([sha('3'), sha('1'), sha('2')]);
  expect(underDrawing(shelf, place, '')).toEqual([sha('3'), sha('1')]);
  expect(underDrawing(shelf, undefined, room.id)).toEqual([sha('1'), sha('2')]);
  expect(underDrawing(shelf, undefined, '')).toEqual([]);
});
