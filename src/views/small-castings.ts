import { isLivingMould } from '../domain/last-of-kind.ts';
import { isSameAs, kinMaps } from '../domain/lineage/kin.ts';
import type { Mould, Shelf } from '../domain/shelf.ts';
import { smallerThanLabel } from '../domain/size/expected.ts';

/** Moulds judged before others get their turn; one takes some tenths of a millisecond on a phone. */
const SLICE = 10;

const known: { last?: { readonly basis: readonly unknown[]; readonly found: ReadonlySet<string> } } = {};

/**
 * Moulds in use whose castings come out nearer to a smaller size than to their label, reckoned a slice at a time: a mould's size hangs on its whole
 * lineage and on every reading, so that any change may change any of them.
 */
export function* smallCastings(shelf: Shelf): Generator<void, ReadonlySet<string>> {
  const basis = [...kinMaps(shelf), shelf.things.design, shelf.things.wax, shelf.studio];
  if (isSameAs(known.last?.basis, basis)) return known.last?.found ?? new Set();
  const found = new Set<string>();
  let judged = 0;
  for (const mould of shelf.things.mould.values() as Iterable<Mould>) {
    if (!isLivingMould(mould) || mould.size === undefined) continue;
    if (smallerThanLabel(shelf, mould)) found.add(mould.id);
    if (++judged % SLICE === 0) yield;
  }
  known.last = { basis, found };
  return found;
}
