import type { PlaceId, Sha256, ThingId } from '../brand.ts';
import type { Desk } from '../desk.ts';
import type { Entry } from '../entry.ts';
import { NAME_MAX } from '../field.ts';
import { formProblem } from '../form-problem.ts';
import { loopProblem } from '../lineage/loop.ts';
import { isProblem, type Problem, problem } from '../problem.ts';
import { type Shelf, type Thing, thingOf } from '../shelf.ts';
import { NOUN_WORD, titleOf } from '../title.ts';
import type { Units } from '../units.ts';
import { isWithin } from '../whereabouts.ts';
import { checkedFields, crossProblem } from './field-checks.ts';
import { allWritten } from './written.ts';

export interface Correct {
  readonly of: ThingId;
  /** As typed; `null` clears a field, and what is not named stays. */
  readonly fields: Readonly<Record<string, unknown>>;
  readonly pictures?: readonly Sha256[] | undefined;
  readonly note?: string | undefined;
  /** What a refusal is to be read in. */
  readonly units?: Units | undefined;
}

/** Puts the fields of a thing right. Only what differs is written down, so that two people can correct different fields. No entry when nothing differs. */
export function planCorrect(
  shelf: Shelf,
  desk: Desk,
  { of, fields: raw, pictures = [], note, units }: Correct,
): readonly Entry[] | Problem {
  const thing = thingOf(shelf, of);
  if (!thing) return problem('This is no longer recorded.', 'Nothing was changed; what you typed is still in the form.');
  const fields = checkedFields(thing.noun, raw, units);
  if (isProblem(fields)) return fields;
  const before = thing as unknown as Readonly<Record<string, unknown>>;
  const changed = Object.fromEntries(Object.entries(fields).filter(([field, value]) => !isSame(before[field], value)));
  const added = pictures.filter((picture) => !thing.pictures?.includes(picture));
  if (Object.keys(changed).length === 0 && added.length === 0) return [];
  const after = { ...before, ...changed };
  const isCleared = Object.values(changed).includes(null);
  if (isCleared && !after['name'] && !after['design'] && !after['master'])
    return formProblem({ name: `A ${NOUN_WORD[thing.noun]} needs a name.` });
  const crossed = crossProblem(shelf, { ...pairedWith(before, changed), ...changed }, desk.today, thing.id);
  if (crossed) return crossed;
  const loop = loopProblem(shelf, thing, changed);
  if (loop) return loop;
  const within = changed['in'];
  if (thing.noun === 'place' && typeof within === 'string' && isWithin(shelf, within as PlaceId, thing.id)) {
    return formProblem({ in: `${titleOf(shelf, thing)} cannot stand in itself, nor in a place inside it.` });
  }
  return allWritten([
    {
      ...desk.entry(),
      kind: 'corrected',
      noun: thing.noun,
      of,
      fields: changed,
      note: note?.trim() || undefined,
      ...(added.length > 0 ? { pictures: added } : {}),
    },
    ...renamedAfter(shelf, desk, thing, changed['name']),
  ]);
}

/** The drawers of a cabinet that are called by its name, “Old chest A1” or “Old chest, drawer 1”, take its new one; those that have one of their own keep it, and those that would lose its end. */
function renamedAfter(shelf: Shelf, desk: Desk, place: Thing, name: unknown): object[] {
  if (place.noun !== 'place' || !place.name || typeof name !== 'string') return [];
  const before = place.name;
  const rest = (inside: Thing) => (inside.name?.startsWith(before) ? inside.name.slice(before.length) : '');
  return [...shelf.things.place.values()]
    .filter((inside) => inside.in === place.id && !inside.retired)
    .filter((inside) => rest(inside).startsWith(', ') || (inside.label && rest(inside) === ` ${inside.label}`))
    .map((inside) => ({ inside, called: `${name}${rest(inside)}` }))
    .filter(({ called }) => called.length <= NAME_MAX)
    .map(({ inside, called }) => ({
      ...desk.entry(),
      kind: 'corrected',
      noun: 'place',
      of: inside.id,
      fields: { name: called },
    }));
}

/** The other end of a range of which one end was changed. */
function pairedWith(before: Readonly<Record<string, unknown>>, changed: object): Record<string, unknown> {
  const paired = ['from', 'to', 'roomLowC', 'roomHighC', 'injectLowC', 'injectHighC', 'pressureLowKpa', 'pressureHighKpa'];
  return Object.fromEntries(
    paired.filter((field) => !(field in changed) && typeof before[field] === 'number').map((field) => [field, before[field]]),
  );
}

/** Fields are plain data: equal when they read the same. A field that is not there is one that was cleared. */
function isSame(before: unknown, after: unknown): boolean {
  return JSON.stringify(before ?? null) === JSON.stringify(after ?? null);
}
