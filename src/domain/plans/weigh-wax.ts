import type { Day, Grams, WaxId } from '../brand.ts';
import type { Desk } from '../desk.ts';
import type { Entry } from '../entry.ts';
import { sayMass } from '../measure-words.ts';
import type { Problem } from '../problem.ts';
import type { Shelf } from '../shelf.ts';
import type { Units } from '../units.ts';
import { unconfirmed } from '../warning.ts';
import { noSuchWax, wrongGrams } from './wax-checks.ts';
import { allWritten, notAhead } from './written.ts';

export interface WeighWax {
  readonly wax: WaxId;
  /** What the scale says without the tub. */
  readonly grams: number | undefined;
  readonly note?: string | undefined;
  readonly on?: Day | undefined;
  readonly units?: Units | undefined;
  readonly confirmed?: boolean | undefined;
}

/** Reckoning and scale differ a little; more wax than this beyond the reckoned means that some came in unrecorded, or the tub was weighed too. */
const MORE_SHARE = 0.1;
const MORE_GRAMS = 100;

/** What the tub weighs, whatever the reckoning says. */
export function planWeighWax(shelf: Shelf, desk: Desk, command: WeighWax): readonly Entry[] | Problem {
  const { wax: id, grams, note, on, units, confirmed } = command;
  const wax = shelf.things.wax.get(id);
  if (!wax) return noSuchWax;
  const wrong = wrongGrams(grams) ?? notAhead(on, desk.today);
  if (wrong) return wrong;
  const more = (grams as number) - wax.grams;
  const isFarMore = more > Math.max(MORE_GRAMS, wax.grams * MORE_SHARE);
  const doubt = `That is ${sayMass(more, units)} more than the ${sayMass(wax.grams, units)} reckoned. Did some come in, or was the tub weighed too?`;
  const isLate = on !== undefined && on < desk.today;
  const late = `Runs and wax written down since then count no more: ${sayMass(grams as number, units)} will be reckoned to be left now.`;
  const warning = unconfirmed([...(isFarMore ? [doubt] : []), ...(isLate ? [late] : [])], confirmed);
  if (warning) return warning;
  return allWritten([
    { ...desk.entry(), ...(on ? { on } : {}), kind: 'weighed', wax: id, grams: grams as Grams, note: note?.trim() || undefined },
  ]);
}
