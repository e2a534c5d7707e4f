import { SLICE } from '../apply.ts';
import type { Day, EntryId, ThingId } from '../brand.ts';
import type { Entry } from '../entry.ts';
import { NOUNS, type Noun } from '../noun.ts';
import type { Shelf, Thing } from '../shelf.ts';
import { subjectOf } from '../subject.ts';

/** What another studio, from a backup, and this one have alone and together. */
export interface Difference {
  readonly entries: {
    /** Only in the backup. */
    readonly fresh: number;
    /** Only here. */
    readonly onlyHere: number;
    readonly same: number;
    /** Known by the same id here and there, and saying something else: no Mouldkeep writes that. Those here stay. */
    readonly otherwise: number;
  };
  /** Of each noun that differs: how many things stand only in the backup, and only here. */
  readonly things: readonly { readonly noun: Noun; readonly fresh: number; readonly onlyHere: number }[];
  /** Things known to both, about which something was written down here and something else there. */
  readonly bothChanged: number;
  /** First and last day of the backup's entries; absent from an empty one. */
  readonly days?: { readonly from: Day; readonly to: Day };
}

/** Takes this studio's journal in a page at a time, so that it need not be in memory beside the other one. */
export class Comparison {
  private readonly unmatched = new Map<EntryId, Entry>();
  private readonly theirs: readonly Entry[];
  private readonly touchedHere = new Set<string>();
  private from: Day | undefined;
  private to: Day | undefined;
  private onlyHere = 0;
  private otherwise = 0;

  private constructor(theirs: readonly Entry[]) {
    this.theirs = theirs;
  }

  /** Begins with the other studio's journal, in slices: a hundred thousand entries at once would hold the page up. */
  static *with(theirs: readonly Entry[]): Generator<void, Comparison> {
    const begun = new Comparison(theirs);
    for (const part of inParts(theirs)) {
      for (const entry of part) begun.expect(entry);
      yield;
    }
    return begun;
  }

  private expect(entry: Entry): void {
    this.unmatched.set(entry.id, entry);
    if (this.from === undefined || entry.on < this.from) this.from = entry.on;
    if (this.to === undefined || entry.on > this.to) this.to = entry.on;
  }

  take(mine: readonly Entry[]): void {
    for (const entry of mine) {
      const other = this.unmatched.get(entry.id);
      if (!other) {
        this.onlyHere += 1;
        for (const id of touched(entry)) this.touchedHere.add(id);
        continue;
      }
      this.unmatched.delete(entry.id);
      if (!saysTheSame(entry, other)) this.otherwise += 1;
    }
  }

  *done(shelf: Shelf, theirThings: readonly (readonly [Noun, readonly ThingId[]])[]): Generator<void, Difference> {
    const fresh = [...this.unmatched.values()];
    const theirIds = new Map(theirThings.map(([noun, ids]) => [noun, new Set<string>(ids)]));
    const inBoth = (id: string) =>
      NOUNS.some((noun) => (shelf.things[noun] as ReadonlyMap<string, Thing>).has(id) && theirIds.get(noun)?.has(id));
    const bothChanged = new Set<string>();
    for (const part of inParts(fresh)) {
      for (const entry of part) for (const id of touched(entry)) if (this.touchedHere.has(id) && inBoth(id)) bothChanged.add(id);
      yield;
    }
    return {
      entries: {
        fresh: fresh.length,
        onlyHere: this.onlyHere,
        same: this.theirs.length - fresh.length - this.otherwise,
        otherwise: this.otherwise,
      },
      things: NOUNS.map((noun) => thingsApart(noun, shelf, theirIds.get(noun) ?? new Set())).filter(
        (each) => each.fresh > 0 || each.onlyHere > 0,
      ),
      bothChanged: bothChanged.size,
      ...(this.from && this.to ? { days: { from: this.from, to: this.to } } : {}),
    };
  }
}

function* inParts(entries: readonly Entry[]): Generator<readonly Entry[]> {
  for (let at = 0; at < entries.length; at += SLICE) yield entries.slice(at, at + SLICE);
}

function thingsApart(noun: Noun, shelf: Shelf, theirs: ReadonlySet<string>): Difference['things'][number] {
  const mine = shelf.things[noun] as ReadonlyMap<string, Thing>;
  let shared = 0;
  for (const id of theirs) if (mine.has(id)) shared += 1;
  return { noun, fresh: theirs.size - shared, onlyHere: mine.size - shared };
}

/** Ids of the things an entry says something about. */
function touched(entry: Entry): readonly string[] {
  if (entry.kind === 'moved') return entry.things;
  const subject = subjectOf(entry);
  return subject === undefined ? [] : [subject];
}

function saysTheSame(a: Entry, b: Entry): boolean {
  return JSON.stringify(a) === JSON.stringify(b) || inKeyOrder(a) === inKeyOrder(b);
}

/** As JSON with the keys of every record in one order. */
function inKeyOrder(value: unknown): string {
  return JSON.stringify(value, (_, each: unknown) =>
    typeof each === 'object' && each !== null && !Array.isArray(each)
      ? Object.fromEntries(Object.entries(each).sort(([a], [b]) => (a < b ? -1 : 1)))
      : each,
  );
}
