import type { Kin, KinNoun } from '../lineage/kin.ts';
import { isSameAs, KIN_NOUNS, kinMaps } from '../lineage/kin.ts';
import type { Design, Shelf, Thing, Wax } from '../shelf.ts';
import { usualWax } from './step.ts';

/** What of a thing the sizes of castings hang on; of all else, such as shots, pieces and where it stands, they know nothing. */
function faceOf(thing: Kin | Design | Wax): readonly unknown[] {
  switch (thing.noun) {
    case 'mould':
      return [thing.design, thing.size, thing.master, thing.masters, thing.purpose, thing.rubber, usualWax(thing)];
    case 'master':
      return [thing.from, thing.kind, thing.lengthMm, thing.measured?.sizes];
    case 'injectedWax':
      return [thing.mould, thing.wax, thing.state, thing.measured?.sizes];
    case 'casting':
      return [thing.mould, thing.metal, thing.measured?.sizes];
    case 'design':
      return [thing.sizes, thing.metals, thing.route];
    case 'wax':
      return [thing.name, thing.code];
  }
}

type Things = ReadonlyMap<string, Kin | Design | Wax>;
type Counts = (thing: Kin | Design | Wax) => boolean;

interface Seen {
  readonly maps: readonly unknown[];
  readonly shelf: Shelf;
  readonly basis: object;
}
const known: { last?: Seen } = {};

/**
 * Stands for everything that sizes are reckoned from: the very same object as long as none of it changed since it was last asked for. Logging a run
 * changes a mould and makes a pile, and leaves it as it was; comparing some thousand things costs a fraction of reckoning one size again.
 */
export function sizeBasis(shelf: Shelf): object {
  const maps = [...kinMaps(shelf), shelf.things.design, shelf.things.wax, shelf.studio.allowance];
  const before = known.last;
  if (before && isSameAs(before.maps, maps)) return before.basis;
  const basis = before && isAlike(before.shelf, shelf) ? before.basis : {};
  known.last = { maps, shelf, basis };
  return basis;
}

const ASKED = [...KIN_NOUNS, 'design', 'wax'] as const satisfies readonly (KinNoun | 'design' | 'wax')[];

function isAlike(before: Shelf, now: Shelf): boolean {
  if (before.studio.allowance !== now.studio.allowance) return false;
  // A pile that nobody measured, and no master came of, is in no line that a size is told along.
  const named = new Set<string>();
  for (const { from = [] } of now.things.master.values() as Iterable<Thing<'master'>>) for (const id of from) named.add(id);
  const counts: Counts = (thing) =>
    (thing.noun !== 'injectedWax' && thing.noun !== 'casting') || thing.measured?.sizes !== undefined || named.has(thing.id);
  return ASKED.every((noun) => areAlike(before.things[noun] as Things, now.things[noun] as Things, counts));
}

function areAlike(before: Things, now: Things, counts: Counts): boolean {
  if (before === now) return true;
  for (const [id, thing] of now) {
    const was = before.get(id);
    if (was === thing) continue;
    const isIn = counts(thing);
    if (isIn !== (was !== undefined && counts(was))) return false;
    if (isIn && was && !isSameAs(faceOf(was), faceOf(thing))) return false;
  }
  for (const [id, was] of before) if (!now.has(id) && counts(was)) return false;
  return true;
}
