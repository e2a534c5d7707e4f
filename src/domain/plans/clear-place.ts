import type { PlaceId } from '../brand.ts';
import type { Desk } from '../desk.ts';
import type { Entry } from '../entry.ts';
import { formProblem } from '../form-problem.ts';
import { sayCount } from '../measure-words.ts';
import { type Problem, problem } from '../problem.ts';
import { REASONS, type Retirement } from '../retirement.ts';
import type { Shelf } from '../shelf.ts';
import { titleOf } from '../title.ts';
import { isWithin } from '../whereabouts.ts';
import { leftIn, takenOut, takenWith } from './emptied.ts';
import { allWritten } from './written.ts';

export interface ClearPlace {
  readonly of: PlaceId;
  /** Where all that is in it goes. Cabinets and boxes may also stand in no room. */
  readonly to?: PlaceId | undefined;
  readonly reason: Retirement;
}

const UNCHANGED = 'Nothing was changed.';

/** Takes a place out for good: what is in it goes elsewhere and its drawers go with it, in one action. */
export function planClearPlace(shelf: Shelf, desk: Desk, { of, to, reason }: ClearPlace): readonly Entry[] | Problem {
  const place = shelf.things.place.get(of);
  if (!place) return problem('This place is no longer recorded.', UNCHANGED);
  if (place.retired) return problem(`${titleOf(shelf, place)} was taken out already.`, UNCHANGED);
  if (!REASONS.place.includes(reason)) return problem(`A place is not ${reason}.`, UNCHANGED);
  const { things, places } = leftIn(shelf, place);
  if (things.length > 0 && to === undefined)
    return formProblem({ to: `Say where the ${sayCount(things.length, 'thing')} in ${titleOf(shelf, place)} go first.` });
  const target = to === undefined ? undefined : shelf.things.place.get(to);
  if (to !== undefined && !target) return formProblem({ to: 'This place is no longer recorded. Choose another.' });
  if (target) {
    if (target.retired) return formProblem({ to: `${titleOf(shelf, target)} is out of use: ${target.retired.reason}.` });
    if (takenWith(shelf, place).some(({ id }) => id === target.id))
      return formProblem({ to: `${titleOf(shelf, target)} is taken out itself. Choose a place elsewhere.` });
    const ring = places.find((inner) => isWithin(shelf, target.id, inner.id));
    if (ring) return formProblem({ to: `${titleOf(shelf, ring)} cannot go into ${titleOf(shelf, target)}, which stands in it.` });
  }
  return allWritten(takenOut(shelf, desk, place, to, reason));
}
