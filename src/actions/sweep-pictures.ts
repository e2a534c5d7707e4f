import type { Sha256 } from '../domain/brand.ts';
import type { Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Pictures that no entry, no kept form and no replaced studio names: what forms that were given up left behind. */
export async function unnamedPictures({ keeper, drafts }: Pick<Deps, 'keeper' | 'drafts'>): Promise<readonly Sha256[]> {
  return (await keeper.vault()).unnamed(drafts.names);
}

/**
 * Throws those of these pictures away that still nothing names. Only what was found before: a photo taken in another tab just now is not named
 * yet either. Waits until a backup that another tab is taking in is whole.
 */
export async function sweepPictures(deps: Pick<Deps, 'keeper' | 'drafts'>, found: readonly Sha256[]): Promise<Problem | undefined> {
  const vault = await deps.keeper.vault();
  return vault.alone(async () => {
    const unnamed = new Set(await unnamedPictures(deps));
    return deps.keeper.dropPictures(found.filter((sha) => unnamed.has(sha)));
  });
}
