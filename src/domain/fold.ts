import { apply, applyInSlices } from './apply.ts';
import type { EntryId } from './brand.ts';
import type { Entry } from './entry.ts';
import { EMPTY_SHELF, type Shelf } from './shelf.ts';
import { through } from './slices.ts';

/** Entries in time order, each once. */
export function inOrder(entries: Iterable<Entry>): Entry[] {
  const all = [...entries];
  if (all.every((entry, i) => i === 0 || entry.id > (all[i - 1] as Entry).id)) return all;
  const byId = new Map<EntryId, Entry>();
  for (const entry of all) byId.set(entry.id, entry);
  return [...byId.values()].sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
}

/** What these entries, in time order, take back: names of actions, by their first entry. */
export function takenBackBy(ordered: readonly Entry[]): ReadonlySet<EntryId> {
  const takenBack = new Set<EntryId>();
  for (let i = ordered.length - 1; i >= 0; i--) {
    const entry = ordered[i] as Entry;
    if (entry.kind === 'withdrawn' && !isAmong(takenBack, entry)) takenBack.add(entry.entry);
  }
  return takenBack;
}

function isAmong(takenBack: ReadonlySet<EntryId>, entry: Entry): boolean {
  return takenBack.has(entry.id) || (entry.step !== undefined && takenBack.has(entry.step));
}

/**
 * The entries that count, of entries in time order: without those taken back, and without the takings-back themselves. A taking-back
 * can be taken back too, so the newest are looked at first.
 */
export function inForce(ordered: readonly Entry[]): Entry[] {
  const takenBack = takenBackBy(ordered);
  return ordered.filter((entry) => entry.kind !== 'withdrawn' && !isAmong(takenBack, entry));
}

/** The shelf that a whole journal sums to; order and repeats of the entries do not matter. */
export function foldAll(entries: Iterable<Entry>): Shelf {
  return through(foldInSlices(entries));
}

/** The same a few hundred entries at a time, so that a page can answer taps in between. */
export function* foldInSlices(entries: Iterable<Entry>): Generator<void, Shelf> {
  const ordered = inOrder(entries);
  yield;
  const counting = inForce(ordered);
  yield;
  return withLast(yield* applyInSlices(EMPTY_SHELF, counting), ordered.at(-1)?.id);
}

/**
 * The shelf after further entries, all newer than `base.last`; null when that cannot be told from the shelf alone (an entry is
 * older, takes back one that the shelf already sums, or belongs to an action that the shelf sums a part of) and the journal has to
 * be folded afresh.
 */
export function foldOn(base: Shelf, entries: Iterable<Entry>): Shelf | null {
  const ordered = inOrder(entries);
  for (const entry of ordered) {
    if (entry.id <= base.last) return null;
    if (entry.kind === 'withdrawn' && entry.entry <= base.last) return null;
    if (entry.step !== undefined && entry.step <= base.last) return null;
  }
  return withLast(apply(base, inForce(ordered)), ordered.at(-1)?.id);
}

function withLast(shelf: Shelf, last: EntryId | undefined): Shelf {
  return last === undefined ? shelf : { ...shelf, last };
}
