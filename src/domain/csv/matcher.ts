import { fold } from '../folding.ts';
import type { Known, KnownNoun, KnownThing } from './known.ts';

/** Whether a row means a thing the shelf has, one the list had before, or a further one. */
export interface Match {
  /** The thing on the shelf it is. */
  readonly same?: KnownThing;
  /** One like it stands elsewhere on the shelf. */
  readonly like?: KnownThing;
  /** Line of the list that had it before. */
  readonly line?: number;
}

interface Wanted {
  readonly name: string | undefined;
  readonly design: string | undefined;
  readonly size: string | undefined;
  readonly at: string | undefined;
  /** Its own label code, which no thing of the shelf has: it is none that carries another. */
  readonly code?: string | undefined;
}

/**
 * Matches rows with things of one noun: by name, design and size; a thing without a name also by its place, since several may be
 * alike. Each thing of the shelf is one row only, so that a list read twice finds each of its things once.
 */
export class Matcher {
  private readonly shelf = new Map<string, KnownThing[]>();
  private readonly lines = new Map<string, number>();

  constructor(known: Known, noun: KnownNoun) {
    for (const thing of known.things[noun]) {
      const key = keyOf(thing);
      const list = this.shelf.get(key);
      if (list) list.push(thing);
      else this.shelf.set(key, [thing]);
    }
  }

  match(wanted: Wanted, line: number): Match {
    const key = keyOf(wanted);
    const all = this.shelf.get(key) ?? [];
    const list = wanted.code === undefined ? all : all.filter((thing) => thing.code === undefined);
    const stands = (thing: KnownThing) => thing.at === wanted.at || thing.usual === wanted.at;
    const isNamed = wanted.name !== undefined;
    const index = list.findIndex((thing) => stands(thing));
    const same = list[index >= 0 ? index : isNamed ? 0 : -1];
    const like = isNamed ? undefined : list[0];
    if (!same && like) return { like };
    if (wanted.code !== undefined && !same) return {};
    const lineKey = isNamed ? key : `${key}|${wanted.at ?? ''}`;
    const before = this.lines.get(lineKey);
    if (before === undefined) this.lines.set(lineKey, line);
    if (same) {
      all.splice(all.indexOf(same), 1);
      return { same };
    }
    return before === undefined ? {} : { line: before };
  }

  /** A thing of the shelf that a row means by its code is no other row's. */
  take(id: string): void {
    for (const list of this.shelf.values()) {
      const index = list.findIndex((thing) => thing.id === id);
      if (index >= 0) list.splice(index, 1);
    }
  }
}

function keyOf({ name, design, size }: { name?: string | undefined; design?: string | undefined; size?: string | undefined }): string {
  return `${fold(name ?? '')}|${design ?? ''}|${fold(size ?? '')}`;
}
