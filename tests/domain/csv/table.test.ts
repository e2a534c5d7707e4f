import { describe, expect, test } from 'vitest';
import { guessDelimiter } from '../../../src/domain/csv/guess-delimiter.ts';
import { CELL_MAX, ROWS_MAX, readTable } from '../../../src/domain/csv/table.ts';
import { guarded, unguarded, writeSheet } from '../../../src/domain/csv/write.ts';
import { tableOf } from '../../support/import.ts';

const rowsOf = (text: string) => tableOf(text).rows;

describe('what spreadsheets write', () => {
  test('byte order mark, semicolons and decimal commas', () => {
    const table = tableOf('\ufeffName;Wax g\r\nHare;4,5\r\nSeal;12,25\r\n');
    expect(table.delimiter).toBe(';');
    expect(table.rows.map((row) => row.cells)).toEqual([
      ['Name', 'Wax g'],
      ['Hare', '4,5'],
      ['Seal', '12,25'],
    ]);
  });
  test('cells copied from a sheet are parted by tabs, whatever else is in them', () => {
    expect(tableOf('Name\tNote\nHare\tsmall, sharp; good\nSeal\ta, b').delimiter).toBe('\t');
  });
  test('commas in the notes of a semicolon list do not win', () => {
    expect(guessDelimiter('Name;Note\nHare;a, b\nSeal;c, d\nRing;e, f')).toBe(';');
  });
  test('the line “sep=;” names the delimiter and is no row, but counts as a line', () => {
    const table = tableOf('sep=;\r\nName;Note\r\nHare;a,b,c\r\n');
    expect(table.delimiter).toBe(';');
    expect(table.rows.map((row) => row.line)).toEqual([2, 3]);
  });
  test('a line break in a cell is LF while rows end in CRLF', () => {
    expect(rowsOf('Name,Note\r\nHare,"two\nlines"\r\nSeal,x\r\n').map((row) => [row.line, row.cells[1]])).toEqual([
      [1, 'Note'],
      [2, 'two\nlines'],
      [4, 'x'],
    ]);
  });
  test('old line ends of CR alone', () =>
    expect(rowsOf('a,b\rc,d').map((row) => row.cells)).toEqual([
      ['a', 'b'],
      ['c', 'd'],
    ]));
  test('blank lines and lines of empty cells are left out, and lines still count', () => {
    expect(rowsOf('a,b\n\n , \n,,\nc,d\n\n').map((row) => [row.line, ...row.cells])).toEqual([
      [1, 'a', 'b'],
      [5, 'c', 'd'],
    ]);
  });
  test('inch marks in the middle of a cell are just marks', () =>
    expect(rowsOf('n,s\nRing,1/2" wide\n')[1]?.cells).toEqual(['Ring', '1/2" wide']));
});

describe('what is wrong stays visible', () => {
  test('a quote that is never closed gives up its own line only', () => {
    const rows = rowsOf('n,s\n"Hare,1\nSeal,2\nRing,3\n');
    expect(rows.map((row) => [row.line, row.cells[0], row.broken !== undefined])).toEqual([
      [1, 'n', false],
      [2, '"Hare', true],
      [3, 'Seal', false],
      [4, 'Ring', false],
    ]);
    expect(rows[1]?.broken).toContain('never closed');
  });
  test('a quote closed in the middle of a later line does not swallow the lines between', () => {
    expect(rowsOf('n,s\n"Hare,1\nSeal,2\nthe "best" ring,3\n').map((row) => row.line)).toEqual([1, 2, 3, 4]);
  });
  test('text after a closing quote: taken as written where the cells come out right, else not at all', () => {
    const rows = rowsOf('n,s\n"Hare" seal,1\n"Old" toggle,2\n"Poppy" ring,3,4\nSeal,"5"\n');
    expect(rows.map((row) => [row.line, row.cells[0], row.doubt !== undefined, row.broken !== undefined])).toEqual([
      [1, 'n', false, false],
      [2, '"Hare" seal', true, false],
      [3, '"Old" toggle', true, false],
      [4, '"Poppy" ring', false, true],
      [5, 'Seal', false, false],
    ]);
  });
  test('a row with a cell too many cannot be read; empty extra cells do not matter', () => {
    const rows = rowsOf('n,s\nHare,1,oops\nSeal,2,,\n');
    expect(rows[1]?.broken).toBe('The line has 3 cells, the first line 2.');
    expect(rows[2]).toEqual({ line: 3, cells: ['Seal', '2'] });
  });
  test('a short row is filled up and says so', () => {
    expect(rowsOf('n,s,t\nHare,1\n')[1]).toEqual({ line: 2, cells: ['Hare', '1', ''], doubt: 'The line has only 2 of 3 cells.' });
  });
  test('a cell of absurd length', () =>
    expect(rowsOf(`n,s\nHare,${'x'.repeat(CELL_MAX + 1)}\n`)[1]?.broken).toContain(`${CELL_MAX + 1} characters`));
  test('nothing, and too much', () => {
    expect(readTable(' \n\n')).toMatchObject({ problem: true });
    expect(readTable('a,b\n'.repeat(ROWS_MAX + 5))).toMatchObject({ problem: true, kept: expect.stringContaining('Nothing was changed') });
  });
  test('an empty quoted cell with text after it does not swallow the last line', () => {
    expect(rowsOf('n\n""Hare\nSeal').map((row) => row.cells)).toEqual([['n'], ['""Hare'], ['Seal']]);
  });
  test('thousands of unclosed quotes are read in reasonable time', () => {
    const started = process.cpuUsage();
    expect(rowsOf(Array.from({ length: 20_000 }, (_, i) => `"x${i},y`).join('\n'))).toHaveLength(20_000);
    expect(process.cpuUsage(started).user / 1e6).toBeLessThan(4);
  }, 30_000);
});

describe('written for a spreadsheet', () => {
  test('formulas are put behind an apostrophe, and read back without it', () => {
    for (const cell of ['=1+1', '+44', '-5', '@x', '\tx', "'=a", 'plain', "'s", '']) expect(unguarded(guarded(cell))).toBe(cell);
    expect(writeSheet([['=HYPERLINK("x")', '-5', 'a,b']])).toBe(`\ufeff"'=HYPERLINK(""x"")",'-5,"a,b"\r\n`);
  });
});
