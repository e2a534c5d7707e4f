import { type Shelf, type Thing, thingOf } from '../shelf.ts';

/** What a lineage is made of. Flasks are only passed through. */
export const KIN_NOUNS = ['master', 'mould', 'injectedWax', 'casting'] as const;
export type KinNoun = (typeof KIN_NOUNS)[number];
export type Kin = Thing<KinNoun>;

export function isKin(thing: Thing | undefined): thing is Kin {
  return thing !== undefined && (KIN_NOUNS as readonly string[]).includes(thing.noun);
}

export function kinOf(shelf: Shelf, id: string): Kin | undefined {
  const thing = thingOf(shelf, id);
  return isKin(thing) ? thing : undefined;
}

/** What a thing is said to have come from, each once; some of it may not be recorded here. */
export function saidParents(thing: Kin): readonly string[] {
  switch (thing.noun) {
    case 'master':
      return [...new Set(thing.from ?? [])];
    case 'mould':
      return [...new Set([...(thing.master ? [thing.master] : []), ...(thing.masters ?? [])])];
    default:
      return thing.mould ? [thing.mould] : [];
  }
}

/** The maps that lineages are told from: as long as all are the very same, so is every lineage. */
export function kinMaps({ things }: Shelf): readonly unknown[] {
  return KIN_NOUNS.map((noun) => things[noun]);
}

export function isSameAs(before: readonly unknown[] | undefined, now: readonly unknown[]): boolean {
  return before !== undefined && before.length === now.length && before.every((each, at) => each === now[at]);
}
