import type { Entry } from '../domain/entry.ts';
import { planStudioFigures, type StudioFigures } from '../domain/plans/studio-figures.ts';
import type { Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Writes down the studio's name and its own figures. */
export function setStudioFigures({ keeper }: Pick<Deps, 'keeper'>, command: StudioFigures): Promise<readonly Entry[] | Problem> {
  return keeper.act((shelf, desk) => planStudioFigures(shelf, desk, command));
}
