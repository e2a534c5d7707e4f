import type { MouldId } from '../domain/brand.ts';
import { isLivingMould } from '../domain/last-of-kind.ts';
import type { Mould, Shelf } from '../domain/shelf.ts';
import { sizeBasis } from '../domain/size/basis.ts';
import { smallerThanLabel } from '../domain/size/expected.ts';
import { readyLearned } from '../domain/size/learn.ts';

/** Moulds judged before others get their turn; one takes some tenths of a millisecond on a phone. */
const SLICE = 10;

interface Known {
  readonly basis: object;
  /** Found among all moulds, and of them those that are still in use. */
  readonly found: ReadonlySet<string>;
  readonly inUse: ReadonlySet<string>;
}
const known: { last?: Known } = {};

/**
 * Moulds in use whose castings come out nearer to a smaller size than to their label, reckoned a slice at a time: a mould's size hangs on its whole
 * lineage and on every reading, so that a change of any of these may change any of them. As long as there is none, what was found before is
 * answered at once, and as the very same set, so that nothing is drawn again.
 */
export function* smallCastings(shelf: Shelf): Generator<void, ReadonlySet<string>> {
  const basis = sizeBasis(shelf);
  const found = known.last?.basis === basis ? known.last.found : yield* foundSmall(shelf);
  const inUse = inUseOf(shelf, found);
  const before = known.last?.inUse;
  const isSame = before?.size === inUse.size && [...inUse].every((id) => before.has(id));
  known.last = { basis, found, inUse: isSame && before ? before : inUse };
  return known.last.inUse;
}

function* foundSmall(shelf: Shelf): Generator<void, ReadonlySet<string>> {
  yield* readyLearned(shelf);
  const found = new Set<string>();
  let judged = 0;
  for (const mould of shelf.things.mould.values() as Iterable<Mould>) {
    if (mould.size === undefined) continue;
    if (smallerThanLabel(shelf, mould)) found.add(mould.id);
    if (++judged % SLICE === 0) yield;
  }
  return found;
}

function inUseOf(shelf: Shelf, found: ReadonlySet<string>): ReadonlySet<string> {
  return new Set(
    [...found].filter((id) => {
      const mould = shelf.things.mould.get(id as MouldId);
      return mould && isLivingMould(mould);
    }),
  );
}
