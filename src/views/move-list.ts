import type { Day } from '../domain/brand.ts';
import { dayInWords } from '../domain/day-words.ts';
import { pathText } from '../domain/nesting.ts';
import { awayPlaces, homeOf } from '../domain/plans/lend.ts';
import { type Shelf, thingOf } from '../domain/shelf.ts';
import { designBeside, NOUN_WORD, titleOf } from '../domain/title.ts';

export interface Movable {
  readonly id: string;
  readonly title: string;
  readonly detail: string;
}

export interface MoveList {
  readonly things: readonly Movable[];
  /** Where “put back” would take them; undefined unless every one has a usual place it is away from. */
  readonly home?: string;
  readonly holders: readonly string[];
}

export function moveListOf(shelf: Shelf, ids: readonly string[]): MoveList {
  const things = ids.flatMap((id) => thingOf(shelf, id) ?? []);
  const homes = new Set(things.map((thing) => homeOf(shelf, thing)));
  const isAllAway = things.length > 0 && !homes.has(undefined);
  const [only] = homes;
  return {
    things: things.map((thing) => {
      const at = thing.noun === 'place' ? thing.in : thing.at;
      const where = pathText(shelf, at) || 'no place yet';
      const until = thing.until ? ` until ${dayInWords(thing.until as Day)}` : '';
      const detail = [NOUN_WORD[thing.noun], designBeside(shelf, thing), where + until].filter(Boolean).join(' · ');
      return { id: thing.id, title: titleOf(shelf, thing), detail };
    }),
    ...(isAllAway ? { home: homes.size === 1 ? pathText(shelf, only) : 'their usual places' } : {}),
    holders: awayPlaces(shelf).map((place) => place.holder ?? titleOf(shelf, place)),
  };
}
