import type { Sha256, ThingId } from '../brand.ts';
import type { Desk } from '../desk.ts';
import type { Entry } from '../entry.ts';
import { type Problem, problem } from '../problem.ts';
import { type Shelf, thingOf } from '../shelf.ts';
import { allWritten } from './written.ts';

export interface ChangePictures {
  readonly of: ThingId;
  /** To be taken off. */
  readonly without?: readonly Sha256[];
  /** To be the one it is known by. */
  readonly first?: Sha256;
}

/** Takes pictures off a thing, or makes one of them its portrait. No entry when nothing would change. */
export function planPictures(shelf: Shelf, desk: Desk, { of, without = [], first }: ChangePictures): readonly Entry[] | Problem {
  const thing = thingOf(shelf, of);
  if (!thing) return problem('This is no longer recorded.', 'Nothing was changed.');
  const { pictures = [], looks = [] } = thing;
  const on = (picture: Sha256) => pictures.includes(picture) || looks.includes(picture);
  const off = without.filter(on);
  const isNewFirst = first !== undefined && first !== pictures[0] && on(first);
  if (off.length === 0 && !isNewFirst) return [];
  const changes = { ...(off.length > 0 ? { without: off } : {}), ...(isNewFirst ? { first } : {}) };
  return allWritten([{ ...desk.entry(), kind: 'corrected', noun: thing.noun, of, fields: {}, ...changes }]);
}
