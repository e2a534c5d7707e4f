import type { Shelf, Thing } from '../shelf.ts';

/** What planning an import has to know of a thing on the shelf: little enough to hand to a worker. */
export interface KnownThing {
  readonly id: string;
  readonly name?: string;
  readonly code?: string;
  readonly also?: string;
  readonly label?: string;
  readonly design?: string;
  readonly size?: string;
  readonly at?: string;
  readonly in?: string;
  readonly usual?: string;
}

const KNOWN_NOUNS = ['place', 'period', 'design', 'master', 'mould', 'wax'] as const;
export type KnownNoun = (typeof KNOWN_NOUNS)[number];

export interface Known {
  /** The shelf it was taken from; a plan made on it holds for that shelf only. */
  readonly last: string;
  readonly things: { readonly [N in KnownNoun]: readonly KnownThing[] };
}

const KEPT = ['id', 'name', 'code', 'also', 'label', 'design', 'size', 'at', 'in', 'usual'] as const;

export function knownOf(shelf: Shelf): Known {
  const slim = (thing: Thing) => {
    const all = thing as unknown as Record<string, unknown>;
    return Object.fromEntries(KEPT.flatMap((key) => (all[key] === undefined ? [] : [[key, all[key]]]))) as unknown as KnownThing;
  };
  const things = Object.fromEntries(
    KNOWN_NOUNS.map((noun) => [noun, [...(shelf.things[noun] as ReadonlyMap<string, Thing>).values()].map(slim)]),
  );
  return { last: shelf.last, things: things as unknown as Known['things'] };
}
