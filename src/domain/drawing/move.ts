import type { FrontRect } from '../front-layout.ts';
import type { Problem } from '../problem.ts';
import { boxOf, hullOf, type Side, snapped, spanOf, tenths } from './box.ts';
import { type Drawing, type DrawnFront, frontsOfKeys, undrawn, withBoxes } from './drawing.ts';

/** Moves fronts together, onto the grid, as far as the cabinet goes. */
export function moveFronts(drawing: Drawing, keys: readonly string[], acrossMm: number, downMm: number): Drawing | Problem {
  const chosen = frontsOfKeys(drawing, keys);
  if (chosen.length === 0) return undrawn('Choose the front to move first.');
  const hull = hullOf(chosen.map(({ box }) => box));
  const shift = (from: number, size: number, by: number, limit: number) =>
    by === 0 ? 0 : Math.min(limit - size, Math.max(0, snapped(from + by))) - from;
  const [x, y] = [shift(hull.x, hull.w, acrossMm, drawing.widthMm), shift(hull.y, hull.h, downMm, drawing.heightMm)];
  if (x === 0 && y === 0) return undrawn('It stands at the edge of the cabinet already.');
  return withBoxes(drawing, new Map(chosen.map(({ key, box }) => [key, { ...box, x: tenths(box.x + x), y: tenths(box.y + y) }])));
}

/** Puts one front exactly there, mm. */
export function placeFront(drawing: Drawing, key: string, { x, y, w, h }: FrontRect): Drawing | Problem {
  return withBoxes(drawing, new Map([[key, { x: tenths(x), y: tenths(y), w: tenths(w), h: tenths(h) }]]));
}

/** Two fronts change places, on the cabinet and on lists; where their sizes differ each takes the other's. */
export function swapFronts(drawing: Drawing, keys: readonly string[]): Drawing | Problem {
  const [one, two, ...more] = frontsOfKeys(drawing, keys);
  if (!one || !two || more.length > 0) return undrawn('Choose the two fronts that change places.');
  const fronts = drawing.fronts.map((front) =>
    front.key === one.key ? { ...two, box: one.box } : front.key === two.key ? { ...one, box: two.box } : front,
  );
  return { ...drawing, fronts };
}

/** The nearest front on that side, for going about with the arrow keys. */
export function frontBeside({ fronts }: Drawing, from: DrawnFront, side: Side): DrawnFront | undefined {
  const [axis, cross] = side === 'left' || side === 'right' ? (['x', 'y'] as const) : (['y', 'x'] as const);
  const sign = side === 'right' || side === 'bottom' ? 1 : -1;
  const middle = ({ box }: DrawnFront, along: 'x' | 'y') => (spanOf(box, along).low + spanOf(box, along).high) / 2;
  let best: { readonly front: DrawnFront; readonly far: number } | undefined;
  for (const front of fronts) {
    const ahead = sign * (middle(front, axis) - middle(from, axis));
    if (front.key === from.key || ahead <= 0) continue;
    const off = Math.max(0, spanOf(front.box, cross).low - middle(from, cross), middle(from, cross) - spanOf(front.box, cross).high);
    // Straight ahead before nearer but off to the side.
    const far = ahead + 4 * off;
    if (!best || far < best.far) best = { front, far };
  }
  return best?.front;
}

/** A box dragged out between two corners, on the grid. */
export function boxBetween(a: { readonly x: number; readonly y: number }, b: { readonly x: number; readonly y: number }): FrontRect {
  const span = (one: number, two: number) => ({ low: snapped(Math.min(one, two)), high: snapped(Math.max(one, two)) });
  return boxOf(span(a.x, b.x), span(a.y, b.y));
}
