import type { DesignId } from './brand.ts';
import type { Shelf, Thing } from './shelf.ts';

type Designed = 'mould' | 'master';
type ByDesign<N extends Designed> = ReadonlyMap<DesignId, readonly Thing<N>[]>;

interface Known<N extends Designed> {
  readonly map: unknown;
  readonly things: readonly Thing<N>[];
  readonly groups: ByDesign<N>;
}
const knownMoulds: { last?: Known<'mould'> } = {};
const knownMasters: { last?: Known<'master'> } = {};

/** Moulds of each design, retired ones included. */
export function mouldsByDesign(shelf: Shelf): ByDesign<'mould'> {
  return grouped(shelf.things.mould as ReadonlyMap<string, Thing<'mould'>>, knownMoulds);
}

/** Masters of each design, retired ones included. */
export function mastersByDesign(shelf: Shelf): ByDesign<'master'> {
  return grouped(shelf.things.master as ReadonlyMap<string, Thing<'master'>>, knownMasters);
}

/** Maps keep their order, so the groups are told from the last ones by going down both lists side by side. */
function grouped<N extends Designed>(map: ReadonlyMap<string, Thing<N>>, known: { last?: Known<N> }): ByDesign<N> {
  const before = known.last;
  if (before?.map === map) return before.groups;
  const things = [...map.values()];
  const groups = new Map(before?.groups);
  const length = Math.max(things.length, before?.things.length ?? 0);
  const touched = new Map<DesignId, { readonly gone: Set<Thing<N>>; readonly come: Thing<N>[] }>();
  const touch = (design: DesignId) => {
    let each = touched.get(design);
    if (!each) {
      each = { gone: new Set(), come: [] };
      touched.set(design, each);
    }
    return each;
  };
  for (let i = 0; i < length; i++) {
    const was = before?.things[i];
    const is = things[i];
    if (was === is) continue;
    if (was?.design) touch(was.design).gone.add(was);
    if (is?.design) touch(is.design).come.push(is);
  }
  for (const [design, { gone, come }] of touched) {
    const list = [...(groups.get(design) ?? []).filter((each) => !gone.has(each)), ...come].sort((a, b) => (a.id < b.id ? -1 : 1));
    if (list.length > 0) groups.set(design, list);
    else groups.delete(design);
  }
  known.last = { map, things, groups };
  return groups;
}
