import type { Desk } from '../desk.ts';
import type { Entry } from '../entry.ts';
import { formProblem } from '../form-problem.ts';
import { sayTemperature } from '../measure-words.ts';
import type { Problem } from '../problem.ts';
import { hemisphereOf, type Month, roomIn } from '../room.ts';
import { monthName } from '../season.ts';
import type { Shelf } from '../shelf.ts';
import { type Hemisphere, MONTHS } from '../studio.ts';
import type { Units } from '../units.ts';
import { allWritten } from './written.ts';

export interface RoomTable {
  readonly hemisphere?: Hemisphere | undefined;
  /** °C; months left out stay as they are, and one end alone is a Problem. */
  readonly months?: { readonly [M in Month]?: { readonly lowC?: number | undefined; readonly highC?: number | undefined } } | undefined;
  /** What a refusal is to be read in. */
  readonly units?: Units | undefined;
}

const [COLDEST, WARMEST] = [-40, 60];

/** The workshop's monthly low and high, and which half of the world it stands in. Only what differs is written. */
export function planRoomTable(shelf: Shelf, desk: Desk, { hemisphere, months = {}, units }: RoomTable): readonly Entry[] | Problem {
  const wrong: Record<string, string> = {};
  const changed: Record<string, { lowC: number; highC: number }> = {};
  for (const month of MONTHS) {
    const typed = months[month];
    if (!typed) continue;
    const { lowC, highC } = typed;
    const name = monthName(Number(month));
    if (lowC === undefined || highC === undefined) wrong[month] = `${name}: give both the low and the high.`;
    else if (![lowC, highC].every((each) => each >= COLDEST && each <= WARMEST))
      wrong[month] = `${name}: between ${sayTemperature(COLDEST, units)} and ${sayTemperature(WARMEST, units)}.`;
    else if (lowC > highC) wrong[month] = `${name}: the low is higher than the high.`;
    else {
      const now = roomIn(Number(month), shelf.studio);
      if (now.lowC !== lowC || now.highC !== highC) changed[month] = { lowC, highC };
    }
  }
  if (Object.keys(wrong).length > 0) return formProblem(wrong);
  const isMoved = hemisphere !== undefined && hemisphere !== hemisphereOf(shelf.studio);
  const fields = { ...(isMoved ? { hemisphere } : {}), ...(Object.keys(changed).length > 0 ? { months: changed } : {}) };
  if (Object.keys(fields).length === 0) return [];
  return allWritten([{ ...desk.entry(), kind: 'corrected', noun: 'studio', fields }]);
}
