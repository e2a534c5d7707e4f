/** Starts that a spreadsheet may take for a formula. */
const FORMULA = /^'*[=+\-@\t\r]/;

/** A cell that no spreadsheet runs as a formula: an apostrophe is put before it. */
export function guarded(cell: string): string {
  return FORMULA.test(cell) ? `'${cell}` : cell;
}

/** Takes back the apostrophe that `guarded` put, or that a spreadsheet shows before a text that looks like a formula. */
export function unguarded(cell: string): string {
  return cell.startsWith("'") && FORMULA.test(cell.slice(1)) ? cell.slice(1) : cell;
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
