import { Dexie } from 'dexie';
import type { EntryId } from '../domain/brand.ts';
import type { Entry } from '../domain/entry.ts';
import { parseEntry } from '../domain/parse-entry.ts';
import { isProblem, type Problem, problem } from '../domain/problem.ts';
import type { MouldkeepDb, TailRow } from './schema.ts';
import type { ShelfMark } from './shelf-rows.ts';

/** Another tab has written since the shelf was read that the entries were planned on. */
export class Stale extends Error {}

/** A plan's entries as they will be read back, so that nothing is ever written that a backup or the other phone would refuse. */
export function checked(planned: readonly Entry[]): Entry[] | Problem {
  const entries: Entry[] = [];
  for (const raw of JSON.parse(JSON.stringify(planned)) as unknown[]) {
    const entry = parseEntry(raw);
    if (isProblem(entry)) return problem(entry.says, 'Nothing was changed.');
    entries.push(entry);
  }
  return entries;
}

/** What the shelf was summed from that an action was planned on. */
export interface PlannedOn {
  readonly last: EntryId | '';
  readonly folds: number;
  /** The newest row of the tail that it sums; none right after a summing afresh. */
  readonly newest: string | undefined;
}

/**
 * Adds one action to the tail. Rejects with Stale when something newer than `last` is there already, or the shelf was summed afresh since:
 * a studio put in its place may be older than the one the action was planned on. Where `newest` is still the newest row, neither has
 * happened: whatever sums afresh clears the tail, and sealing takes older rows first. Only where it is gone is the shelf's mark looked at too.
 * Without Dexie, whose promises took twice as long as the write itself: the look and the write are asked for together, and the look can
 * still call the write off. `meanwhile` is called while the disk is busy.
 */
export function append(db: MouldkeepDb, row: TailRow, { last, folds, newest }: PlannedOn, meanwhile: () => void): Promise<void> {
  if (!db.isOpen()) return Promise.reject(new Dexie.DatabaseClosedError());
  return new Promise((resolve, reject) => {
    const transaction = db.backendDB().transaction(['tail', 'meta'], 'readwrite', { durability: 'strict' });
    let stale: Stale | undefined;
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(stale ?? transaction.error);
    const callOff = () => {
      stale = new Stale();
      transaction.abort();
    };
    // All looks are heard; the row's own answer is not waited for.
    const go = () => {
      transaction.commit();
      meanwhile();
    };
    const tail = transaction.objectStore('tail');
    const look = tail.getAllKeys(IDBKeyRange.lowerBound(newest ?? last), 2);
    try {
      tail.add(row);
    } catch (error) {
      reject(error);
      transaction.abort();
      return;
    }
    look.onsuccess = () => {
      const [found, newer] = look.result;
      if (newer !== undefined || (found !== undefined && found !== newest)) return callOff();
      if (found !== undefined) return go();
      const mark = transaction.objectStore('meta').get('shelf') as IDBRequest<{ readonly value: ShelfMark } | undefined>;
      mark.onsuccess = () => {
        const { last: sealed = '', folds: now = 0 } = mark.result?.value ?? {};
        if (now !== folds || sealed > last) callOff();
        else go();
      };
    };
  });
}
