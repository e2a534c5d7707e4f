import type { Day } from '../domain/brand.ts';
import { NOUNS, type Noun } from '../domain/noun.ts';
import type { Shelf, Thing } from '../domain/shelf.ts';
import { type Choice, choiceOf } from './pick.ts';

/** Things that something was last written down about, the latest first; those out of use are left out. */
export function recentThings(shelf: Shelf, nouns: readonly Noun[], most: number): readonly Choice[] {
  const dated: { readonly thing: Thing; readonly on: Day }[] = [];
  for (const noun of NOUNS) {
    if (!nouns.includes(noun)) continue;
    for (const thing of (shelf.things[noun] as ReadonlyMap<string, Thing>).values())
      if (!thing.retired) dated.push({ thing, on: lastWork(thing) });
  }
  return dated
    .sort((a, b) => (a.on === b.on ? (a.thing.id < b.thing.id ? 1 : -1) : a.on < b.on ? 1 : -1))
    .slice(0, most)
    .map(({ thing }) => choiceOf(shelf, thing));
}

function lastWork(thing: Thing): Day {
  const days = [
    thing.since,
    thing.atSince,
    'gradeOn' in thing ? thing.gradeOn : undefined,
    'runs' in thing ? thing.runs?.at(-1)?.on : undefined,
    'countedOn' in thing ? thing.countedOn : undefined,
  ];
  return days
    .filter((day) => day !== undefined)
    .sort()
    .at(-1) as Day;
}
