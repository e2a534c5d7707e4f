import type { EntryId } from '../domain/brand.ts';
import type { Entry } from '../domain/entry.ts';
import type { Deps } from './deps.ts';

/** An action that was taken back, and the entry that did so: taking that one back does it again. */
export interface TakenBack {
  readonly by: Entry;
  readonly action: readonly Entry[];
}

/** So many are shown. */
const SHOWN = 12;

/** What was taken back lately and may be done again, newest first. */
export async function takenBackLately({ keeper }: Pick<Deps, 'keeper'>): Promise<readonly TakenBack[]> {
  const takings = (await keeper.takingsBack()).slice(0, SHOWN);
  const all = await Promise.all(takings.map(async (by) => ({ by, action: await keeper.action((by as Entry & { entry: EntryId }).entry) })));
  // A taking-back that was taken back is what is in force again.
  return all.filter(({ action: [first] }) => first !== undefined && first.kind !== 'withdrawn');
}
