import { isNothing } from './reading.ts';

/** Starts that a spreadsheet may take for a formula (OWASP, “CSV Injection”), their full-width forms too. */
const FORMULA = /^'*[=+\-@\t\r\n＝＋－＠]/;

/** A cell that no spreadsheet runs as a formula: an apostrophe is put before it. */
export function guarded(cell: string): string {
  return FORMULA.test(cell) ? `'${cell}` : cell;
}

/** As `guarded`; also a word such as “none” that a list read again would take for nothing. For lists that come back in. */
export function guardedWhole(cell: string): string {
  return isGuarded(cell) ? `'${cell}` : cell;
}

/** Takes back the apostrophe that `guardedWhole` put, or that a spreadsheet shows before a text that looks like a formula. */
export function unguarded(cell: string): string {
  return cell.startsWith("'") && isGuarded(cell.slice(1)) ? cell.slice(1) : cell;
}

function isGuarded(cell: string): boolean {
  return cell !== '' && (FORMULA.test(cell) || isNothing(cell.replace(/^'+/, '')));
}

/** Rows as CSV (RFC 4180: commas, CRLF, quotes doubled), exactly as they are. */
export function writeTable(rows: readonly (readonly string[])[]): string {
  return rows.map((row) => `${row.map(quoted).join(',')}\r\n`).join('');
}

/** Rows as CSV for a spreadsheet to open: formulas guarded, with the byte order mark that makes it read UTF-8. */
export function writeSheet(rows: readonly (readonly string[])[]): string {
  return `\ufeff${writeTable(rows.map((row) => row.map(guarded)))}`;
}

function quoted(cell: string): string {
  return /[",;\t\r\n]|^\s|\s$|^$/.test(cell) ? `"${cell.replace(/"/g, '""')}"` : cell;
}
