import { describe, expect, it } from 'vitest';
import type { PlaceId } from '../../../src/domain/brand.ts';
import { addFront } from '../../../src/domain/drawing/add.ts';
import { describeFronts } from '../../../src/domain/drawing/details.ts';
import { type Drawing, resizeCabinet, startDrawing } from '../../../src/domain/drawing/drawing.ts';
import { moveEdge } from '../../../src/domain/drawing/edge.ts';
import { nextLabels, numberAnew } from '../../../src/domain/drawing/labels.ts';
import { mergeFronts } from '../../../src/domain/drawing/merge.ts';
import { boxBetween, frontBeside, moveFronts, placeFront, swapFronts } from '../../../src/domain/drawing/move.ts';
import { removeFronts } from '../../../src/domain/drawing/remove.ts';
import { splitFronts } from '../../../src/domain/drawing/split.ts';
import { must } from '../../support/drawings.ts';

/** Two columns of three, 600 × 300 mm: 1 2 3 on the left, 4 5 6 on the right. */
const six = must(splitFronts(startDrawing(600, 300), ['new-1'], 3, 2));
const boxOfLabel = (drawing: Drawing, label: string) => drawing.fronts.find((front) => front.label === label)?.box;
const keyOf = (label: string, drawing = six) => drawing.fronts.find((front) => front.label === label)?.key ?? '';
const keysOf = (...labels: string[]) => labels.map((label) => keyOf(label));
/** As a drawing of recorded drawers. */
const recorded: Drawing = { ...six, fronts: six.fronts.map((front) => ({ ...front, of: `place ${front.label}` as PlaceId })) };

describe('cutting', () => {
  it('goes down each column, numbered on from the first', () => {
    expect(six.fronts.map(({ label, box }) => [label, box.x, box.y])).toEqual([
      ['1', 0, 0],
      ['2', 0, 100],
      ['3', 0, 200],
      ['4', 300, 0],
      ['5', 300, 100],
      ['6', 300, 200],
    ]);
  });

  it('shares out what fits, and keeps kind and periods', () => {
    const said = must(describeFronts(six, keysOf('2'), { capacity: 7, kind: 'shelf' }));
    const cut = must(splitFronts(said, keysOf('2'), 1, 3));
    const parts = cut.fronts.filter(({ kind }) => kind === 'shelf');
    expect(parts.map(({ label, capacity }) => [label, capacity])).toEqual([
      ['2', 3],
      ['7', 2],
      ['8', 2],
    ]);
  });

  it('is refused below the smallest front, above 400 of them, and without a number', () => {
    expect(splitFronts(six, keysOf('1'), 9, 1)).toMatchObject({ says: '1 is too small to be cut in 9.' });
    expect(splitFronts(startDrawing(9000, 9000), ['new-1'], 20, 21)).toMatchObject({
      says: 'That makes 420 fronts; 400 fit in one cabinet here.',
    });
    expect(splitFronts(six, keysOf('1'), 1, 1)).toHaveProperty('problem');
    expect(splitFronts(six, [], 2, 1)).toHaveProperty('problem');
  });
});

describe('merging', () => {
  it('keeps the first recorded front and says where the others’ contents go', () => {
    const merged = must(mergeFronts(recorded, keysOf('2', '3')));
    expect(merged.fronts.find(({ label }) => label === '2')).toMatchObject({ of: 'place 2', box: { x: 0, y: 100, w: 300, h: 200 } });
    expect(merged.gone).toEqual([{ of: 'place 3', label: '3', to: keyOf('2') }]);
  });

  it('is refused around a corner', () => {
    expect(mergeFronts(six, keysOf('1', '5'))).toMatchObject({ says: '2 is in the way: together they would not make one straight front.' });
    expect(mergeFronts(six, keysOf('1'))).toHaveProperty('problem');
  });
});

describe('taking out', () => {
  it('what was to go into a front that is taken out goes where its own contents go', () => {
    const once = must(removeFronts(recorded, keysOf('1'), keyOf('2')));
    const twice = must(removeFronts(once, keysOf('2'), keyOf('6')));
    expect(twice.gone).toEqual([
      { of: 'place 1', label: '1', to: keyOf('6') },
      { of: 'place 2', label: '2', to: keyOf('6') },
    ]);
    expect(removeFronts(recorded, keysOf('1', '2'), keyOf('2'))).toMatchObject({ says: expect.stringContaining('2 is taken out itself.') });
  });

  it('leaves room in which a new front fits', () => {
    const room = must(removeFronts(six, keysOf('2', '5')));
    expect(boxOfLabel(must(addFront(room, 'box')), '7')).toEqual({ x: 0, y: 100, w: 600, h: 100 });
    expect(addFront(six, 'drawer')).toMatchObject({ says: expect.stringContaining('No space is free.') });
    expect(addFront(room, 'drawer', boxBetween({ x: 8, y: 104 }, { x: 92, y: 38 }))).toMatchObject({
      says: '7 and 1 would cover each other.',
    });
  });
});

