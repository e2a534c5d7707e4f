import type { ThingId } from '../brand.ts';
import { dayInWords } from '../day-words.ts';
import type { Desk } from '../desk.ts';
import type { Entry, Retirement } from '../entry.ts';
import { type Problem, problem } from '../problem.ts';
import { type Shelf, thingOf } from '../shelf.ts';
import { titleOf } from '../title.ts';
import { unconfirmed } from '../warning.ts';
import { allWritten } from './written.ts';

export interface Retire {
  readonly of: ThingId;
  readonly reason: Retirement;
  readonly note?: string | undefined;
  readonly confirmed?: boolean | undefined;
}

/** Takes a thing out of use. It keeps its place and its history. */
export function planRetire(shelf: Shelf, desk: Desk, { of, reason, note, confirmed }: Retire): readonly Entry[] | Problem {
  const thing = thingOf(shelf, of);
  if (!thing) return problem('This is no longer recorded.', 'Nothing has been written down.');
  if (thing.retired) {
    return problem(
      `${titleOf(shelf, thing)} was retired already, on ${dayInWords(thing.retired.on)}: ${thing.retired.reason}.`,
      'Nothing was changed. To bring it back into use, take that line of its history back.',
    );
  }
  const inside = thing.noun === 'place' ? (shelf.contents.get(thing.id)?.size ?? 0) : 0;
  const warning = unconfirmed(
    inside > 0 ? [`${inside} ${inside === 1 ? 'thing still stands' : 'things still stand'} in ${titleOf(shelf, thing)}.`] : [],
    confirmed,
  );
  if (warning) return warning;
  return allWritten([{ ...desk.entry(), kind: 'retired', of, reason, note: note?.trim() || undefined }]);
}
