import type { Entry } from '../domain/entry.ts';
import { planRoomTable, type RoomTable } from '../domain/plans/room-table.ts';
import type { Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Writes down how cold and warm the workshop gets. */
export function setRoomTable({ keeper }: Pick<Deps, 'keeper'>, command: RoomTable): Promise<readonly Entry[] | Problem> {
  return keeper.act((shelf, desk) => planRoomTable(shelf, desk, command));
}
