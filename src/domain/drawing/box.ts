import type { FrontRect } from '../front-layout.ts';

/** Edges are moved to whole multiples of this, mm. */
export const GRID_MM = 5;
/** Smallest side of a front, mm. */
export const LEAST_MM = 15;
/** Fronts with no more than a board or a rail between them are neighbours, mm. */
export const NEXT_MM = 30;
/** Boxes are kept in tenths of a millimetre: less than half of one is no overlap. */
const EPSILON = 0.05;

export type Axis = 'x' | 'y';
export const SIDES = ['left', 'right', 'top', 'bottom'] as const;
export type Side = (typeof SIDES)[number];

export interface Span {
  readonly low: number;
  readonly high: number;
}

export function tenths(mm: number): number {
  return Math.round(mm * 10) / 10;
}

export function snapped(mm: number): number {
  return Math.round(mm / GRID_MM) * GRID_MM;
}

export function axisOf(side: Side): Axis {
  return side === 'left' || side === 'right' ? 'x' : 'y';
}

/** From where to where a box reaches along an axis, mm. */
export function spanOf(box: FrontRect, axis: Axis): Span {
  return axis === 'x' ? { low: box.x, high: tenths(box.x + box.w) } : { low: box.y, high: tenths(box.y + box.h) };
}

export function withSpan(box: FrontRect, axis: Axis, { low, high }: Span): FrontRect {
  const [from, size] = [tenths(low), tenths(tenths(high) - tenths(low))];
  return axis === 'x' ? { ...box, x: from, w: size } : { ...box, y: from, h: size };
}

export function boxOf(x: Span, y: Span): FrontRect {
  return withSpan(withSpan({ x: 0, y: 0, w: 0, h: 0 }, 'x', x), 'y', y);
}

export function meets(a: Span, b: Span): boolean {
  return a.low < b.high - EPSILON && b.low < a.high - EPSILON;
}

export function overlap(a: FrontRect, b: FrontRect): boolean {
  return meets(spanOf(a, 'x'), spanOf(b, 'x')) && meets(spanOf(a, 'y'), spanOf(b, 'y'));
}

export function isInside(inner: Span, outer: Span): boolean {
  return inner.low >= outer.low - EPSILON && inner.high <= outer.high + EPSILON;
}

export function hullSpan(boxes: readonly FrontRect[], axis: Axis): Span {
  const spans = boxes.map((box) => spanOf(box, axis));
  return { low: Math.min(...spans.map(({ low }) => low)), high: Math.max(...spans.map(({ high }) => high)) };
}

/** The smallest box around all of these. */
export function hullOf(boxes: readonly FrontRect[]): FrontRect {
  return boxOf(hullSpan(boxes, 'x'), hullSpan(boxes, 'y'));
}

export function isTooSmall({ w, h }: FrontRect): boolean {
  return w < LEAST_MM || h < LEAST_MM;
}
