import type { EntryId } from '../domain/brand.ts';
import type { Entry } from '../domain/entry.ts';
import { foldAll, foldOn, inOrder } from '../domain/fold.ts';
import { isProblem } from '../domain/problem.ts';
import type { Shelf } from '../domain/shelf.ts';
import { type Begin, type Loaded, load } from './load.ts';
import { entriesOf, readJournal } from './pages.ts';
import type { MouldkeepDb } from './schema.ts';
import type { Refolded, Sealed } from './seal.ts';
import { readMark } from './shelf-rows.ts';

export interface Ahead {
  readonly on: Shelf;
  readonly next: Shelf | null;
}

/**
 * What one tab holds in memory: the shelf as last sealed, the entries since, and the sum of both. Its methods are called one after
 * another, never at once.
 */
export class Held {
  shelf: Shelf;
  tail: readonly Entry[];
  readonly listeners = new Set<(shelf: Shelf) => void>();
  private base: Shelf;
  /** How often the stored shelf was summed afresh, as far as this tab knows. */
  folds: number;
  private readonly db: MouldkeepDb;
  private readonly begin: Begin;

  constructor(db: MouldkeepDb, loaded: Loaded, begin: Begin) {
    this.db = db;
    this.begin = begin;
    ({ base: this.base, tail: this.tail, shelf: this.shelf, folds: this.folds } = loaded);
  }

  /** Key of the newest row of the tail: the first entry of its action. */
  get newestRow(): EntryId | undefined {
    const newest = this.tail.at(-1);
    return newest?.step ?? newest?.id;
  }

  async reload(): Promise<void> {
    const again = await load(this.db, this.begin);
    if (isProblem(again)) return;
    ({ base: this.base, tail: this.tail, folds: this.folds } = again);
    this.show(again.shelf);
  }

  /** Shows a shelf that was just summed afresh and written, without reading it back. */
  adopt({ shelf, folds }: Refolded): void {
    this.base = shelf;
    this.tail = [];
    this.folds = folds;
    this.show(shelf);
  }

  /**
   * Sums further entries onto the shelf: on the sealed shelf when they came late, and from the whole journal when one takes back
   * what is sealed. Gives whether it was that last one, so that the stored shelf has to be summed afresh.
   */
  async take(entries: readonly Entry[], ahead?: Ahead): Promise<boolean> {
    const isTold = ahead?.on === this.shelf;
    const fresh = isTold ? entries : this.unknown(entries);
    if (fresh.length === 0) return false;
    this.tail = inOrder([...this.tail, ...fresh]);
    const next = (isTold ? ahead.next : foldOn(this.shelf, fresh)) ?? foldOn(this.base, this.tail);
    this.show(next ?? foldAll(await readJournal(this.db)));
    return next === null;
  }

  private unknown(entries: readonly Entry[]): readonly Entry[] {
    const known = new Set<EntryId>(this.tail.map((entry) => entry.id));
    return entries.filter((entry) => entry.id > this.base.last && !known.has(entry.id));
  }

  /** What the shelf will be with entries that are still being written, summed while the disk is busy. Shown only by `take`, which also tells when it fails. */
  ahead(entries: readonly Entry[]): Ahead | undefined {
    try {
      return { on: this.shelf, next: foldOn(this.shelf, entries) };
    } catch {
      return undefined;
    }
  }

  /** Takes in what other tabs wrote while this one slept. */
  async catchUp(): Promise<void> {
    const mark = await readMark(this.db);
    if (mark.last > this.shelf.last || mark.folds !== this.folds) return this.reload();
    const rows = await this.db.tail.where('id').above(this.shelf.last).toArray();
    await this.take(rows.flatMap(entriesOf));
  }

  /** Moves what was sealed from the tail into the base. */
  async follow({ from, upTo, count }: Sealed): Promise<void> {
    const part = this.tail.filter((entry) => entry.id <= upTo);
    const next = from === this.base.last && count === part.length ? foldOn(this.base, part) : null;
    if (!next) return this.reload();
    this.base = next;
    this.tail = this.tail.slice(part.length);
  }

  private show(next: Shelf): void {
    this.shelf = next;
    for (const listener of this.listeners) listener(next);
  }
}
