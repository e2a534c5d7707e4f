import type { PlaceId } from '../brand.ts';
import type { Desk } from '../desk.ts';
import type { Entry } from '../entry.ts';
import type { Problem } from '../problem.ts';
import { type Shelf, thingOf } from '../shelf.ts';
import { titleOf } from '../title.ts';
import { unconfirmed } from '../warning.ts';
import { allWritten } from './written.ts';

export interface Withdraw {
  readonly entry: Entry;
  readonly confirmed?: boolean | undefined;
}

/** Takes back the action an entry belongs to: all of it, since half an action is a state nobody chose. */
export function planWithdraw(shelf: Shelf, desk: Desk, { entry, confirmed }: Withdraw): readonly Entry[] | Problem {
  const warning = unconfirmed(withdrawWarnings(shelf, entry), confirmed);
  if (warning) return warning;
  return allWritten([{ ...desk.entry(), kind: 'withdrawn', entry: entry.step ?? entry.id }]);
}

/** What would be left in the air if an entry were taken back now. */
function withdrawWarnings(shelf: Shelf, entry: Entry): readonly string[] {
  if (entry.kind === 'recorded') {
    const standing = shelf.contents.get(entry.id as string as PlaceId)?.size ?? 0;
    const thing = thingOf(shelf, entry.id);
    if (standing > 0)
      return [`${standing} ${standing === 1 ? 'thing stands' : 'things stand'} in ${titleOf(shelf, thing)} and would have no place.`];
    if (thing?.noun === 'mould' && thing.shots > 0)
      return [`${titleOf(shelf, thing)} has ${thing.shots} shots logged, which would go out of sight with it.`];
  }
  if (entry.kind === 'injected' && entry.good > 0) {
    const pile = thingOf(shelf, entry.onto ?? entry.id);
    if (pile?.noun === 'injectedWax' && pile.pieces < entry.good) {
      return [`Of the ${entry.good} waxes this run made, ${pile.pieces} are still on hand; the others have been used.`];
    }
  }
  return [];
}
