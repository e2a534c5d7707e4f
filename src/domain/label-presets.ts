import { gridInWords, type SheetGrid } from './label-sheet.ts';

export interface SheetPreset {
  readonly id: string;
  readonly word: string;
  readonly grid: SheetGrid;
  /** Plain paper or film: lines are printed to cut along. */
  readonly isCut: boolean;
}

const A4 = { pageWide: 210, pageTall: 297 };
const LETTER = { pageWide: 215.9, pageTall: 279.4 };
type Measures = readonly [columns: number, rows: number, wide: number, tall: number, gapAcross: number, gapDown: number];

/** The block of labels stands in the middle of the page, as on sheets from the shop. */
function grid(page: typeof A4, [columns, rows, wide, tall, gapAcross, gapDown]: Measures): SheetGrid {
  const middle = (length: number, used: number) => Math.max(0, Math.round((length - used) * 50) / 100);
  const left = middle(page.pageWide, columns * wide + (columns - 1) * gapAcross);
  const top = middle(page.pageTall, rows * tall + (rows - 1) * gapDown);
  return { ...page, left, top, columns, rows, gapAcross, gapDown, wide, tall };
}

function preset(id: string, page: typeof A4, isCut: boolean, measures: Measures): SheetPreset {
  const made = grid(page, measures);
  const word = `${page === LETTER ? 'Letter' : 'A4'}: ${gridInWords(made)}${isCut ? ', to cut yourself' : ''}`;
  return { id, word, grid: made, isCut };
}

/** Common sizes of label sheets, and grids for plain paper: a mould's edge (15 × 25 mm) and a drawer's front. From memory of the sizes sold. */
export const SHEET_PRESETS: readonly SheetPreset[] = [
  preset('a4-70x37', A4, false, [3, 8, 70, 37, 0, 0]),
  preset('a4-63x38', A4, false, [3, 7, 63.5, 38.1, 2.5, 0]),
  preset('a4-52x30', A4, false, [4, 10, 52.5, 29.7, 0, 0]),
  preset('a4-38x21', A4, false, [5, 13, 38.1, 21.2, 2.5, 0]),
  preset('a4-99x68', A4, false, [2, 4, 99.1, 67.7, 2.5, 0]),
  preset('a4-edge', A4, true, [12, 10, 15, 25, 0, 0]),
  preset('a4-drawer', A4, true, [2, 6, 90, 45, 0, 0]),
  preset('letter-67x25', LETTER, false, [3, 10, 66.7, 25.4, 3.2, 0]),
  preset('letter-102x51', LETTER, false, [2, 5, 101.6, 50.8, 4.8, 0]),
  preset('letter-edge', LETTER, true, [12, 10, 15, 25, 0, 0]),
  preset('letter-drawer', LETTER, true, [2, 5, 90, 45, 0, 0]),
];

/** The preset with this id; the first when there is none. */
export function presetOf(id: unknown): SheetPreset {
  return SHEET_PRESETS.find((each) => each.id === id) ?? (SHEET_PRESETS[0] as SheetPreset);
}
