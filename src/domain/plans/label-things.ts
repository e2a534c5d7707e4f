import type { ThingId } from '../brand.ts';
import type { Desk } from '../desk.ts';
import type { Entry } from '../entry.ts';
import type { Noun } from '../noun.ts';
import type { Problem } from '../problem.ts';
import { type Shelf, type Thing, thingOf } from '../shelf.ts';
import { allWritten } from './written.ts';

/** Kinds that nothing is stuck on: they are in the studio's head and on its lists. */
export const UNLABELLED: readonly Noun[] = ['period', 'want'];

function corrections(desk: Desk, things: readonly Thing[], fields: (thing: Thing) => object): readonly Entry[] | Problem {
  return allWritten(things.map((thing) => ({ ...desk.entry(), kind: 'corrected', noun: thing.noun, of: thing.id, fields: fields(thing) })));
}

function labelled(shelf: Shelf, ids: readonly ThingId[]): readonly Thing[] {
  return ids.flatMap((id) => thingOf(shelf, id) ?? []).filter(({ noun }) => !UNLABELLED.includes(noun));
}

/** Gives every one of the things that has no label code one of its own. No entry when all have one. */
export function planGiveCodes(shelf: Shelf, desk: Desk, ids: readonly ThingId[]): readonly Entry[] | Problem {
  const without = labelled(shelf, ids).filter(({ code }) => code === undefined);
  return corrections(desk, without, ({ noun }) => ({ code: desk.code(noun) }));
}

/** Writes down that the things' labels have been printed and put on today. */
export function planMarkLabelled(shelf: Shelf, desk: Desk, ids: readonly ThingId[]): readonly Entry[] | Problem {
  const fresh = labelled(shelf, ids).filter((thing) => 'labelled' in thing === false || thing.labelled !== desk.today);
  return corrections(desk, fresh, () => ({ labelled: desk.today }));
}
