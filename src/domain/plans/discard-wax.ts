import type { Day, Grams, WaxId } from '../brand.ts';
import type { Desk } from '../desk.ts';
import type { Entry } from '../entry.ts';
import { formProblem } from '../form-problem.ts';
import { sayMass } from '../measure-words.ts';
import type { Problem } from '../problem.ts';
import type { Shelf } from '../shelf.ts';
import type { Units } from '../units.ts';
import { unconfirmed } from '../warning.ts';
import { noSuchWax, wrongGrams } from './wax-checks.ts';
import { allWritten, notAhead } from './written.ts';

export interface DiscardWax {
  readonly wax: WaxId;
  readonly grams: number | undefined;
  readonly note?: string | undefined;
  readonly on?: Day | undefined;
  readonly units?: Units | undefined;
  readonly confirmed?: boolean | undefined;
}

/** Wax thrown out: burnt, dirty, or melted too often. When it is more than was reckoned, the tub held at least that, and is empty now. */
export function planDiscardWax(shelf: Shelf, desk: Desk, command: DiscardWax): readonly Entry[] | Problem {
  const { wax: id, note, on, units, confirmed } = command;
  const wax = shelf.things.wax.get(id);
  if (!wax) return noSuchWax;
  const wrong = wrongGrams(command.grams) ?? notAhead(on, desk.today);
  if (wrong) return wrong;
  const grams = command.grams as Grams;
  if (grams === 0) return formProblem({ grams: 'Say how much was thrown out.' });
  const isMore = grams > wax.grams;
  const doubt = `Only ${sayMass(Math.max(0, wax.grams), units)} are reckoned to be left. The tub will then stand at nothing.`;
  const warning = unconfirmed(isMore ? [doubt] : [], confirmed);
  if (warning) return warning;
  const day = on ? { on } : {};
  return allWritten([
    ...(isMore ? [{ ...desk.entry(), ...day, kind: 'weighed', wax: id, grams }] : []),
    { ...desk.entry(), ...day, kind: 'issued', of: id, grams, reason: 'discarded', note: note?.trim() || undefined },
  ]);
}
