import type { FrontRect } from '../front-layout.ts';
import { isProblem, type Problem } from '../problem.ts';
import { boxOf, isTooSmall, type Span, spanOf } from './box.ts';
import { type Drawing, type DrawnFront, frontsOfKeys, tooMany, undrawn } from './drawing.ts';
import { nextLabels } from './labels.ts';

/** Cuts each of these fronts into so many one above the other and side by side. The first part stays what the front was, with its label and what is in it. */
export function splitFronts(drawing: Drawing, keys: readonly string[], rows: number, columns: number): Drawing | Problem {
  const chosen = frontsOfKeys(drawing, keys);
  if (chosen.length === 0) return undrawn('Choose the front to cut first.');
  if (![rows, columns].every((count) => Number.isInteger(count) && count >= 1) || rows * columns < 2)
    return undrawn('Say in how many it is to be cut: two or more.');
  const many = tooMany(drawing.fronts.length + chosen.length * (rows * columns - 1));
  if (many) return many;
  let next: Drawing = drawing;
  for (const front of chosen) {
    const cut = splitOne(next, front, rows, columns);
    if (isProblem(cut)) return cut;
    next = cut;
  }
  return next;
}

function splitOne(drawing: Drawing, front: DrawnFront, rows: number, columns: number): Drawing | Problem {
  const boxes = cells(front.box, rows, columns);
  if (boxes.some(isTooSmall)) return undrawn(`${front.label} is too small to be cut in ${rows * columns}.`);
  const labels = nextLabels(drawing, front.label, boxes.length - 1);
  const { of: _, ...like } = front;
  const parts = boxes.map((box, at): DrawnFront => {
    const own = at === 0 ? front : { ...like, key: `new-${drawing.next + at - 1}`, label: labels[at - 1] ?? '' };
    return { ...own, box, ...shareOf(front.capacity, at, boxes.length) };
  });
  const fronts = drawing.fronts.flatMap((each) => (each.key === front.key ? parts : [each]));
  return { ...drawing, fronts, next: drawing.next + boxes.length - 1 };
}

/** Half a drawer takes half as many pieces; what does not divide stays with the first. */
function shareOf(capacity: number | undefined, at: number, count: number): { readonly capacity?: number } {
  if (capacity === undefined) return {};
  const share = Math.floor(capacity / count);
  return { capacity: at === 0 ? capacity - share * (count - 1) : share };
}

/** Column by column, each from the top, edge to edge: the shadow between two fronts is drawn, not measured. */
function cells(box: FrontRect, rows: number, columns: number): readonly FrontRect[] {
  const across = pieces(spanOf(box, 'x'), columns);
  const down = pieces(spanOf(box, 'y'), rows);
  return across.flatMap((x) => down.map((y) => boxOf(x, y)));
}

/** Cut at whole millimetres. */
function pieces({ low, high }: Span, count: number): readonly Span[] {
  const cut = (at: number) => (at === 0 ? low : at === count ? high : Math.round(low + ((high - low) * at) / count));
  return Array.from({ length: count }, (_, at) => ({ low: cut(at), high: cut(at + 1) }));
}
