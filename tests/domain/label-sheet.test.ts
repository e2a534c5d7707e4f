import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { beside } from '../../src/domain/form-problem.ts';
import { presetOf, SHEET_PRESETS } from '../../src/domain/label-presets.ts';
import { correctionFor, GRID_FIELDS, layOut, parseGrid, positionsOf, type SheetGrid, testBarOf } from '../../src/domain/label-sheet.ts';
import { isProblem } from '../../src/domain/problem.ts';

const typed = (grid: SheetGrid, over: Record<string, string> = {}) => ({
  ...Object.fromEntries(GRID_FIELDS.map(({ field }) => [field, String(grid[field])])),
  ...over,
});
const SHEET = presetOf('a4-70x37').grid;

describe('a grid of labels', () => {
  it.each(SHEET_PRESETS.map((preset) => [preset.word, preset.grid] as const))('fits on its page: %s', (_, grid) => {
    expect(parseGrid(typed(grid))).toEqual(grid);
    const last = positionsOf(grid).at(-1);
    expect((last?.x ?? 0) + grid.wide).toBeLessThanOrEqual(grid.pageWide + 0.05);
    expect((last?.y ?? 0) + grid.tall).toBeLessThanOrEqual(grid.pageTall + 0.05);
  });

  it('has presets named by size alone, each once', () => {
    expect(presetOf('a4-70x37').word).toBe('A4: 3 × 8, 70 × 37 mm');
    expect(new Set(SHEET_PRESETS.map(({ word }) => word)).size).toBe(SHEET_PRESETS.length);
  });

  it('says by how much it does not fit, beside the count', () => {
    const problem = parseGrid(typed(SHEET, { rows: '9', gapDown: '1,5' }));
    if (!isProblem(problem)) throw new Error('it fits');
    expect(beside(problem, 'rows')).toBe('9 one below the other need 345.5 mm, and the page is 297 mm high.');
    expect(beside(problem, 'columns')).toBeUndefined();
  });

  it.each([
    ['columns', '2.5', 'whole number'],
    ['wide', '', 'how much?'],
    ['wide', 'broad', 'not a number'],
    ['tall', '-3', 'From 12 to 300 mm'],
    ['rows', '0', 'From 1 to 60.'],
  ])('says what is wrong with %s “%s”', (field, value, says) => {
    const problem = parseGrid(typed(SHEET, { [field]: value }));
    expect(isProblem(problem) && beside(problem, field)).toContain(says);
  });
});

describe('laying labels out', () => {
  it('leaves the used positions of the first sheet empty', () => {
    const grid = { ...SHEET, columns: 2, rows: 2 };
    expect(layOut(grid, 4, [0, 3])).toEqual([
      [undefined, 0, 1, undefined],
      [2, 3, undefined, undefined],
    ]);
  });

  it('takes a fresh sheet when every position of the first is used', () => {
    expect(layOut({ ...SHEET, columns: 2, rows: 1 }, 1, [0, 1])).toEqual([[0, undefined]]);
    expect(layOut(SHEET, 0, [])).toEqual([]);
  });

  it('prints every label once, in order, on no more sheets than needed', () => {
    const grid = { ...SHEET, columns: 3, rows: 4 };
    fc.assert(
      fc.property(fc.nat(60), fc.uniqueArray(fc.integer({ min: 0, max: 15 }), { maxLength: 12 }), (labels, used) => {
        const pages = layOut(grid, labels, used);
        expect(pages.flat().filter((label) => label !== undefined)).toEqual(Array.from({ length: labels }, (_, i) => i));
        const gone = used.filter((position) => position < 12).length;
        expect(pages.length).toBe(labels === 0 ? 0 : gone === 12 ? Math.ceil(labels / 12) : Math.ceil((labels + gone) / 12));
        if (gone < 12) for (const position of used) expect(pages[0]?.[position]).toBeUndefined();
      }),
    );
  });
});

describe('printing true', () => {
  it('enlarges by what a printer shrinks, and refuses what no printer does', () => {
    expect(correctionFor('', 100)).toBe(1);
    expect(correctionFor('98', 100)).toBeCloseTo(1.020408, 6);
    expect(correctionFor('50,5', 50)).toBeCloseTo(0.990099, 6);
    for (const wrong of ['80', '112', 'ten', '0']) expect(isProblem(correctionFor(wrong, 100)), wrong).toBe(true);
  });

  it('has a bar that fits on small pages too', () => {
    expect(testBarOf(SHEET)).toBe(100);
    expect(testBarOf({ ...SHEET, pageWide: 62, pageTall: 40 })).toBe(20);
  });
});
