import type { FrontRect } from '../front-layout.ts';
import type { Problem } from '../problem.ts';
import { boxOf, isTooSmall, meets, overlap, spanOf } from './box.ts';
import { type Drawing, type DrawnFront, type FrontKind, tooMany, undrawn, wrongAmong } from './drawing.ts';
import { nextLabels } from './labels.ts';

/** A new front in the largest free space, or where it was drawn, mm. */
export function addFront(drawing: Drawing, kind: FrontKind, drawn?: FrontRect): Drawing | Problem {
  const box = drawn ?? freeSpace(drawing);
  if (!box || isTooSmall(box))
    return undrawn(drawn ? 'That is too small for a front.' : 'No space is free. Cut a front in two, or make the cabinet larger.');
  const last = drawing.fronts.at(-1);
  const [label = ''] = last ? nextLabels(drawing, last.label, 1) : ['1'];
  const front: DrawnFront = { key: `new-${drawing.next}`, label, kind, periods: [], box };
  const fronts = [...drawing.fronts, front];
  const wrong = tooMany(fronts.length) ?? wrongAmong(drawing, fronts, (key) => key === front.key);
  return wrong ?? { ...drawing, fronts, next: drawing.next + 1 };
}

/** The largest box that covers no front, of those that begin where a front ends. */
function freeSpace({ widthMm, heightMm, fronts }: Drawing): FrontRect | undefined {
  const starts = (axis: 'x' | 'y') => [...new Set([0, ...fronts.flatMap(({ box }) => [spanOf(box, axis).low, spanOf(box, axis).high])])];
  let best: FrontRect | undefined;
  for (const x of starts('x')) {
    for (const y of starts('y')) {
      const wide = widest(fronts, x, y, widthMm, heightMm);
      if (wide && (!best || wide.w * wide.h > best.w * best.h)) best = wide;
    }
  }
  return best;
}

/** From a corner as far right as it is free, then as far down. */
function widest(fronts: readonly DrawnFront[], x: number, y: number, right: number, bottom: number): FrontRect | undefined {
  let [high, low] = [right, bottom];
  const sliver = { low: y, high: y + 1 };
  for (const { box } of fronts)
    if (meets(spanOf(box, 'y'), sliver) && spanOf(box, 'x').high > x + 0.05) high = Math.min(high, Math.max(x, spanOf(box, 'x').low));
  const across = { low: x, high };
  for (const { box } of fronts)
    if (meets(spanOf(box, 'x'), across) && spanOf(box, 'y').high > y + 0.05) low = Math.min(low, Math.max(y, spanOf(box, 'y').low));
  const box = boxOf(across, { low: y, high: low });
  return isTooSmall(box) || fronts.some((front) => overlap(front.box, box)) ? undefined : box;
}
