import type { Shelf } from '../shelf.ts';
import { ancestorsOf, childrenOf, descendantsOf, parentsOf } from './descent.ts';
import { type Generation, generationOf, hasUnknownParent } from './generation.ts';
import { type Kin, type KinNoun, kinOf } from './kin.ts';

/** `line`: what a thing came from and what came of it. `family`: everything that came of the same originals. */
export const REACHES = ['line', 'family'] as const;
export type Reach = (typeof REACHES)[number];

/** One thing of a family, as its picture needs it; `unknown` stands for a parent that is not recorded. */
export interface Member {
  readonly id: string;
  readonly noun: KinNoun | 'unknown';
  readonly parents: readonly string[];
  readonly generation: number;
}

/** The id of what stands above a thing whose parent nobody wrote down. */
export const unknownAbove = (id: string) => `?${id}`;

/** The members of a thing's family, each after everything it came from. Empty for what has no lineage. */
export function familyOf(shelf: Shelf, id: string, reach: Reach): readonly Member[] {
  if (!kinOf(shelf, id)) return [];
  const up = ancestorsOf(shelf, id);
  const ids = new Set([...up, id, ...descendantsOf(shelf, id)]);
  if (reach === 'family') {
    for (const each of [...up, id]) {
      const thing = kinOf(shelf, each);
      if (thing && parentsOf(shelf, thing).length === 0) for (const below of descendantsOf(shelf, each)) ids.add(below);
    }
    // What came of them has other parents too.
    for (const each of [...ids]) for (const above of ancestorsOf(shelf, each)) ids.add(above);
  }
  return inOrder(shelf, ids);
}

/** Of these many come of a thing, a picture beside it shows the first. */
const NEAR_MOST = 2;

/**
 * A thing's nearest kin: what it came from (of a pile also what its mould came from) and some of what came of it, without those left out by
 * `isShown`. Each after everything it came from.
 */
export function nearKin(shelf: Shelf, id: string, isShown: (thing: Kin) => boolean): readonly Member[] {
  const thing = kinOf(shelf, id);
  if (!thing) return [];
  const isPile = (each: Kin) => each.noun === 'injectedWax' || each.noun === 'casting';
  const parents = parentsOf(shelf, thing).slice(0, NEAR_MOST);
  const above = parents.flatMap((each) => {
    const parent = kinOf(shelf, each);
    return parent && (isPile(thing) || isPile(parent)) ? parentsOf(shelf, parent).slice(0, NEAR_MOST) : [];
  });
  const children = (childrenOf(shelf).get(id) ?? []).filter(isShown);
  const of = (noun: KinNoun) => children.filter((each) => each.noun === noun).slice(0, NEAR_MOST);
  // Moulds are framed one below the other; masters would stand side by side, which a phone is too narrow for.
  const further = of('mould').length > 0 ? of('mould') : of('master').slice(0, 1);
  const below = [...children.filter(isPile).slice(0, NEAR_MOST), ...further].map((each) => each.id);
  const ids = new Set([...above, ...parents, id, ...below]);
  return inOrder(shelf, ids);
}

function inOrder(shelf: Shelf, ids: ReadonlySet<string>): readonly Member[] {
  const members: Member[] = [];
  const done = new Set<string>();
  const seen = new Map<string, Generation>();
  const put = (member: Member) => {
    if (done.has(member.id)) return;
    done.add(member.id);
    members.push(member);
  };
  const visit = (id: string): void => {
    if (done.has(id)) return;
    const thing = kinOf(shelf, id);
    if (!thing) return put({ id, noun: 'unknown', parents: [], generation: 0 });
    const known = parentsOf(shelf, thing).filter((parent) => ids.has(parent));
    known.forEach(visit);
    put(memberOf(shelf, thing, known, put, seen));
  };
  [...ids].sort().forEach(visit);
  return members;
}

function memberOf(
  shelf: Shelf,
  thing: Kin,
  known: readonly string[],
  put: (member: Member) => void,
  seen: Map<string, Generation>,
): Member {
  const generation = generationOf(shelf, thing.id, seen)?.count ?? 0;
  if (parentsOf(shelf, thing).length > 0 || !hasUnknownParent(shelf, thing))
    return { id: thing.id, noun: thing.noun, parents: known, generation };
  const above = unknownAbove(thing.id);
  put({ id: above, noun: 'unknown', parents: [], generation: 0 });
  return { id: thing.id, noun: thing.noun, parents: [above], generation };
}

/** A family as an outline: each thing under the first of its parents that is shown, what it came from besides named beside it. */
export interface Branch {
  readonly id: string;
  readonly besides: readonly string[];
  readonly below: readonly Branch[];
}

export function outlineOf(members: readonly Member[]): readonly Branch[] {
  const below = new Map<string | undefined, Member[]>();
  for (const member of members) {
    const [first] = member.parents;
    const list = below.get(first);
    if (list) list.push(member);
    else below.set(first, [member]);
  }
  const branch = ({ id, parents }: Member): Branch => ({ id, besides: parents.slice(1), below: (below.get(id) ?? []).map(branch) });
  return (below.get(undefined) ?? []).map(branch);
}
