import { saveFile } from '../device/files.ts';
import { censusOf } from '../domain/backup-reminder.ts';
import type { Day } from '../domain/brand.ts';
import type { Entry } from '../domain/entry.ts';
import { makeJournal } from '../domain/journal.ts';
import { type Problem, problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';
import { noteBackup } from './last-backup.ts';

/**
 * Hands over the whole journal as a text file (photographs stay behind), and notes the day. Gives how many entries it holds; undefined when
 * the person thought better of it.
 */
export async function saveJournal(deps: Pick<Deps, 'keeper' | 'settings' | 'today'>): Promise<number | undefined | Problem> {
  try {
    const census = censusOf(deps.keeper.shelf());
    const entries = await deps.keeper.journal();
    if (!(await handOverJournal(deps.keeper.shelf().studio.name, entries, deps.today()))) return undefined;
    noteBackup(deps, census, false);
    return entries.length;
  } catch {
    return problem(
      'The journal could not be read or handed over.',
      'Nothing was changed. Close other tabs, load the page again and try once more.',
    );
  }
}

/** False when the person closed the share sheet. */
export function handOverJournal(studio: string | undefined, entries: readonly Entry[], today: Day): Promise<boolean> {
  // .txt, because phones' share sheets refuse most other endings.
  const text = new Blob([makeJournal(studio ?? 'Studio', entries)], { type: 'text/plain' });
  return saveFile(`mouldkeep-journal-${today}.txt`, text);
}
