import type { PlaceId, ThingId } from '../brand.ts';
import { dayInWords } from '../day-words.ts';
import type { Desk } from '../desk.ts';
import type { Entry } from '../entry.ts';
import { piecesByPlace, STANDING } from '../filling.ts';
import { placesWithin } from '../nesting.ts';
import { type Problem, problem } from '../problem.ts';
import type { Retirement } from '../retirement.ts';
import { type Shelf, type Thing, thingOf } from '../shelf.ts';
import { NOUN_WORD, NOUNS_WORD, titleOf } from '../title.ts';
import { unconfirmed } from '../warning.ts';
import { injectorsHolding } from '../wax-choice.ts';
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
  const warning = unconfirmed(lossOf(shelf, thing), confirmed);
  if (warning) return warning;
  return allWritten([{ ...desk.entry(), kind: 'retired', of, reason, note: note?.trim() || undefined }]);
}

/** What still rests on the thing: what stands in a place, also in the places inside it; the injector that holds a wax. */
function lossOf(shelf: Shelf, thing: Thing): readonly string[] {
  const title = titleOf(shelf, thing);
  if (thing.noun === 'wax') {
    return injectorsHolding(thing, shelf.things.injector.values()).map((injector) => `${titleOf(shelf, injector)} holds ${title}.`);
  }
  if (thing.noun !== 'place') return [];
  const within = placesWithin(shelf, thing.id);
  const held = STANDING.flatMap((noun) => {
    const pieces = sumIn(within, piecesByPlace(shelf, noun));
    return pieces > 0 ? [`${pieces} ${pieces === 1 ? NOUN_WORD[noun] : NOUNS_WORD[noun]}`] : [];
  });
  return held.length > 0 ? [`Still in ${title}: ${held.join(', ')}. It stays on the shelves until they are moved out.`] : [];
}

function sumIn(places: readonly PlaceId[], pieces: ReadonlyMap<PlaceId, number>): number {
  return places.reduce((sum, place) => sum + (pieces.get(place) ?? 0), 0);
}
