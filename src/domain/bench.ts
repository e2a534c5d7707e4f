import { blank } from './blank.ts';
import type { Day, PlaceId, ThingId } from './brand.ts';
import { NOUNS, type Noun } from './noun.ts';
import type { Shelf, Thing, Things } from './shelf.ts';

/** A thing that this bench made or copied, and so may write to. */
export type Mine = { -readonly [K in keyof Thing]?: Thing[K] } & Record<string, unknown>;

const BIG = 500;
const spares = new WeakMap<object, unknown>();

function bigMapsOf({ things, contents }: Shelf): readonly ReadonlyMap<unknown, unknown>[] {
  return [...NOUNS.map((noun) => things[noun]), contents].filter((map) => map.size >= BIG && !spares.has(map));
}

/** Whether something of the shelf is big enough to be copied in advance. */
export function isToSpare(shelf: Shelf): boolean {
  return bigMapsOf(shelf).length > 0;
}

/** Copies the shelf's big maps for the next bench to write to, while nobody waits: of 5,000 moulds that takes longer than all else in a sum. */
export function spare(shelf: Shelf): void {
  for (const map of bigMapsOf(shelf)) spares.set(map, new Map(map));
}

function copyOf<K, V>(map: ReadonlyMap<K, V>): Map<K, V> {
  const copied = spares.get(map) as Map<K, V> | undefined;
  spares.delete(map);
  return copied ?? new Map(map);
}

/** A shelf being changed: maps and things are copied once, when first written to; what the base holds is never touched. */
export class Bench {
  readonly things: { -readonly [N in Noun]: Things[N] };
  studio: Shelf['studio'];
  private readonly copied = new Set<Noun>();
  private readonly mine = new Set<Thing>();
  private contents: Map<PlaceId, ReadonlySet<ThingId>> | null = null;
  private readonly freshSets = new Set<PlaceId>();

  private readonly base: Shelf;

  constructor(base: Shelf) {
    this.base = base;
    this.things = { ...base.things };
    this.studio = base.studio;
  }

  get(id: string): Thing | undefined {
    for (const noun of NOUNS) {
      const found = (this.things[noun] as ReadonlyMap<string, Thing>).get(id);
      if (found) return found;
    }
    return undefined;
  }

  of<N extends Noun>(noun: N, id: string): Thing<N> | undefined {
    return (this.things[noun] as ReadonlyMap<string, Thing<N>>).get(id);
  }

  /** A pile of injected waxes or castings. */
  pile(id: string): Thing<'injectedWax' | 'casting'> | undefined {
    return this.of('injectedWax', id) ?? this.of('casting', id);
  }

  /** Puts a thing with what is given, of this bench's own, in the place of any that has its id. */
  make(given: object): Thing {
    const thing = Object.assign(blank((given as Thing).noun), given) as Thing;
    this.put(thing);
    return thing;
  }

  private put(thing: Thing): void {
    const noun = thing.noun;
    if (!this.copied.has(noun)) {
      (this.things as Record<Noun, unknown>)[noun] = copyOf(this.things[noun] as ReadonlyMap<string, Thing>);
      this.copied.add(noun);
    }
    (this.things[noun] as unknown as Map<string, Thing>).set(thing.id, thing);
    this.mine.add(thing);
  }

  /** The thing to write to: itself when it is this bench's own, else a copy in its stead. */
  edit(thing: Thing): Mine {
    if (this.mine.has(thing)) return thing as unknown as Mine;
    return this.make(thing) as unknown as Mine;
  }

  /** Puts a thing where it stands; the index of contents follows. */
  stand(thing: Thing, at: PlaceId | undefined, since: Day): Mine {
    const mine = this.edit(thing);
    if (mine.at !== undefined) this.setOf(mine.at).delete(thing.id);
    clear(mine, 'at', 'atSince', 'until');
    if (at === undefined) return mine;
    this.setOf(at).add(thing.id);
    mine.at = at;
    mine.atSince = since;
    return mine;
  }

  private setOf(place: PlaceId): Set<ThingId> {
    this.contents ??= copyOf(this.base.contents);
    if (!this.freshSets.has(place)) {
      this.contents.set(place, new Set(this.contents.get(place)));
      this.freshSets.add(place);
    }
    return this.contents.get(place) as Set<ThingId>;
  }

  done(entries: number): Shelf {
    const contents = this.contents ?? this.base.contents;
    if (this.contents) for (const place of this.freshSets) if (contents.get(place)?.size === 0) this.contents.delete(place);
    return { last: this.base.last, entries: this.base.entries + entries, studio: this.studio, things: this.things, contents };
  }
}

export function change(bench: Bench, thing: Thing | undefined, changes: object): void {
  if (thing) Object.assign(bench.edit(thing), changes);
}

/** Takes fields away. Not by `delete`, which would make the browser keep the thing in a slower form. */
export function clear(mine: Mine, ...fields: readonly string[]): void {
  for (const field of fields) if (mine[field] !== undefined) mine[field] = undefined;
}

export function total(parts: { readonly [key: string]: number } | undefined): number {
  let sum = 0;
  if (parts) for (const key of Object.keys(parts)) sum += parts[key] as number;
  return sum;
}

export function sums(a: { readonly [key: string]: number } | undefined, b: { readonly [key: string]: number } | undefined) {
  const out: Record<string, number> = { ...a };
  if (b) for (const key of Object.keys(b)) out[key] = (out[key] ?? 0) + (b[key] as number);
  return out;
}

export function defined(fields: object): object {
  const out: Record<string, unknown> = {};
  for (const key of Object.keys(fields)) {
    const value = (fields as Record<string, unknown>)[key];
    if (value !== undefined) out[key] = value;
  }
  return out;
}
