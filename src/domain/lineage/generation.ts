import type { Shelf } from '../shelf.ts';
import { parentsOf } from './descent.ts';
import { type Kin, kinOf } from './kin.ts';

/**
 * How many mouldings lie between a thing and its original: an original is 0, a mould of it and what comes out of that mould 1. A wax keeps its
 * number when it is dressed and moulded again; the mould made of it is one more. By several ways the longest counts.
 */
export interface Generation {
  readonly count: number;
  /** Somewhere on the way up a parent is not recorded. It is taken for an original, so there may be more. */
  readonly isLeast: boolean;
}

/** Undefined for what has no lineage, such as a drawer. `seen` keeps what was counted on the way, for whoever asks of many things. */
export function generationOf(shelf: Shelf, id: string, seen = new Map<string, Generation>()): Generation | undefined {
  const thing = kinOf(shelf, id);
  return thing && of(shelf, thing, seen);
}

function of(shelf: Shelf, thing: Kin, seen: Map<string, Generation>): Generation {
  const before = seen.get(thing.id);
  if (before) return before;
  const parents = parentsOf(shelf, thing).map((id) => {
    const parent = kinOf(shelf, id);
    return parent ? of(shelf, parent, seen) : { count: 0, isLeast: true };
  });
  const above = parents.reduce((a, b) => ({ count: Math.max(a.count, b.count), isLeast: a.isLeast || b.isLeast }), {
    count: 0,
    isLeast: parents.length === 0 && !isBeginning(thing),
  });
  // What can only have come out of a mould has at least one behind it, whether it is known or not.
  const least = thing.noun === 'master' ? (isCopy(thing) ? 1 : 0) : thing.noun === 'mould' ? above.count + 1 : 1;
  const own = { count: Math.max(above.count, least), isLeast: above.isLeast };
  seen.set(thing.id, own);
  return own;
}

function isCopy(thing: Kin): boolean {
  return thing.noun === 'master' && (thing.kind === 'dressed wax' || thing.kind === 'casting');
}

function isBeginning(thing: Kin): boolean {
  return thing.noun === 'master' && thing.kind !== undefined && !isCopy(thing);
}

/** Whether a thing should have come from something that nobody wrote down, or whose record is not here. */
export function hasUnknownParent(shelf: Shelf, thing: Kin): boolean {
  const parents = parentsOf(shelf, thing);
  return parents.length === 0
    ? !isBeginning(thing) && !(thing.noun === 'master' && thing.kind === undefined)
    : parents.some((id) => !kinOf(shelf, id));
}

/** “Generation 2: a copy of a copy.” */
export function generationInWords(thing: Kin, { count, isLeast }: Generation): string {
  const begins = isLeast ? ' Where it began is not recorded.' : '';
  const number = isLeast && count > 0 ? `Generation ${count} at least` : `Generation ${count}`;
  if (thing.noun === 'mould')
    return `${number}: moulded from ${count > 1 ? copyOf(count - 1) : isLeast ? 'what is taken for an original' : 'the original'}.${begins}`;
  if (count === 0) return `${number}: ${isLeast ? 'taken for an original' : 'an original'}.${begins}`;
  return `${number}: ${count === 1 && !isLeast ? 'a copy of the original' : copyOf(count)}.${begins}`;
}

function copyOf(times: number): string {
  if (times > 3) return `a copy ${times} times over`;
  return `${'a copy of '.repeat(times - 1)}a copy`;
}
