import type { Shelf } from '../shelf.ts';
import { isSameAs, KIN_NOUNS, type Kin, kinMaps, kinOf, saidParents } from './kin.ts';
import { cutsOf } from './rings.ts';

/** What a thing came from. Following it always comes to an end: rings are cut. */
export function parentsOf(shelf: Shelf, thing: Kin): readonly string[] {
  const cuts = cutsOf(shelf).get(thing.id);
  return cuts ? saidParents(thing).filter((id) => !cuts.has(id)) : saidParents(thing);
}

interface Known {
  readonly maps: readonly unknown[];
  readonly children: ReadonlyMap<string, readonly Kin[]>;
}
const known: { last?: Known } = {};

/** What came of each thing at the next step, oldest first. */
export function childrenOf(shelf: Shelf): ReadonlyMap<string, readonly Kin[]> {
  const maps = kinMaps(shelf);
  if (known.last && isSameAs(known.last.maps, maps)) return known.last.children;
  const children = new Map<string, Kin[]>();
  for (const noun of KIN_NOUNS) {
    for (const thing of (shelf.things[noun] as ReadonlyMap<string, Kin>).values()) {
      for (const parent of parentsOf(shelf, thing)) {
        const list = children.get(parent);
        if (list) list.push(thing);
        else children.set(parent, [thing]);
      }
    }
  }
  for (const list of children.values()) list.sort((a, b) => (a.id < b.id ? -1 : 1));
  known.last = { maps, children };
  return children;
}

function reached(start: string, next: (id: string) => readonly string[]): Set<string> {
  const found = new Set<string>();
  const open = [start];
  for (let id = open.pop(); id !== undefined; id = open.pop()) {
    for (const each of next(id)) {
      if (found.has(each)) continue;
      found.add(each);
      open.push(each);
    }
  }
  return found;
}

/** Everything a thing came from, up to the originals; ids that are not recorded here included. */
export function ancestorsOf(shelf: Shelf, id: string): ReadonlySet<string> {
  return reached(id, (each) => {
    const thing = kinOf(shelf, each);
    return thing ? parentsOf(shelf, thing) : [];
  });
}

/** Everything that came of a thing. */
export function descendantsOf(shelf: Shelf, id: string): ReadonlySet<string> {
  const children = childrenOf(shelf);
  return reached(id, (each) => (children.get(each) ?? []).map((child) => child.id));
}
