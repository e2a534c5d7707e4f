import fc from 'fast-check';
import { addFront } from '../../src/domain/drawing/add.ts';
import { overlap, SIDES } from '../../src/domain/drawing/box.ts';
import { type Drawing, resizeCabinet, startDrawing } from '../../src/domain/drawing/drawing.ts';
import { moveEdge } from '../../src/domain/drawing/edge.ts';
import { NUMBERINGS, numberAnew } from '../../src/domain/drawing/labels.ts';
import { mergeFronts } from '../../src/domain/drawing/merge.ts';
import { moveFronts, placeFront, swapFronts } from '../../src/domain/drawing/move.ts';
import { removeFronts } from '../../src/domain/drawing/remove.ts';
import { splitFronts } from '../../src/domain/drawing/split.ts';
import { isProblem, type Problem } from '../../src/domain/problem.ts';

export type Step = (drawing: Drawing) => Drawing | Problem;

const chosen = (picks: readonly number[]) => (drawing: Drawing) =>
  picks.flatMap((pick) => drawing.fronts[pick % Math.max(1, drawing.fronts.length)]?.key ?? []);
const picks = fc.array(fc.nat(40), { minLength: 1, maxLength: 4 }).map(chosen);
const count = fc.integer({ min: 1, max: 4 });
const mm = fc.integer({ min: -120, max: 120 });

/** Any one thing that can be done to a drawing, on whichever fronts; much of it is refused. */
export const anyStep: fc.Arbitrary<Step> = fc.oneof(
  fc.record({ picks, rows: count, columns: count }).map((s) => (d: Drawing) => splitFronts(d, s.picks(d), s.rows, s.columns)),
  fc.record({ picks, rows: count, columns: count }).map((s) => (d: Drawing) => splitFronts(d, s.picks(d), s.rows, s.columns)),
  picks.map((keys) => (d: Drawing) => mergeFronts(d, keys(d))),
  fc.record({ picks, side: fc.constantFrom(...SIDES), by: mm }).map((s) => (d: Drawing) => moveEdge(d, s.picks(d), s.side, s.by)),
  fc.record({ picks, across: mm, down: mm }).map((s) => (d: Drawing) => moveFronts(d, s.picks(d), s.across, s.down)),
  fc.record({ picks, x: fc.nat(900), y: fc.nat(900), w: fc.integer({ min: 1, max: 400 }), h: fc.integer({ min: 1, max: 400 }) }).map(
    ({ picks: keys, ...box }) =>
      (d: Drawing) =>
        placeFront(d, keys(d)[0] ?? '', box),
  ),
  picks.map((keys) => (d: Drawing) => removeFronts(d, keys(d))),
  fc.constant((d: Drawing) => addFront(d, 'shelf')),
  picks.map((keys) => (d: Drawing) => swapFronts(d, keys(d))),
  fc.constantFrom(...NUMBERINGS).map((how) => (d: Drawing) => numberAnew(d, how)),
  fc.record({ w: fc.integer({ min: 200, max: 1400 }), h: fc.integer({ min: 200, max: 1400 }) }).map(
    ({ w, h }) =>
      (d: Drawing) =>
        resizeCabinet(d, w, h),
  ),
);

/** A drawing that somebody came to by any steps; those refused changed nothing. */
export const anyDrawing: fc.Arbitrary<Drawing> = fc
  .array(anyStep, { maxLength: 12 })
  .map((steps) => steps.reduce((drawing, step) => orAsItWas(step(drawing), drawing), startDrawing(900, 1000)));

export function orAsItWas(next: Drawing | Problem, before: Drawing): Drawing {
  return isProblem(next) ? before : next;
}

export function areaOf(drawing: Drawing): number {
  return drawing.fronts.reduce((sum, { box }) => sum + box.w * box.h, 0);
}

/** Labels of fronts that cover each other or stick out, for a message; empty when all is well. */
export function faultsIn({ fronts, widthMm, heightMm }: Drawing): readonly string[] {
  return fronts.flatMap(({ key, label, box }, at) => [
    ...(box.x < 0 || box.y < 0 || box.x + box.w > widthMm + 0.1 || box.y + box.h > heightMm + 0.1 ? [`${label} sticks out`] : []),
    ...fronts.slice(at + 1).flatMap((other) => (overlap(box, other.box) ? [`${label} covers ${other.label}`] : [])),
    ...fronts.slice(at + 1).flatMap((other) => (other.key === key ? [`${label} and ${other.label} are one`] : [])),
    ...fronts.slice(at + 1).flatMap((other) => (other.label === label ? [`${label} is there twice`] : [])),
  ]);
}

/** What must be done, in a test: a refusal fails it. */
export function must(drawing: Drawing | Problem): Drawing {
  if (isProblem(drawing)) throw new Error(drawing.says);
  return drawing;
}
