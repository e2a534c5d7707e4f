import type { Day, PlaceId, ThingId } from './brand.ts';
import { NOUNS, type Noun } from './noun.ts';
import type { Shelf, Thing, Things } from './shelf.ts';

/** A shelf being changed: maps are copied once, when first written to. */
export class Bench {
  readonly things: { -readonly [N in Noun]: Things[N] };
  studio: Shelf['studio'];
  private readonly copied = new Set<Noun>();
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

  put(thing: Thing): void {
    const noun = thing.noun;
    if (!this.copied.has(noun)) {
      (this.things as Record<Noun, unknown>)[noun] = new Map(this.things[noun] as ReadonlyMap<string, Thing>);
      this.copied.add(noun);
    }
    (this.things[noun] as unknown as Map<string, Thing>).set(thing.id, thing);
  }

  /** Puts a thing where it stands; the index of contents follows. */
  stand(thing: Thing, at: PlaceId | undefined, since: Day): Thing {
    const { at: from, atSince: _, until: __, ...rest } = thing;
    if (from !== undefined) this.setOf(from).delete(thing.id);
    if (at !== undefined) this.setOf(at).add(thing.id);
    return (at === undefined ? rest : { ...rest, at, atSince: since }) as Thing;
  }

  private setOf(place: PlaceId): Set<ThingId> {
    this.contents ??= new Map(this.base.contents);
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
  if (thing) bench.put({ ...thing, ...changes } as Thing);
}

export function total(parts: { readonly [key: string]: number } | undefined): number {
  return Object.values(parts ?? {}).reduce((sum, each) => sum + each, 0);
}

export function sums(a: { readonly [key: string]: number } | undefined, b: { readonly [key: string]: number } | undefined) {
  const out: Record<string, number> = { ...a };
  for (const [key, value] of Object.entries(b ?? {})) out[key] = (out[key] ?? 0) + value;
  return out;
}

export function defined(fields: object): object {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));
}
