import type { Sha256 } from '../domain/brand.ts';
import type { Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Throws away the photos of a form that was given up, but for those an entry or another half-filled form names. */
export async function dropPhotos(
  { keeper, drafts }: Pick<Deps, 'keeper' | 'drafts'>,
  photos: readonly Sha256[],
): Promise<Problem | undefined> {
  const unnamed = photos.filter((sha) => !drafts.names(sha));
  return unnamed.length > 0 ? (await keeper.vault()).alone(() => keeper.dropPictures(unnamed)) : undefined;
}
