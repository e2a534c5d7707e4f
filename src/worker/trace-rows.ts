import type { Entry } from '../domain/entry.ts';
import { traceFrom } from '../domain/lineage/trace.ts';
import type { Jobs, Progress } from './protocol.ts';

/** Reads the journal a row at a time and follows a mould's doubtful waxes through it. Rejects when a row cannot be read. */
export async function traceRows(
  { rows, from }: Jobs['trace']['asks'],
  tell: (progress: Progress) => void,
): Promise<Jobs['trace']['gives']> {
  const journal: Entry[] = [];
  for (const [at, row] of rows.entries()) {
    for (const entry of JSON.parse(await row.text()) as Entry[]) journal.push(entry);
    tell({ done: at + 1, total: rows.length });
  }
  return traceFrom(journal, from);
}
