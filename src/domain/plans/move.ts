import type { Day, PlaceId, ThingId } from '../brand.ts';
import type { Desk } from '../desk.ts';
import type { Entry } from '../entry.ts';
import { isStanding, piecesIn, piecesOf } from '../filling.ts';
import { formProblem } from '../form-problem.ts';
import { isProblem, type Problem, problem } from '../problem.ts';
import { type Place, type Shelf, type Thing, thingOf } from '../shelf.ts';
import { NOUN_WORD, titleOf } from '../title.ts';
import { unconfirmed } from '../warning.ts';
import { isWithin } from '../whereabouts.ts';
import { allWritten, notPast } from './written.ts';

export interface Move {
  readonly things: readonly ThingId[];
  readonly to: PlaceId | undefined;
  /** Back by then. */
  readonly until?: Day | undefined;
  /** `kept` when it is out for a while only; otherwise the new place becomes its usual one. */
  readonly usual?: 'kept' | 'changed' | undefined;
  readonly note?: string | undefined;
  readonly confirmed?: boolean | undefined;
}

const UNMOVED = 'Nothing has been moved.';

/** Moves things to a place, all in one go. Places go into another place; everything else stands there. */
export function planMove(shelf: Shelf, desk: Desk, command: Move): readonly Entry[] | Problem {
  const things = movable(shelf, command.things);
  if (isProblem(things)) return things;
  const place = command.to ? shelf.things.place.get(command.to) : undefined;
  if (!place)
    return formProblem({
      to: command.to ? 'This place is no longer recorded. Choose another.' : 'Say where it goes: scan a place, or choose one.',
    });
  const late = notPast(command.until, desk.today, 'until');
  if (late) return late;
  const isKept = command.usual === 'kept' || (command.usual === undefined && place.kind === 'away');
  const going = things.filter((thing) => isElsewhere(thing, place, isKept, command.until));
  if (going.length === 0) {
    return problem(
      things.length === 1 ? `It stands in ${titleOf(shelf, place)} already.` : `They all stand in ${titleOf(shelf, place)} already.`,
      UNMOVED,
    );
  }
  const places = going.filter((thing) => thing.noun === 'place');
  const ring = places.find((inner) => isWithin(shelf, place.id, inner.id));
  if (ring) {
    return problem(
      ring.id === place.id
        ? `${titleOf(shelf, ring)} cannot stand in itself.`
        : `${titleOf(shelf, ring)} cannot go into ${titleOf(shelf, place)}, which stands in it.`,
      UNMOVED,
    );
  }
  const outOfUse = place.retired ? [`${titleOf(shelf, place)} is out of use: ${place.retired.reason}.`] : [];
  const warning = unconfirmed([...outOfUse, ...overFull(shelf, place, going)], command.confirmed);
  if (warning) return warning;
  const standing = going.filter((thing) => thing.noun !== 'place').map((thing) => thing.id);
  const moved = {
    kind: 'moved',
    things: standing,
    to: place.id,
    until: command.until,
    usual: isKept ? 'kept' : undefined,
    note: command.note?.trim() || undefined,
  };
  return allWritten([
    ...(standing.length > 0 ? [{ ...desk.entry(), ...moved }] : []),
    ...places.map((each) => ({ ...desk.entry(), kind: 'corrected', noun: 'place', of: each.id, fields: { in: place.id } })),
  ]);
}

/** The things of a command that can be moved, each once; a Problem names the first that cannot. */
export function movable(shelf: Shelf, ids: readonly ThingId[]): readonly Thing[] | Problem {
  if (ids.length === 0) return formProblem({ things: 'Say what goes: type a few letters of it, or scan its label.' });
  const things: Thing[] = [];
  for (const id of new Set(ids)) {
    const thing = thingOf(shelf, id);
    if (!thing) return problem('One of these things is no longer recorded. Take it off the list.', UNMOVED);
    if (thing.noun !== 'place' && !isStanding(thing.noun))
      return problem(`${titleOf(shelf, thing)} is a ${NOUN_WORD[thing.noun]}: it stands nowhere and cannot be moved.`, UNMOVED);
    things.push(thing);
  }
  return things;
}

function isElsewhere(thing: Thing, place: Place, isKept: boolean, until: Day | undefined): boolean {
  if (thing.noun === 'place') return thing.in !== place.id;
  return thing.at !== place.id || thing.until !== until || (!isKept && thing.usual !== undefined);
}

function overFull(shelf: Shelf, place: Place, things: readonly Thing[]): readonly string[] {
  if (place.capacity === undefined) return [];
  const arriving = things
    .filter((thing) => thing.noun !== 'place' && thing.at !== place.id)
    .reduce((sum, thing) => sum + piecesOf(thing), 0);
  const after = piecesIn(shelf, place.id) + arriving;
  if (arriving === 0 || after <= place.capacity) return [];
  return [`${titleOf(shelf, place)} is made for ${place.capacity} and would hold ${after}.`];
}
