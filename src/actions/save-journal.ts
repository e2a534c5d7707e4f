import { saveFile } from '../device/files.ts';
import type { Day } from '../domain/brand.ts';
import { parseDay } from '../domain/day.ts';
import { makeJournal } from '../domain/journal.ts';
import { isProblem, type Problem, problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Each studio on this device has its own: a copy of the demo is none of yours. */
const keptAs = ({ keeper }: Pick<Deps, 'keeper'>) => `backup-on:${keeper.name}`;

/** When this device last handed a copy over, and how many entries were in it. */
export interface LastCopy {
  readonly on: Day;
  readonly entries: number;
}

export function lastCopy(deps: Pick<Deps, 'keeper' | 'settings'>): LastCopy | undefined {
  const { on, entries } = deps.settings.get<Partial<Record<keyof LastCopy, unknown>>>(keptAs(deps)) ?? {};
  const day = parseDay(on);
  return isProblem(day) || typeof entries !== 'number' ? undefined : { on: day, entries };
}

/**
 * Hands over the whole journal as a text file (photographs stay behind), and notes the day. Gives how many entries it holds; undefined when
 * the person thought better of it.
 */
export async function saveJournal(deps: Pick<Deps, 'keeper' | 'settings' | 'today'>): Promise<number | undefined | Problem> {
  try {
    const entries = await deps.keeper.journal();
    const name = deps.keeper.shelf().studio.name ?? 'Studio';
    // .txt, because phones' share sheets refuse most other endings.
    const text = new Blob([makeJournal(name, entries)], { type: 'text/plain' });
    if (!(await saveFile(`mouldkeep-journal-${deps.today()}.txt`, text))) return undefined;
    deps.settings.set(keptAs(deps), { on: deps.today(), entries: entries.length } satisfies LastCopy);
    return entries.length;
  } catch {
    return problem(
      'The journal could not be read or handed over.',
      'Nothing was changed. Close other tabs, load the page again and try once more.',
    );
  }
}
