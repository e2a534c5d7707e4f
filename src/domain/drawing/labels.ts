import { type Axis, LEAST_MM } from './box.ts';
import type { Drawing, DrawnFront } from './drawing.ts';

/** The next labels in the row that one belongs to, none of them in use: after A4 come A5 and A6. */
export function nextLabels(drawing: Drawing, like: string, count: number): readonly string[] {
  const used = new Set(drawing.fronts.map(({ label }) => label));
  const [, stem = '', digits = ''] = /^(.*?)(\d*)$/s.exec(like) ?? [];
  const labels: string[] = [];
  for (let number = digits === '' ? 2 : Number(digits) + 1; labels.length < count; number++) {
    const label = `${stem.slice(0, 24 - String(number).length)}${number}`;
    if (!used.has(label)) labels.push(label);
  }
  return labels;
}

/** A, B … Z, AA, AB … */
export function letterOf(column: number): string {
  const letter = String.fromCharCode(65 + (column % 26));
  return column < 26 ? letter : letterOf(Math.floor(column / 26) - 1) + letter;
}

export const NUMBERINGS = ['down', 'across', 'columns'] as const;
export type Numbering = (typeof NUMBERINGS)[number];

/** New labels for all fronts in the order they are read, which also becomes their order on lists: 1, 2, 3 down or across, or A1, A2, B1 by columns. */
export function numberAnew(drawing: Drawing, how: Numbering): Drawing {
  const columns = lanesOf(drawing.fronts, 'x');
  const rows = lanesOf(drawing.fronts, 'y');
  const place = (lanes: ReadonlyMap<string, number>, { key }: DrawnFront) => lanes.get(key) ?? 0;
  const [first, second] = how === 'across' ? [rows, columns] : [columns, rows];
  const sorted = [...drawing.fronts].sort((a, b) => place(first, a) - place(first, b) || place(second, a) - place(second, b));
  const counts = new Map<number, number>();
  const fronts = sorted.map((front, index) => {
    const column = place(columns, front);
    const inColumn = (counts.get(column) ?? 0) + 1;
    counts.set(column, inColumn);
    return { ...front, label: how === 'columns' ? `${letterOf(column)}${inColumn}` : String(index + 1) };
  });
  return { ...drawing, fronts };
}

/** In which column (or row) each front begins; edges closer than the smallest front are one. */
function lanesOf(fronts: readonly DrawnFront[], axis: Axis): ReadonlyMap<string, number> {
  const sorted = [...fronts].sort((a, b) => a.box[axis] - b.box[axis]);
  const lanes = new Map<string, number>();
  let lane = -1;
  let start = Number.NEGATIVE_INFINITY;
  for (const { key, box } of sorted) {
    if (box[axis] - start >= LEAST_MM) {
      lane += 1;
      start = box[axis];
    }
    lanes.set(key, lane);
  }
  return lanes;
}