describe('moving edges', () => {
  it('a neighbour gives way, and follows', () => {
    const wider = must(moveEdge(six, keysOf('2'), 'right', 40));
    expect([boxOfLabel(wider, '2')?.w, boxOfLabel(wider, '5')]).toEqual([340, { x: 340, y: 100, w: 260, h: 100 }]);
    const narrower = must(moveEdge(six, keysOf('2'), 'right', -40));
    expect([boxOfLabel(narrower, '2')?.w, boxOfLabel(narrower, '5')?.x]).toEqual([260, 260]);
  });

  it('of a whole column go together, those between following', () => {
    const column = must(moveEdge(six, keysOf('1', '2', '3'), 'right', 50));
    expect(column.fronts.map(({ box }) => box.w)).toEqual([350, 350, 350, 250, 250, 250]);
  });

  it('leaves what stands beyond a neighbour no thicker than a gap where it is', () => {
    const four = must(splitFronts(startDrawing(200, 200), ['new-1'], 1, 4));
    const five = must(splitFronts(four, ['new-1'], 1, 2));
    const wider = must(moveEdge(five, ['new-1'], 'right', 5));
    expect(wider.fronts.map(({ box }) => [box.x, box.w]).sort(([a = 0], [b = 0]) => a - b)).toEqual([
      [0, 30],
      [30, 20],
      [50, 50],
      [100, 50],
      [150, 50],
    ]);
  });

  it('stops at the cabinet and before a neighbour is too small', () => {
    expect(moveEdge(six, keysOf('1'), 'left', 10)).toMatchObject({ says: 'It reaches the edge of the cabinet already.' });
    expect(moveEdge(six, keysOf('1'), 'bottom', 90)).toMatchObject({ says: '2 beside it would be too small.' });
    expect(moveEdge(six, keysOf('1'), 'bottom', -90)).toMatchObject({ says: '1 would be too small.' });
  });
});

describe('moving fronts', () => {
  it('snaps to 5 mm where it is free, and nowhere else', () => {
    const room = must(removeFronts(six, keysOf('2', '5')));
    expect(boxOfLabel(must(moveFronts(room, keysOf('1'), 0, 33)), '1')).toMatchObject({ x: 0, y: 35 });
    expect(moveFronts(six, keysOf('1'), 0, 33)).toMatchObject({ says: '1 and 2 would cover each other.' });
    expect(placeFront(six, keyOf('6'), { x: 400, y: 250, w: 300, h: 50 })).toMatchObject({ says: '6 would stick out of the cabinet.' });
    expect(placeFront(six, keyOf('6'), { x: Number.NaN, y: 250, w: 30, h: 50 })).toHaveProperty('problem');
  });

  it('two change places, on lists too', () => {
    const swapped = must(swapFronts(six, keysOf('1', '6')));
    expect(swapped.fronts.map(({ label }) => label)).toEqual(['6', '2', '3', '4', '5', '1']);
    expect(boxOfLabel(swapped, '6')).toMatchObject({ x: 0, y: 0 });
  });

  it('arrow keys find the front straight ahead', () => {
    const from = six.fronts[1] as Drawing['fronts'][number];
    expect((['left', 'right', 'top', 'bottom'] as const).map((side) => frontBeside(six, from, side)?.label)).toEqual([
      undefined,
      '5',
      '1',
      '3',
    ]);
  });
});

describe('labels', () => {
  it('go on from the one beside them, and can be given anew in three ways', () => {
    expect(nextLabels(six, 'A4', 2)).toEqual(['A5', 'A6']);
    expect(nextLabels(six, '4', 2)).toEqual(['7', '8']);
    expect(nextLabels(six, 'top', 1)).toEqual(['top2']);
    const labels = (how: Parameters<typeof numberAnew>[1]) =>
      numberAnew(six, how).fronts.map(({ key, label }) => `${keyOf('1') === key ? '*' : ''}${label}`);
    expect(labels('across')).toEqual(['*1', '2', '3', '4', '5', '6']);
    expect(numberAnew(six, 'across').fronts.map(({ box }) => [box.x, box.y])[1]).toEqual([300, 0]);
    expect(labels('columns')).toEqual(['*A1', 'A2', 'A3', 'B1', 'B2', 'B3']);
  });

  it('are refused when another front has them, for several at once, and when too long', () => {
    expect(describeFronts(six, keysOf('1'), { label: '2' })).toMatchObject({ says: 'There is a front called 2 already.' });
    expect(describeFronts(six, keysOf('1', '3'), { label: '9' })).toHaveProperty('problem');
    expect(describeFronts(six, keysOf('1'), { label: 'x'.repeat(25) })).toHaveProperty('problem');
    expect(describeFronts(six, keysOf('1'), { capacity: -1 })).toHaveProperty('problem');
  });
});

it('a cabinet of another size takes its fronts along', () => {
  const larger = must(resizeCabinet(six, 900, 600));
  expect(boxOfLabel(larger, '6')).toEqual({ x: 450, y: 400, w: 450, h: 200 });
  expect(resizeCabinet(six, 20, 300)).toHaveProperty('problem');
  expect(resizeCabinet(six, Number.NaN, 300)).toHaveProperty('problem');
});
