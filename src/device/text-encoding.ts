import { type Problem, problem } from '../domain/problem.ts';

export interface DecodedText {
  readonly text: string;
  /** How the bytes were read, in words for the screen. */
  readonly encoding: 'UTF-8' | 'UTF-16' | 'Windows-1252' | 'UTF-8, and Windows-1252 where it is not';
}

const NOTHING_CHANGED = 'Nothing was changed.';

/**
 * Bytes of a list as text: by byte order mark, else as UTF-8, else as Windows-1252, which spreadsheets in western Europe still
 * write; line by line, since lists are put together from several. A Problem when it is no text.
 */
export function decodeText(bytes: Uint8Array): DecodedText | Problem {
  const starts = (...wanted: readonly number[]) => wanted.every((byte, i) => bytes[i] === byte);
  if (starts(0x50, 0x4b, 3, 4) || starts(0xd0, 0xcf, 0x11, 0xe0)) {
    return problem(
      'That is a spreadsheet’s own file, not a list as text.',
      `${NOTHING_CHANGED} In the spreadsheet choose “Save as” or “Export”, CSV, or copy its cells and paste them here.`,
    );
  }
  if (starts(0xff, 0xfe)) return { text: decode('utf-16le', bytes), encoding: 'UTF-16' };
  if (starts(0xfe, 0xff)) return { text: decode('utf-16be', bytes), encoding: 'UTF-16' };
  if (bytes.subarray(0, 4096).includes(0)) {
    return problem('That file is not a list as text.', `${NOTHING_CHANGED} A list ends in .csv, .tsv or .txt.`);
  }
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), encoding: 'UTF-8' };
  } catch {
    return decodeLines(bytes);
  }
}

const NEWLINE = 10;

function decodeLines(bytes: Uint8Array): DecodedText {
  const strict = new TextDecoder('utf-8', { fatal: true });
  let isMixed = false;
  const lines: string[] = [];
  for (let from = 0; from < bytes.length; ) {
    const end = bytes.indexOf(NEWLINE, from);
    const line = bytes.subarray(from, end < 0 ? bytes.length : end + 1);
    from += line.length;
    try {
      const text = strict.decode(line);
      lines.push(text);
      isMixed ||= text.length < line.length;
    } catch {
      lines.push(decode('windows-1252', line));
    }
  }
  return { text: lines.join(''), encoding: isMixed ? 'UTF-8, and Windows-1252 where it is not' : 'Windows-1252' };
}

function decode(label: string, bytes: Uint8Array): string {
  return new TextDecoder(label).decode(bytes);
}
