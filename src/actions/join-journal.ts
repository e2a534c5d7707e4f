import { parseJournal } from '../domain/journal.ts';
import { isProblem, type Problem, problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Far above 100,000 entries (about 19 MB). */
const JOURNAL_BYTES_MAX = 200_000_000;

export interface Joined {
  /** Entries the file holds, and how many of them were new here. */
  readonly held: number;
  readonly added: number;
}

/** Joins a saved journal into this one. Refused whole, with nothing changed, when it is damaged, of a newer version, or no journal at all. */
export async function joinJournalFile(deps: Deps, file: File): Promise<Joined | Problem> {
  if (file.size > JOURNAL_BYTES_MAX) return problem('That file is far larger than a journal.', 'Nothing was changed.');
  let text: string;
  try {
    text = await file.text();
  } catch {
    return problem('That file could not be read.', 'Nothing was changed.');
  }
  const journal = parseJournal(text);
  if (isProblem(journal)) return journal;
  const added = await deps.keeper.join(journal.entries);
  return isProblem(added) ? added : { held: journal.entries.length, added };
}
