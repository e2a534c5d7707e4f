import type { Shelf } from '../shelf.ts';
import { isSameAs, type Kin, kinMaps, kinOf, saidParents } from './kin.ts';

type Cuts = ReadonlyMap<string, ReadonlySet<string>>;

interface Known {
  readonly maps: readonly unknown[];
  readonly cuts: Cuts;
}
const known: { last?: Known } = {};

/**
 * Which of its parents a thing is taken not to have come from. Plans refuse a ring, but two devices can make one between them: each says that
 * its own came from the other's. A ring is cut above its oldest thing, which then counts as having come from nothing else in the ring; the
 * same on every device, since age is in the ids.
 */
export function cutsOf(shelf: Shelf): Cuts {
  const maps = kinMaps(shelf);
  if (known.last && isSameAs(known.last.maps, maps)) return known.last.cuts;
  const cuts = new Map<string, Set<string>>();
  // Every ring goes through a master that came from something.
  let open: readonly Kin[] = [...shelf.things.master.values()].filter((master) => master.from?.length);
  while (open.length > 0) {
    const rings = ringsAmong(shelf, open, cuts);
    for (const ring of rings) {
      const oldest = [...ring].sort()[0] as string;
      const cut = cuts.get(oldest) ?? new Set();
      const thing = kinOf(shelf, oldest);
      for (const parent of thing ? saidParents(thing) : []) if (ring.has(parent)) cut.add(parent);
      cuts.set(oldest, cut);
    }
    // A tangle may hold further rings that do not pass its oldest thing.
    open = rings.flatMap((ring) => [...ring].flatMap((id) => kinOf(shelf, id) ?? []));
  }
  known.last = { maps, cuts };
  return cuts;
}

/** Sets of things of which each comes from every other (strongly connected components, Tarjan 1972), without what was cut. */
function ringsAmong(shelf: Shelf, starts: readonly Kin[], cuts: Cuts): readonly ReadonlySet<string>[] {
  const rings: Set<string>[] = [];
  const index = new Map<string, number>();
  const low = new Map<string, number>();
  const stack: string[] = [];
  const onStack = new Set<string>();
  const upFrom = (id: string) => {
    const thing = kinOf(shelf, id);
    const cut = cuts.get(id);
    return thing ? saidParents(thing).filter((parent) => !cut?.has(parent)) : [];
  };
  for (const start of starts) {
    if (index.has(start.id)) continue;
    const path: { readonly id: string; readonly up: readonly string[]; next: number }[] = [];
    const enter = (id: string) => {
      index.set(id, index.size);
      low.set(id, index.get(id) as number);
      stack.push(id);
      onStack.add(id);
      path.push({ id, up: upFrom(id), next: 0 });
    };
    enter(start.id);
    for (let at = path.at(-1); at !== undefined; at = path.at(-1)) {
      const parent = at.up[at.next++];
      if (parent !== undefined) {
        if (!index.has(parent)) enter(parent);
        else if (onStack.has(parent)) low.set(at.id, Math.min(low.get(at.id) as number, index.get(parent) as number));
        continue;
      }
      path.pop();
      const below = path.at(-1);
      if (below) low.set(below.id, Math.min(low.get(below.id) as number, low.get(at.id) as number));
      if (low.get(at.id) !== index.get(at.id)) continue;
      const ring = new Set(stack.splice(stack.indexOf(at.id)));
      for (const each of ring) onStack.delete(each);
      if (ring.size > 1 || upFrom(at.id).includes(at.id)) rings.push(ring);
    }
  }
  return rings;
}
