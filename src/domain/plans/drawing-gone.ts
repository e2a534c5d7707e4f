import type { PlaceId } from '../brand.ts';
import type { Desk } from '../desk.ts';
import type { Drawing, Gone } from '../drawing/drawing.ts';
import { formProblem } from '../form-problem.ts';
import { sayCount } from '../measure-words.ts';
import type { Problem } from '../problem.ts';
import type { Place, Shelf } from '../shelf.ts';
import { titleOf } from '../title.ts';
import { isWithin } from '../whereabouts.ts';
import { leftIn, takenOut } from './emptied.ts';

/** Of the places a drawing does without, those that still are in the cabinet: others may have been taken out or carried elsewhere meanwhile. */
function stillThere(
  shelf: Shelf,
  cabinet: Place | undefined,
  { gone }: Drawing,
): readonly { readonly place: Place; readonly gone: Gone }[] {
  return gone.flatMap((each) => {
    const place = shelf.things.place.get(each.of);
    return place && cabinet && place.in === cabinet.id && !place.retired ? [{ place, gone: each }] : [];
  });
}

/** Why something that stands in a drawer taken out would have no place. */
export function goneProblem(shelf: Shelf, cabinet: Place | undefined, drawing: Drawing): Problem | undefined {
  const taken = stillThere(shelf, cabinet, drawing);
  for (const { place, gone } of taken) {
    const { things, places } = leftIn(shelf, place);
    const count = things.length + places.length;
    const { to, label } = gone;
    if (to === undefined) {
      if (count === 0) continue;
      return formProblem({ drawing: `Say where the ${sayCount(count, 'thing')} in ${label} go: undo its removal and take it out again.` });
    }
    if (drawing.fronts.some(({ key }) => key === to)) continue;
    const target = shelf.things.place.get(to as PlaceId);
    if (!target) return formProblem({ drawing: `The place that ${label} was to be emptied into is no longer recorded.` });
    if (target.retired) return formProblem({ drawing: `${titleOf(shelf, target)}, where the things in ${label} go, is out of use.` });
    if (taken.some((each) => isWithin(shelf, target.id, each.place.id)))
      return formProblem({ drawing: `${titleOf(shelf, target)}, where the things in ${label} go, is taken out itself.` });
  }
  return undefined;
}

/** Entries that empty the drawers taken out and retire them. `ids` are the places of the fronts by their keys. */
export function goneEntries(
  shelf: Shelf,
  desk: Desk,
  cabinet: Place | undefined,
  drawing: Drawing,
  ids: ReadonlyMap<string, PlaceId>,
): readonly object[] {
  return stillThere(shelf, cabinet, drawing).flatMap(({ place, gone: { to } }) =>
    takenOut(shelf, desk, place, to === undefined ? undefined : (ids.get(to) ?? (to as PlaceId)), 'removed'),
  );
}
