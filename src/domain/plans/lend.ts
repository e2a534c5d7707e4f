import type { Day, PlaceId, ThingId } from '../brand.ts';
import type { Desk } from '../desk.ts';
import type { Entry } from '../entry.ts';
import { NAME_MAX, text } from '../field.ts';
import { formProblem } from '../form-problem.ts';
import { isProblem, type Problem, problem } from '../problem.ts';
import { type Place, type Shelf, type Thing, thingOf } from '../shelf.ts';
import { titleOf } from '../title.ts';
import { movable } from './move.ts';
import { allWritten, notPast } from './written.ts';

export interface Lend {
  readonly things: readonly ThingId[];
  /** Who has them: a person, the plater, a museum. */
  readonly holder: string;
  readonly until?: Day | undefined;
  readonly note?: string | undefined;
}

export function awayPlaces(shelf: Shelf): readonly Place[] {
  return [...shelf.things.place.values()].filter((place) => place.kind === 'away' && !place.retired);
}

/** Lends things to somebody. The holder is a place of the kind *away*; the first loan to somebody records it. */
export function planLend(shelf: Shelf, desk: Desk, command: Lend): readonly Entry[] | Problem {
  const holder = command.holder.trim();
  if (holder === '') return formProblem({ holder: 'Say who has it.' });
  const named = text(NAME_MAX)(holder);
  if (isProblem(named)) return formProblem({ holder: named.says });
  const late = notPast(command.until, desk.today, 'until');
  if (late) return late;
  const things = movable(shelf, command.things);
  if (isProblem(things)) return things;
  const place = things.find((thing) => thing.noun === 'place');
  if (place) return problem(`${titleOf(shelf, place)} is a place. Lend what stands in it.`, 'Nothing has been lent.');
  const same = (text: string | undefined) => text?.trim().toLocaleLowerCase() === holder.toLocaleLowerCase();
  const known = awayPlaces(shelf).find((each) => same(each.holder) || same(each.name));
  const recording = known
    ? undefined
    : { ...desk.entry(), kind: 'recorded', noun: 'place', fields: { name: holder, kind: 'away', holder, code: desk.code('place') } };
  const moved = {
    kind: 'moved',
    things: things.map((thing) => thing.id),
    to: known?.id ?? recording?.id,
    until: command.until,
    usual: 'kept',
  };
  return allWritten([...(recording ? [recording] : []), { ...desk.entry(), ...moved, note: command.note?.trim() || undefined }]);
}

/** Puts things back where they usually stand: one entry for each place. */
export function planPutBack(shelf: Shelf, desk: Desk, ids: readonly ThingId[]): readonly Entry[] | Problem {
  const things = movable(shelf, ids);
  if (isProblem(things)) return things;
  const byPlace = new Map<PlaceId, ThingId[]>();
  for (const thing of things) {
    const home = homeOf(shelf, thing);
    if (home === undefined)
      return problem(`Nobody has said where ${titleOf(shelf, thing)} usually stands. Choose a place for it.`, 'Nothing has been moved.');
    byPlace.set(home, [...(byPlace.get(home) ?? []), thing.id]);
  }
  return allWritten([...byPlace].map(([to, back]) => ({ ...desk.entry(), kind: 'moved', things: back, to })));
}

/** The usual place of a thing that stands elsewhere, when that place is still there. */
export function homeOf(shelf: Shelf, thing: Thing): PlaceId | undefined {
  return thing.usual !== undefined && thingOf(shelf, thing.usual)?.noun === 'place' ? thing.usual : undefined;
}
