import { defined } from '../bench.ts';
import type { ThingId } from '../brand.ts';
import type { Desk } from '../desk.ts';
import type { Entry } from '../entry.ts';
import { FIELDS } from '../fields.ts';
import { isStanding } from '../filling.ts';
import { formProblem } from '../form-problem.ts';
import { numberOn } from '../numbering.ts';
import { isProblem, type Problem, problem } from '../problem.ts';
import { type Shelf, type Thing, thingOf } from '../shelf.ts';
import { NOUNS_WORD } from '../title.ts';
import { checkedFields } from './field-checks.ts';
import { LIKE_MAX } from './record.ts';
import { allWritten } from './written.ts';

/** What counts on from one to the next; `nothing` when they are rightly called alike. */
export const COUNTED_ON = ['name', 'size', 'nothing'] as const;
export type CountedOn = (typeof COUNTED_ON)[number];

export interface RecordMany {
  readonly like: ThingId;
  /** How many more. */
  readonly count: number;
  readonly by: CountedOn;
}

/** Of which kinds several like one can be written down. A pile says by its pieces how many it is. */
export const MANY_OF = ['mould', 'master', 'place'] as const;

/** Fields of one thing and no other: its label, and where its own front is on the cabinet. */
const OWN = ['code', 'box', 'order'];

/** Writes down several things like one that is recorded, numbered on from it, each with a label code of its own and standing where that one does. One action. */
export function planRecordMany(shelf: Shelf, desk: Desk, { like: id, count, by }: RecordMany): readonly Entry[] | Problem {
  const like = thingOf(shelf, id);
  if (!like) return problem('This is no longer recorded.', 'Nothing has been written down.');
  if (!MANY_OF.some((noun) => noun === like.noun))
    return problem(`Several ${NOUNS_WORD[like.noun]} are not written down this way.`, 'Nothing has been written down.');
  if (!Number.isInteger(count) || count < 1 || count > LIKE_MAX)
    return formProblem({ count: `From 1 to ${LIKE_MAX} can be recorded in one go.` });
  const had = like as unknown as Readonly<Record<string, unknown>>;
  const fields = Object.fromEntries(Object.keys(FIELDS[like.noun]).flatMap((field) => (OWN.includes(field) ? [] : [[field, had[field]]])));
  const next = nextOf(shelf, like, count, by);
  if (by !== 'nothing' && next.length === 0) return formProblem({ by: `It has no ${by} to count on from.` });
  const last = checkedFields(like.noun, by === 'nothing' ? {} : { [by]: next.at(-1) });
  if (isProblem(last)) return last;
  const label = like.noun === 'place' && like.label && by === 'name' ? numberOn(like.label, count, takenBy(shelf, like, 'label')) : [];
  return allWritten(
    Array.from({ length: count }, (_, index) => ({
      ...desk.entry(),
      kind: 'recorded',
      noun: like.noun,
      at: isStanding(like.noun) ? homeOf(shelf, like) : undefined,
      fields: defined({
        ...fields,
        ...(by === 'nothing' ? {} : { [by]: next[index] }),
        ...(label.length > 0 ? { label: label[index] } : {}),
        code: desk.code(like.noun),
      }),
    })),
  );
}

/** What the next ones would be called; empty when there is nothing to count on from. */
export function nextOf(shelf: Shelf, like: Thing, count: number, by: CountedOn): readonly string[] {
  const from = by === 'size' ? ('size' in like ? like.size : undefined) : by === 'name' ? like.name : undefined;
  return from ? numberOn(from, count, by === 'name' ? takenBy(shelf, like, 'name') : undefined) : [];
}

/** What the kind's others go by, in small letters: drawer 3 of one cabinet is not drawer 3 of another. */
function takenBy(shelf: Shelf, like: Thing, field: 'name' | 'label'): (text: string) => boolean {
  const taken = new Set<string | undefined>();
  for (const thing of (shelf.things[like.noun] as ReadonlyMap<string, Thing>).values()) {
    if (thing.noun === 'place' && like.noun === 'place' && thing.in !== like.in) continue;
    taken.add((field === 'name' ? thing.name : thing.noun === 'place' ? thing.label : undefined)?.toLocaleLowerCase());
  }
  return (text) => taken.has(text.toLocaleLowerCase());
}

/** Where its own place is: one that is lent out is not where the new ones are. */
function homeOf(shelf: Shelf, like: Thing): Thing['at'] {
  const place = like.at === undefined ? undefined : shelf.things.place.get(like.at);
  return place?.kind === 'away' ? like.usual : like.at;
}
