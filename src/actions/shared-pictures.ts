import { countShared, dropShared, refusedShares, type SharedPicture, sharedPictures } from '../device/shared-pictures.ts';
import type { ThingId } from '../domain/brand.ts';
import type { Entry } from '../domain/entry.ts';
import { isProblem, type Problem } from '../domain/problem.ts';
import { correct } from './correct.ts';
import type { Deps } from './deps.ts';
import { keepPhoto } from './keep-photo.ts';

export { countShared, dropShared, refusedShares, type SharedPicture, sharedPictures };

/** Keeps a shared picture with a thing. Only then is it forgotten where it waited: closing the app midway loses nothing. */
export async function addShared(deps: Pick<Deps, 'keeper'>, picture: SharedPicture, of: ThingId): Promise<readonly Entry[] | Problem> {
  const kept = await keepPhoto(deps, picture.blob);
  if (isProblem(kept)) return kept;
  const outcome = await correct(deps, { of, fields: {}, pictures: [kept] });
  if (!isProblem(outcome)) await dropShared(picture);
  return outcome;
}
