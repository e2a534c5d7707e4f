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

/** All lines of a part in one go, which takes half the time of one by one; one by one when something is wrong with them, to name the line. */
function parseLines(text: string, before: number): unknown[] | Problem {
  const whole = text.endsWith('\n') ? text.slice(0, -1) : text;
  try {
    const raws = JSON.parse(`[${whole.replaceAll('\n', ',')}]`) as unknown[];
    if (raws.length === linesIn(whole)) return raws;
  } catch {
    // Told below.
  }
  const raws: unknown[] = [];
  for (const [at, line] of whole.split('\n').entries()) {
    try {
      raws.push(JSON.parse(line));
    } catch {
      return problem(`Line ${before + at + 1} of this journal is damaged.`, UNTOUCHED);
    }
  }
  return raws;
}

function linesIn(text: string): number {
  let lines = 1;
  for (let at = text.indexOf('\n'); at !== -1; at = text.indexOf('\n', at + 1)) lines++;
  return lines;
}

/**
 * Takes a journal in a part of whole lines at a time. What is wrong is told at once, with the number of its line. One that is only checked
 * is not kept: its entries would be most of what reading a backup holds in memory.
 */
export class JournalReader {
  private header: JournalHeader | undefined;
  private readonly isOnlyChecked: boolean;
  private readonly entries: Entry[] = [];
  private readonly ids: EntryId[] = [];
  /** Made at the first id that is out of order: of those that only rise none can come twice. */
  private seen: Set<EntryId> | undefined;
  private lines = 0;

  constructor(isOnlyChecked = false) {
    this.isOnlyChecked = isOnlyChecked;
  }

  take(text: string): Problem | undefined {
    let rest = text;
    if (!this.header) {
      const end = text.indexOf('\n');
      const header = parseHeader(end === -1 ? text : text.slice(0, end));
      if (isProblem(header)) return header;
      this.header = header;
      this.lines = 1;
      rest = end === -1 ? '' : text.slice(end + 1);
    }
    return rest === '' ? undefined : this.takeLines(rest);
  }

  /** Entries taken so far. */
  get count(): number {
    return this.ids.length;
  }

  end(): Journal | Problem {
    const { header, entries, count } = this;
    if (!header) return problem('This is not a Mouldkeep journal: it is empty.', UNTOUCHED);
    if (count !== header.entries) {
      return problem(`This journal should hold ${header.entries} entries and holds ${count}: part of it is missing.`, UNTOUCHED);
    }
    return { header, entries };
  }

  private takeLines(text: string): Problem | undefined {
    const raws = parseLines(text, this.lines);
    if (isProblem(raws)) return raws;
    for (const raw of raws) {
      this.lines++;
      const entry = parseEntry(raw);
      if (isProblem(entry)) return problem(`Line ${this.lines}: ${entry.says}`, UNTOUCHED);
      if (this.hasSeen(entry.id)) return problem(`Line ${this.lines}: the entry ${entry.id} is there twice.`, UNTOUCHED);
      if (!this.isOnlyChecked) this.entries.push(entry);
    }
    return undefined;
  }

  /** Whether an id came before; it has come then. */
  private hasSeen(id: EntryId): boolean {
    const last = this.ids.at(-1);
    if (this.seen || (last !== undefined && id <= last)) {
      this.seen ??= new Set(this.ids);
      if (this.seen.has(id)) return true;
      this.seen.add(id);
    }
    this.ids.push(id);
    return false;
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
