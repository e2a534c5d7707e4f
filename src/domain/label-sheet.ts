import { type FormProblem, formProblem } from './form-problem.ts';
import { isProblem } from './problem.ts';
import { parseTypedNumber } from './typed-number.ts';

/** How labels lie on a page; all lengths in mm, from the page's left and top edge. */
export interface SheetGrid {
  readonly pageWide: number;
  readonly pageTall: number;
  readonly left: number;
  readonly top: number;
  readonly columns: number;
  readonly rows: number;
  readonly gapAcross: number;
  readonly gapDown: number;
  readonly wide: number;
  readonly tall: number;
}
export type GridField = keyof SheetGrid;

/** Each measure of a grid as the form asks for it, with the least and the most it may be. */
export const GRID_FIELDS: readonly { readonly field: GridField; readonly word: string; readonly low: number; readonly high: number }[] = [
  { field: 'pageWide', word: 'Page, width', low: 20, high: 500 },
  { field: 'pageTall', word: 'Page, height', low: 20, high: 700 },
  { field: 'columns', word: 'Labels side by side', low: 1, high: 40 },
  { field: 'rows', word: 'Labels one below the other', low: 1, high: 60 },
  { field: 'wide', word: 'Label, width', low: 12, high: 300 },
  { field: 'tall', word: 'Label, height', low: 12, high: 300 },
  { field: 'left', word: 'From the left edge to the first label', low: 0, high: 200 },
  { field: 'top', word: 'From the top edge to the first label', low: 0, high: 200 },
  { field: 'gapAcross', word: 'Gap between labels side by side', low: 0, high: 100 },
  { field: 'gapDown', word: 'Gap between labels one below the other', low: 0, high: 100 },
];
const COUNTS: readonly GridField[] = ['columns', 'rows'];
/** Makers round their measures; half of the tenth they round to, mm. */
const ROUNDING = 0.05;

export interface Position {
  readonly x: number;
  readonly y: number;
}

/** “70 × 37 mm” is how a sheet is told from another: by size only. */
export function gridInWords({ columns, rows, wide, tall }: SheetGrid): string {
  return `${columns} × ${rows}, ${wide} × ${tall} mm`;
}

/** A grid as typed; a problem says beside each measure what is wrong, or by how much the labels do not fit on the page. */
export function parseGrid(typed: Readonly<Record<string, string>>): SheetGrid | FormProblem {
  const grid: Partial<Record<GridField, number>> = {};
  const wrong: Record<string, string> = {};
  for (const { field, word, low, high } of GRID_FIELDS) {
    const value = parseTypedNumber(typed[field] ?? '');
    if (isProblem(value)) wrong[field] = value.says;
    else if (value === undefined) wrong[field] = `${word}: how much?`;
    else if (COUNTS.includes(field) && !Number.isInteger(value)) wrong[field] = 'A whole number of labels.';
    else if (value < low || value > high) wrong[field] = `From ${low} to ${high}${COUNTS.includes(field) ? '' : ' mm'}.`;
    else grid[field] = value;
  }
  if (Object.keys(wrong).length > 0) return formProblem(wrong);
  return fitting(grid as SheetGrid);
}

function fitting(grid: SheetGrid): SheetGrid | FormProblem {
  const across = grid.left + grid.columns * grid.wide + (grid.columns - 1) * grid.gapAcross;
  const down = grid.top + grid.rows * grid.tall + (grid.rows - 1) * grid.gapDown;
  const wrong: Record<string, string> = {};
  const mm = (value: number) => `${Number(value.toFixed(1))} mm`;
  if (across > grid.pageWide + ROUNDING)
    wrong['columns'] = `${grid.columns} side by side need ${mm(across)}, and the page is ${mm(grid.pageWide)} wide.`;
  if (down > grid.pageTall + ROUNDING)
    wrong['rows'] = `${grid.rows} one below the other need ${mm(down)}, and the page is ${mm(grid.pageTall)} high.`;
  return Object.keys(wrong).length > 0 ? formProblem(wrong) : grid;
}

/** The top left corner of each label, row by row. */
export function positionsOf(grid: SheetGrid): readonly Position[] {
  return Array.from({ length: grid.columns * grid.rows }, (_, i) => ({
    x: grid.left + (i % grid.columns) * (grid.wide + grid.gapAcross),
    y: grid.top + Math.floor(i / grid.columns) * (grid.tall + grid.gapDown),
  }));
}

/**
 * Which label goes where: for each page, for each position, the label's number or undefined. `used` positions of the first sheet are
 * left empty; no page when every position of it is used and there is nothing to print.
 */
export function layOut(grid: SheetGrid, labels: number, used: readonly number[]): readonly (readonly (number | undefined)[])[] {
  const each = grid.columns * grid.rows;
  const gone = new Set(used);
  const pages: (number | undefined)[][] = [];
  for (let next = 0; next < labels; ) {
    const isFirst = pages.length === 0;
    pages.push(Array.from({ length: each }, (_, position) => (next < labels && !(isFirst && gone.has(position)) ? next++ : undefined)));
    if (isFirst && next === 0 && gone.size >= each) gone.clear();
  }
  return pages.filter((page, i) => i > 0 || pages.length === 1 || page.some((label) => label !== undefined));
}

/** Lengths a test bar may have, mm: the longer, the better it is measured. */
const TEST_BARS = [100, 50, 20, 10];
/** White around the test bar, mm. */
const BAR_EDGE = 8;
/** How far off a printer may be before a correction would hide a wrong paper size or print setting. */
const OFF_MOST = 0.1;

/** Length of the test bar that fits along the page's longer side, mm. */
export function testBarOf({ pageWide, pageTall }: SheetGrid): number {
  return TEST_BARS.find((bar) => bar + 2 * BAR_EDGE <= Math.max(pageWide, pageTall)) ?? 10;
}

/** What drawings have to be enlarged by, for a printer whose test bar measures so much, mm; 1 when nothing was typed. */
export function correctionFor(typed: string, bar: number): number | FormProblem {
  const measured = parseTypedNumber(typed);
  if (measured === undefined) return 1;
  if (isProblem(measured)) return formProblem({ measured: measured.says });
  if (Math.abs(measured / bar - 1) > OFF_MOST) {
    return formProblem({
      measured: `A bar of ${bar} mm that measures ${Number(measured.toFixed(1))} mm was not printed at true size: choose 100 % and the right paper in the print window, then measure again.`,
    });
  }
  return bar / measured;
}
