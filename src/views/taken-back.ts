import type { ThingId } from '../domain/brand.ts';
import type { Entry } from '../domain/entry.ts';
import { sayNouns } from '../domain/noun-counts.ts';
import type { Shelf, Thing } from '../domain/shelf.ts';
import { NOUN_WORD, titleOf } from '../domain/title.ts';
import type { Units } from '../domain/units.ts';
import { historyOf } from './history.ts';

/** What an action did that is out of force now: what it recorded, by its own words, or else what its first entry did and to what. */
export function sayTakenBack(shelf: Shelf, action: readonly Entry[], units: Units): string {
  const recorded = action.flatMap((entry) => (entry.kind === 'recorded' ? [entry] : []));
  const [first] = recorded;
  if (!first) return historyOf(shelf, action.slice(0, 1), units, 'no thing' as ThingId)[0]?.says ?? '';
  // As it would be called if it were on the shelf.
  if (recorded.length === 1)
    return `Recorded: ${NOUN_WORD[first.noun]} “${titleOf(shelf, { ...first.fields, ...first } as object as Thing)}”.`;
  return `Recorded in one go: ${sayNouns(recorded.map(({ noun }) => noun))}.`;
}
