import { saveFile } from '../device/files.ts';
import { makeJournal } from '../domain/journal.ts';
import { type Problem, problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

export const BACKUP_ON = 'backup-on';

/** Hands over the whole journal as a text file (photographs stay behind), and notes the day. Gives how many entries it holds. */
export async function saveJournal(deps: Deps): Promise<number | Problem> {
  try {
    const entries = await deps.keeper.journal();
    const name = deps.keeper.shelf().studio.name ?? 'Studio';
    // .txt, because phones' share sheets refuse most other endings.
    await saveFile(`mouldkeep-journal-${deps.today()}.txt`, new Blob([makeJournal(name, entries)], { type: 'text/plain' }));
    deps.settings.set(BACKUP_ON, deps.today());
    return entries.length;
  } catch {
    return problem(
      'The journal could not be read or handed over.',
      'Nothing was changed. Close other tabs, load the page again and try once more.',
    );
  }
}
