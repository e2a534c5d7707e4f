import type { FrontRect } from '../front-layout.ts';
import type { Problem } from '../problem.ts';
import {
  type Axis,
  axisOf,
  hullSpan,
  isInside,
  isTooSmall,
  meets,
  NEXT_MM,
  overlap,
  type Side,
  type Span,
  snapped,
  spanOf,
  withSpan,
} from './box.ts';
import { type Drawing, type DrawnFront, frontsOfKeys, undrawn, withBoxes } from './drawing.ts';

/**
 * Moves an edge of these fronts outwards by so many mm (inwards when negative), onto the grid. A neighbour gives way, and follows when there
 * is room again, so that what stood edge to edge stays so.
 */
export function moveEdge(drawing: Drawing, keys: readonly string[], side: Side, by: number): Drawing | Problem {
  const axis = axisOf(side);
  const isFar = side === 'right' || side === 'bottom';
  const chosen = frontsOfKeys(drawing, keys).filter(
    (front, _, all) => !all.some((other) => gapTo(front, other, axis, isFar) !== undefined),
  );
  if (chosen.length === 0) return undrawn('Choose the front to resize first.');
  const limit = axis === 'x' ? drawing.widthMm : drawing.heightMm;
  const boxes = new Map<string, FrontRect>();
  for (const front of chosen) {
    const span = spanOf(front.box, axis);
    const edge = isFar ? Math.min(limit, snapped(span.high + by)) : Math.max(0, snapped(span.low - by));
    boxes.set(front.key, withSpan(front.box, axis, isFar ? { ...span, high: edge } : { ...span, low: edge }));
  }
  if (chosen.every((front) => isSame(boxes.get(front.key), front.box))) return undrawn('It reaches the edge of the cabinet already.');
  const small = chosen.find((front) => isTooSmall(boxes.get(front.key) ?? front.box));
  if (small) return undrawn(`${small.label} would be too small.`);
  const across = hullSpan(
    chosen.map(({ box }) => box),
    axis === 'x' ? 'y' : 'x',
  );
  for (const other of drawing.fronts) {
    if (keys.includes(other.key)) continue;
    const given = givingWay(other, { chosen, boxes, axis, isFar, across, all: drawing.fronts });
    if (given === undefined) continue;
    if (isTooSmall(given)) return undrawn(`${other.label} beside it would be too small.`);
    boxes.set(other.key, given);
  }
  return withBoxes(drawing, boxes);
}

interface Move {
  readonly chosen: readonly DrawnFront[];
  readonly boxes: ReadonlyMap<string, FrontRect>;
  readonly axis: Axis;
  readonly isFar: boolean;
  /** How far the chosen fronts reach along the moved edge. */
  readonly across: Span;
  readonly all: readonly DrawnFront[];
}

/** The box of a neighbour after the move; undefined when it stays. */
function givingWay(other: DrawnFront, { chosen, boxes, axis, isFar, across, all }: Move): FrontRect | undefined {
  let given: FrontRect | undefined;
  for (const front of chosen) {
    const moved = boxes.get(front.key) ?? front.box;
    const gap = gapTo(front, other, axis, isFar);
    const isPushed = overlap(moved, other.box);
    const isFollowing =
      gap !== undefined && isInside(spanOf(other.box, axis === 'x' ? 'y' : 'x'), across) && !isApart(front, other, { axis, isFar, all });
    if (!isPushed && !isFollowing) continue;
    const edge = spanOf(moved, axis);
    const span = spanOf(other.box, axis);
    const next = withSpan(other.box, axis, isFar ? { ...span, low: edge.high + (gap ?? 0) } : { ...span, high: edge.low - (gap ?? 0) });
    if (!isPushed && all.some((each) => each.key !== other.key && overlap(boxes.get(each.key) ?? each.box, next))) continue;
    given = next;
  }
  return given;
}

/** Whether something stands in the gap between two fronts: one as thin as a gap may be wide, which then is the neighbour. */
function isApart(front: DrawnFront, other: DrawnFront, { axis, isFar, all }: Pick<Move, 'axis' | 'isFar' | 'all'>): boolean {
  const [own, its] = [spanOf(front.box, axis), spanOf(other.box, axis)];
  const between = withSpan(other.box, axis, isFar ? { low: own.high, high: its.low } : { low: its.high, high: own.low });
  return all.some((each) => each !== front && each !== other && overlap(each.box, between));
}

/** The gap from a front to its neighbour on that side, mm; undefined when it is none. */
function gapTo(front: DrawnFront, other: DrawnFront, axis: Axis, isFar: boolean): number | undefined {
  const [own, its] = [spanOf(front.box, axis), spanOf(other.box, axis)];
  const gap = isFar ? its.low - own.high : own.low - its.high;
  if (front.key === other.key || gap < -0.05 || gap > NEXT_MM) return undefined;
  const side = axis === 'x' ? 'y' : 'x';
  return meets(spanOf(front.box, side), spanOf(other.box, side)) ? Math.max(0, gap) : undefined;
}

function isSame(a: FrontRect | undefined, b: FrontRect): boolean {
  return a !== undefined && a.x === b.x && a.y === b.y && a.w === b.w && a.h === b.h;
}
