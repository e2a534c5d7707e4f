import fc from 'fast-check';
import { expect, test } from 'vitest';
import { hullOf } from '../../../src/domain/drawing/box.ts';
import { type Drawing, wrongWith } from '../../../src/domain/drawing/drawing.ts';
import { moveEdge } from '../../../src/domain/drawing/edge.ts';
import { did, firstStep, redone, type Steps, undone } from '../../../src/domain/drawing/history.ts';
import { mergeFronts } from '../../../src/domain/drawing/merge.ts';
import { splitFronts } from '../../../src/domain/drawing/split.ts';
import { isProblem } from '../../../src/domain/problem.ts';
import { anyDrawing, anyStep, areaOf, faultsIn, must, orAsItWas } from '../../support/drawings.ts';

const count = fc.integer({ min: 1, max: 5 });
const RUNS = { numRuns: 150 };

/** A drawing and one of its fronts, with a capacity that does not divide. */
const withOne = fc.tuple(anyDrawing, fc.nat(60)).filter(([drawing]) => drawing.fronts.length > 0);
const pick = (drawing: Drawing, at: number) => drawing.fronts[at % drawing.fronts.length] as Drawing['fronts'][number];

test('whatever is done, no two fronts cover each other or have one label, none sticks out, and what is refused changes nothing', () => {
  fc.assert(
    fc.property(anyDrawing, fc.array(anyStep, { maxLength: 8 }), (start, steps) => {
      let drawing = start;
      for (const step of steps) {
        const before = JSON.stringify(drawing);
        const next = step(drawing);
        expect(JSON.stringify(drawing)).toBe(before);
        drawing = orAsItWas(next, drawing);
        expect(faultsIn(drawing)).toEqual([]);
        expect(wrongWith(drawing)).toBeUndefined();
      }
    }),
    RUNS,
  );
});

test('cutting a front keeps its area and its outline, and merging the parts gives back the front', () => {
  fc.assert(
    fc.property(withOne, count, count, fc.nat(99), ([drawing, at], rows, columns, capacity) => {
      const front = pick(drawing, at);
      const known = { ...drawing, fronts: drawing.fronts.map((each) => (each === front ? { ...each, capacity } : each)) };
      const cut = splitFronts(known, [front.key], rows, columns);
      if (isProblem(cut)) return;
      expect(areaOf(cut)).toBeCloseTo(areaOf(known), 3);
      const parts = cut.fronts.filter(({ key }) => key === front.key || !known.fronts.some((each) => each.key === key));
      expect(parts).toHaveLength(rows * columns);
      expect(hullOf(parts.map(({ box }) => box))).toEqual(front.box);
      expect(
        must(
          mergeFronts(
            cut,
            parts.map(({ key }) => key),
          ),
        ).fronts,
      ).toEqual(known.fronts);
    }),
    RUNS,
  );
});

test('an edge between two halves, moved and moved back, is where it was', () => {
  fc.assert(
    fc.property(withOne, fc.boolean(), fc.integer({ min: -8, max: 8 }), ([drawing, at], isDown, by) => {
      const front = pick(drawing, at);
      const cut = splitFronts(drawing, [front.key], isDown ? 2 : 1, isDown ? 1 : 2);
      if (isProblem(cut)) return;
      const side = isDown ? 'bottom' : 'right';
      const edge = isDown ? front.box.y + (pickPart(cut, front.key)?.box.h ?? 0) : front.box.x + (pickPart(cut, front.key)?.box.w ?? 0);
      if (edge % 5 !== 0) return;
      const moved = moveEdge(cut, [front.key], side, by * 5);
      if (isProblem(moved)) return;
      expect(areaOf(moved)).toBeCloseTo(areaOf(cut), 3);
      // To a thousandth of a millimetre: halves of odd widths are sums of fractions.
      const back = must(moveEdge(moved, [front.key], side, -by * 5)).fronts;
      expect(inThousandths(back)).toEqual(inThousandths(cut.fronts));
    }),
    RUNS,
  );
});

const inThousandths = (fronts: Drawing['fronts']) =>
  JSON.parse(JSON.stringify(fronts, (_, value) => (typeof value === 'number' ? Math.round(value * 1000) + 0 : value)));

const pickPart = (drawing: Drawing, key: string) => drawing.fronts.find((each) => each.key === key);

test('undo goes back through every step to the first, and redo forward to the last', () => {
  fc.assert(
    fc.property(anyDrawing, fc.array(anyStep, { maxLength: 10 }), (start, steps) => {
      let all: Steps = firstStep(start);
      const seen = [start];
      for (const step of steps) {
        const next = step(all.now);
        if (isProblem(next)) continue;
        all = did(all, next);
        seen.push(next);
      }
      const last = all;
      for (let at = seen.length - 2; at >= 0 && all.past.length > 0; at--) {
        all = undone(all);
        expect(all.now).toEqual(seen[at]);
      }
      while (all.future.length > 0) all = redone(all);
      expect(all.now).toEqual(last.now);
      expect(all.past).toEqual(last.past);
    }),
    RUNS,
  );
});

test('the steps remembered stay few enough to be kept with the draft', () => {
  const wide = must(splitFronts({ ...firstStep(must(splitOne())).now }, ['new-1'], 10, 10));
  let steps = firstStep(wide);
  for (let at = 0; at < 100; at++) steps = did(steps, { ...wide, next: at + 1000 });
  expect(steps.past.length).toBe(16);
  expect(JSON.stringify(steps).length).toBeLessThan(400_000);
  expect(steps.past.at(-1)?.next).toBe(1098);
});

function splitOne() {
  return {
    widthMm: 2000,
    heightMm: 2000,
    gone: [],
    next: 2,
    fronts: [{ key: 'new-1', label: '1', kind: 'drawer', periods: [], box: { x: 0, y: 0, w: 2000, h: 2000 } }],
  } as Drawing;
}
