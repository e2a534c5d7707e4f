import type { Entry } from '../domain/entry.ts';
import { type ChangePictures, planPictures } from '../domain/plans/pictures.ts';
import type { Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Takes pictures off a thing, or chooses its portrait. */
export function changePictures({ keeper }: Pick<Deps, 'keeper'>, command: ChangePictures): Promise<readonly Entry[] | Problem> {
  return keeper.act((shelf, desk) => planPictures(shelf, desk, command));
}
