import type { Sha256 } from '../domain/brand.ts';
import type { Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Pictures that no entry, no kept form and no replaced studio names: what forms that were given up left behind. */
export async function unnamedPictures({ keeper, drafts }: Pick<Deps, 'keeper' | 'drafts'>): Promise<readonly Sha256[]> {
  return (await keeper.vault()).unnamed(drafts.names);
}

/** Throws them away, but for those that have come to be named meanwhile. */
export async function sweepPictures(deps: Pick<Deps, 'keeper' | 'drafts'>): Promise<Problem | undefined> {
  return deps.keeper.dropPictures(await unnamedPictures(deps));
}
