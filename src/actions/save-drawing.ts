import type { Entry } from '../domain/entry.ts';
import { planSaveDrawing, type SaveDrawing } from '../domain/plans/save-drawing.ts';
import type { Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Writes down a cabinet as it was drawn, in one action. */
export function saveDrawing({ keeper }: Pick<Deps, 'keeper'>, command: SaveDrawing): Promise<readonly Entry[] | Problem> {
  return keeper.act((shelf, desk) => planSaveDrawing(shelf, desk, command));
}
