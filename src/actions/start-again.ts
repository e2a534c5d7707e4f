import type { Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';
import { lastBackup } from './last-backup.ts';

/** Whether a backup of this studio was handed over today: it may then be emptied without more ado. */
export function isBackedUpToday(deps: Pick<Deps, 'keeper' | 'settings' | 'today'>): boolean {
  return lastBackup(deps)?.on === deps.today();
}

/** Empties the studio on this device in one step. What was there is kept aside, and can be brought back under *Backup*, until it is let go. */
export async function startAgain({ keeper, today }: Pick<Deps, 'keeper' | 'today'>): Promise<Problem | undefined> {
  return (await keeper.vault()).replace([], today());
}
