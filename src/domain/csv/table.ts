import Papa from 'papaparse';
import { sayNumber } from '../measure-words.ts';
import { type Problem, problem } from '../problem.ts';
import type { Delimiter } from './delimiter.ts';
import { guessDelimiter, namedDelimiter, newlineOf } from './guess-delimiter.ts';

export interface Row {
  /** Line of the file where the row starts, from 1, as an editor counts them: a line break inside quotes counts too. */
  readonly line: number;
  readonly cells: readonly string[];
  /** Why the row cannot be read. */
  readonly broken?: string;
  /** What was assumed to read it. */
  readonly doubt?: string;
}

export interface Table {
  readonly delimiter: Delimiter;
  readonly rows: readonly Row[];
}

export const ROWS_MAX = 50_000;
export const CELL_MAX = 10_000;
const WIDTH_MAX = 300;
/** Unclosed quotes after which the rest is read with quotes as plain characters; each costs a look at the whole rest. */
const RECOVERIES_MAX = 25;
const OPEN_QUOTE = 'A quotation mark opens here and is never closed.';
const STRAY_QUOTE = 'A quotation mark stands in the middle of a cell.';

/**
 * A list as rows of cells (RFC 4180, and what spreadsheets write). Blank lines are left out; a row that cannot be read is kept and
 * says why. A Problem when it has no rows or too many.
 */
export function readTable(raw: string, delimiter?: Delimiter): Table | Problem {
  const text = raw.charCodeAt(0) === 0xfeff ? raw.slice(1) : raw;
  const named = namedDelimiter(text);
  const body = named ? text.slice(text.search(/[\r\n]|$/)) : text;
  // Where line ends differ, all become LF; a purely CRLF text keeps those in its quoted cells.
  const even = /\r(?!\n)|(?<!\r)\n/.test(body) && body.includes('\r') ? body.replace(/\r\n?/g, '\n') : body;
  const chosen = delimiter ?? named ?? guessDelimiter(even);
  const rows = readRows(even, chosen);
  if (rows.length === 0) return problem('There is nothing in that list.', 'Nothing was changed.');
  if (rows.length > ROWS_MAX) {
    const limit = sayNumber(ROWS_MAX);
    return problem(
      `That list has more than ${limit} lines, which is more than can be brought in at once.`,
      'Nothing was changed. Split the list and bring in one part after the other.',
    );
  }
  return { delimiter: chosen, rows: squared(rows) };
}

function readRows(text: string, delimiter: Delimiter): Row[] {
  const newline = newlineOf(text);
  const rows: Row[] = [];
  let start = 0;
  let line = 1;
  let recoveries = 0;
  while (start < text.length) {
    const rest = text.slice(start);
    const plain = recoveries >= RECOVERIES_MAX;
    let at = 0;
    let resume = -1;
    Papa.parse<string[]>(rest, {
      delimiter,
      newline,
      ...(plain ? { fastMode: true } : {}),
      step({ data, errors, meta }, parser) {
        const end = meta.cursor;
        const lines = countOf(rest, newline, at, end);
        if (errors.some((each) => each.type === 'Quotes')) {
          // What Papa makes of it is no help: an opening quote without its end swallows the lines that follow. Only its own line is given up.
          const lineEnd = rest.indexOf(newline, at);
          const stop = lineEnd < 0 ? rest.length : lineEnd;
          const own = rest.slice(at, stop);
          keep(rows, line, own.split(delimiter), own.split('"').length % 2 === 1 ? STRAY_QUOTE : OPEN_QUOTE);
          if (end > stop + newline.length) {
            line += 1;
            resume = stop + newline.length;
            recoveries += 1;
            parser.abort();
            return;
          }
        } else keep(rows, line, data, undefined);
        line += lines;
        at = end;
        if (rows.length > ROWS_MAX) parser.abort();
      },
    });
    if (resume < 0) break;
    start += resume;
  }
  return rows;
}

function countOf(text: string, newline: string, from: number, to: number): number {
  let count = 0;
  for (let i = text.indexOf(newline, from); i >= 0 && i < to; i = text.indexOf(newline, i + newline.length)) count += 1;
  return count;
}

function keep(rows: Row[], line: number, cells: readonly string[], broken: string | undefined): void {
  if (broken === undefined && cells.every((cell) => cell.trim() === '')) return;
  const long = cells.findIndex((cell) => cell.length > CELL_MAX);
  if (cells.length > WIDTH_MAX) rows.push({ line, cells: cells.slice(0, WIDTH_MAX), broken: `The line has ${cells.length} cells.` });
  else if (long >= 0)
    rows.push({
      line,
      cells: cells.map((cell) => cell.slice(0, CELL_MAX)),
      broken: `Cell ${long + 1} is ${cells[long]?.length} characters long.`,
    });
  else rows.push(broken === undefined ? { line, cells } : { line, cells, broken });
}

/** Every row as wide as the first: empty cells added at the end are said, filled ones too many make the row unreadable. */
function squared(rows: readonly Row[]): Row[] {
  const first = rows[0]?.cells ?? [];
  const width = first.length;
  return rows.map((row) => {
    if (row.broken === STRAY_QUOTE && row.cells.length === width) {
      return { line: row.line, cells: row.cells, doubt: `${STRAY_QUOTE} The line is taken as it is written.` };
    }
    if (row.broken !== undefined || row.cells.length === width) return row;
    const extra = row.cells.slice(width).filter((cell) => cell.trim() !== '').length;
    if (extra > 0) return { ...row, broken: `The line has ${row.cells.length} cells, the first line ${width}.` };
    const cells = Array.from({ length: width }, (_, i) => row.cells[i] ?? '');
    return row.cells.length > width
      ? { ...row, cells }
      : { ...row, cells, doubt: `The line has only ${row.cells.length} of ${width} cells.` };
  });
}
