import { encodePicture } from '../device/picture.ts';
import type { Sha256 } from '../domain/brand.ts';
import { isProblem, type Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Keeps a photo before anything names it, so that an entry never points at a picture that is not there. Gives its name. */
export async function keepPhoto({ keeper }: Pick<Deps, 'keeper'>, file: Blob): Promise<Sha256 | Problem> {
  const picture = await encodePicture(file);
  if (isProblem(picture)) return picture;
  return (await keeper.keepPictures([picture])) ?? picture.sha;
}
