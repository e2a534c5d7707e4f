import Papa from 'papaparse';
import { DELIMITERS, type Delimiter } from './delimiter.ts';

const LOOKED_AT = 40;

/** The line ending a text uses. Papa's own guess is not used: it takes one quoted line break for the whole file's. */
export function newlineOf(text: string): '\r\n' | '\n' | '\r' {
  if (text.includes('\r\n')) return '\r\n';
  return text.includes('\n') || !text.includes('\r') ? '\n' : '\r';
}

/** What most likely parts the cells: the mark that gives the most rows of the first row's width, more than one cell wide. */
export function guessDelimiter(text: string): Delimiter {
  const head = text.slice(0, 200_000);
  let best: Delimiter = ',';
  let bestScore = 0;
  for (const delimiter of DELIMITERS) {
    const { data } = Papa.parse<string[]>(head, { delimiter, newline: newlineOf(head), preview: LOOKED_AT, skipEmptyLines: 'greedy' });
    const width = data[0]?.length ?? 0;
    if (width < 2) continue;
    const alike = data.filter((row) => row.length === width).length / data.length;
    // A list parted by semicolons has decimal commas in some rows only: agreement counts far more than width.
    const score = alike * 100 + Math.min(width, 50) / 10;
    if (score > bestScore) {
      best = delimiter;
      bestScore = score;
    }
  }
  return best;
}

/** Excel's first line `sep=;`, which names the delimiter and is no row. */
export function namedDelimiter(text: string): Delimiter | undefined {
  const named = /^sep=([,;\t])\r?(?:\n|$)/i.exec(text)?.[1];
  return DELIMITERS.find((each) => each === named);
}
