import type { EntryId } from './brand.ts';
import type { Entry } from './entry.ts';
import { parseEntry } from './parse-entry.ts';
import { isProblem, type Problem, problem, quoted } from './problem.ts';
import { through } from './slices.ts';

/** First line of a journal written as JSON lines. */
export interface JournalHeader {
  readonly mouldkeep: 'journal';
  readonly version: 1;
  readonly name: string;
  readonly entries: number;
}

export interface Journal {
  readonly header: JournalHeader;
  readonly entries: readonly Entry[];
}

const UNTOUCHED = 'Nothing was changed.';

function parseHeader(line: string | undefined): JournalHeader | Problem {
  let raw: unknown;
  try {
    raw = JSON.parse(line ?? '');
  } catch {
    return problem('This is not a Mouldkeep journal: its first line cannot be read.', UNTOUCHED);
  }
  const { mouldkeep, version, name, entries } = (raw ?? {}) as Record<string, unknown>;
  if (mouldkeep !== 'journal') return problem('This is not a Mouldkeep journal.', UNTOUCHED);
  if (version !== 1)
    return problem(`This journal is of version ${quoted(version)}; this Mouldkeep reads version 1. Update it first.`, UNTOUCHED);
  if (typeof name !== 'string' || !Number.isSafeInteger(entries)) return problem('The first line of this journal is damaged.', UNTOUCHED);
  return { mouldkeep, version, name, entries: entries as number };
}

const LINES_AT_ONCE = 1000;

/** Some lines in one go, which takes half the time of one by one; one by one when something is wrong with them, to name the line. */
function parseLines(lines: readonly string[], from: number, before: number): unknown[] | Problem {
  const some = lines.slice(from, from + LINES_AT_ONCE);
  try {
    const raws = JSON.parse(`[${some.join(',')}]`) as unknown[];
    if (raws.length === some.length) return raws;
  } catch {
    // Told below.
  }
  const raws: unknown[] = [];
  for (const [at, line] of some.entries()) {
    try {
      raws.push(JSON.parse(line));
    } catch {
      return problem(`Line ${before + from + at + 1} of this journal is damaged.`, UNTOUCHED);
    }
  }
  return raws;
}

/**
 * Takes a journal in a part of whole lines at a time. What is wrong is told at once, with the number of its line. One that is only checked
 * is not kept: its entries would be most of what reading a backup holds in memory.
 */
export class JournalReader {
  private header: JournalHeader | undefined;
  private readonly isOnlyChecked: boolean;
  private readonly entries: Entry[] = [];
  private readonly seen = new Set<EntryId>();
  private lines = 0;

  constructor(isOnlyChecked = false) {
    this.isOnlyChecked = isOnlyChecked;
  }

  take(text: string): Problem | undefined {
    const lines = text.split('\n');
    if (lines.at(-1) === '') lines.pop();
    const start = this.header ? 0 : 1;
    if (!this.header) {
      const header = parseHeader(lines[0]);
      if (isProblem(header)) return header;
      this.header = header;
    }
    for (let from = start; from < lines.length; from += LINES_AT_ONCE) {
      const wrong = this.takeLines(lines, from);
      if (wrong) return wrong;
    }
    this.lines += lines.length;
    return undefined;
  }

  /** Entries taken so far. */
  get count(): number {
    return this.seen.size;
  }

  end(): Journal | Problem {
    const { header, entries, count } = this;
    if (!header) return problem('This is not a Mouldkeep journal: it is empty.', UNTOUCHED);
    if (count !== header.entries) {
      return problem(`This journal should hold ${header.entries} entries and holds ${count}: part of it is missing.`, UNTOUCHED);
    }
    return { header, entries };
  }

  private takeLines(lines: readonly string[], from: number): Problem | undefined {
    const raws = parseLines(lines, from, this.lines);
    if (isProblem(raws)) return raws;
    for (const [at, raw] of raws.entries()) {
      const line = this.lines + from + at + 1;
      const entry = parseEntry(raw);
      if (isProblem(entry)) return problem(`Line ${line}: ${entry.says}`, UNTOUCHED);
      if (this.seen.has(entry.id)) return problem(`Line ${line}: the entry ${entry.id} is there twice.`, UNTOUCHED);
      this.seen.add(entry.id);
      if (!this.isOnlyChecked) this.entries.push(entry);
    }
    return undefined;
  }
}

/**
 * Reads a journal of JSON lines: a header, then an entry a line. Refused whole, with the line's number, when a line is damaged, an id
 * comes twice, or lines are missing.
 */
export function parseJournal(text: string): Journal | Problem {
  return through(journalInSlices(text));
}

/** Characters in a slice: some 200 entries. */
const SLICE = 50_000;

/** The same some lines at a time, so that a page can answer taps in between. */
export function* journalInSlices(text: string): Generator<void, Journal | Problem> {
  const reader = new JournalReader();
  let from = 0;
  do {
    const end = text.indexOf('\n', from + SLICE) + 1 || text.length;
    const wrong = reader.take(text.slice(from, end));
    if (wrong) return wrong;
    from = end;
    yield;
  } while (from < text.length);
  return reader.end();
}

export function makeJournal(name: string, entries: readonly Entry[]): string {
  return makeJournalHead(name, entries.length) + makeJournalLines(entries);
}

/** The first line of a journal of that many entries. */
export function makeJournalHead(name: string, entries: number): string {
  return makeLines([{ mouldkeep: 'journal', version: 1, name, entries } satisfies JournalHeader]);
}

export function makeJournalLines(entries: readonly Entry[]): string {
  return makeLines(entries);
}

function makeLines(lines: readonly object[]): string {
  return lines.map((line) => `${JSON.stringify(line)}\n`).join('');
}

/** Whether an entry names the id anywhere: as its subject, a place, a wax, or itself; the action it was made in does not count. */
export function mentions(entry: Entry, id: string): boolean {
  return Object.entries(entry).some(([field, value]) => field !== 'step' && names(value, id));
}

function names(value: unknown, id: string): boolean {
  return value === id || (typeof value === 'object' && value !== null && Object.values(value).some((each) => names(each, id)));
}
