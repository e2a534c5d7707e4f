import { startJob } from '../device/worker-client.ts';
import type { Day } from '../domain/brand.ts';
import { type Journal, parseJournal } from '../domain/journal.ts';
import { isProblem, type Problem, problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Far above 100,000 entries (about 19 MB). */
const JOURNAL_BYTES_MAX = 200_000_000;
/** Up to this many characters the page itself reads a journal in a blink; a longer one goes to the worker. */
const QUICK_LENGTH = 1_000_000;

/** What a saved journal holds, before any of it is taken in. */
export interface OpenedJournal extends Journal {
  /** How many of its entries are not here yet. */
  readonly fresh: number;
  /** First and last day of its entries; none in an empty journal. */
  readonly days?: { readonly from: Day; readonly to: Day };
}

/** Reads a saved journal and compares it with this one; nothing is changed. Refused whole when it is damaged, of a newer version, or no journal at all. */
export async function openJournal({ keeper }: Pick<Deps, 'keeper'>, file: File): Promise<OpenedJournal | Problem> {
  if (file.size > JOURNAL_BYTES_MAX) return problem('That file is far larger than a journal.', 'Nothing was changed.');
  try {
    const text = await file.text();
    const journal = text.length > QUICK_LENGTH ? await startJob('journal', { text }).answer : parseJournal(text);
    if (journal === undefined || isProblem(journal)) return journal ?? UNREAD;
    const known = new Set((await keeper.journal()).map(({ id }) => id));
    const days = journal.entries.map(({ on }) => on).sort();
    const [from, to] = [days[0], days.at(-1)];
    return {
      ...journal,
      fresh: journal.entries.reduce((count, { id }) => count + (known.has(id) ? 0 : 1), 0),
      ...(from && to ? { days: { from, to } } : {}),
    };
  } catch {
    return UNREAD;
  }
}

const UNREAD = problem('That file could not be read.', 'Nothing was changed.');

/** Joins an opened journal into this one, which cannot be undone. Gives how many entries were new. */
export function joinJournal({ keeper }: Pick<Deps, 'keeper'>, { entries }: OpenedJournal): Promise<number | Problem> {
  return keeper.join(entries);
}
