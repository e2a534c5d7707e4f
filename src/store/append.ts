import type { EntryId } from '../domain/brand.ts';
import { type Entry, parseEntry } from '../domain/entry.ts';
import { isProblem, type Problem, problem } from '../domain/problem.ts';
import type { MouldkeepDb, TailRow } from './schema.ts';
import { readMark } from './shelf-rows.ts';

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

/** Adds one action to the tail. Rejects with Stale when something newer than `last` is there already. */
export async function append(db: MouldkeepDb, row: TailRow, last: EntryId | ''): Promise<void> {
  await db.transaction('rw', db.tail, db.meta, async () => {
    const newest = (await db.tail.orderBy('id').reverse().limit(1).primaryKeys())[0] ?? (await readMark(db)).last;
    if (newest > last) throw new Stale();
    await db.tail.add(row);
  });
}
