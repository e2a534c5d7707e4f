import { expect, test } from 'vitest';
import type { PlaceId, Sha256 } from '../../src/domain/brand.ts';
import { foldAll } from '../../src/domain/fold.ts';
import type { Place } from '../../src/domain/shelf.ts';
import { underDrawing } from '../../src/views/under-drawing.ts';
import { aRecorded } from '../support/entry-builders.ts';

const sha = (digit: string) => digit.repeat(64) as Sha256;

test('a cabinet can be drawn over its own pictures and those of its room first, each once; then over those of any other place', () => {
  const room = aRecorded('place', { name: 'Cellar', kind: 'room' }, { pictures: [sha('1'), sha('2')] });
  const within = { in: room.id as string as PlaceId };
  const cabinet = aRecorded('place', { name: 'Map chest', kind: 'cabinet', ...within }, { pictures: [sha('3'), sha('1')] });
  const rack = aRecorded('place', { name: 'Rack 10', kind: 'cabinet' }, { pictures: [sha('4'), sha('2')] });
  const small = aRecorded('place', { name: 'Rack 9', kind: 'cabinet' }, { pictures: [sha('5')] });
  const shelf = foldAll([room, cabinet, rack, small]);
  const place = shelf.things.place.get(cabinet.id as string as PlaceId);
  const said = (of: Place | undefined, inRoom: string) => {
    const { near, others } = underDrawing(shelf, of, inRoom);
    return [near, others].map((pictures) => pictures.map((each) => `${each.sha.slice(0, 1)} ${each.of}`));
  };
  const racks = ['5 Rack 9', '4 Rack 10'];
  expect(said(place, room.id)).toEqual([['3 Map chest, 1', '1 Map chest, 2', '2 Cellar'], racks]);
  expect(said(place, '')).toEqual([
    ['3 Map chest, 1', '1 Map chest, 2'],
    ['2 Cellar', ...racks],
  ]);
  expect(said(undefined, room.id)).toEqual([
    ['1 Cellar, 1', '2 Cellar, 2'],
    ['3 Map chest', ...racks],
  ]);
  expect(said(undefined, '')[0]).toEqual([]);
});
