import type { Entry } from '../../src/domain/entry.ts';
import type { Problem } from '../../src/domain/problem.ts';
import type { Shelf } from '../../src/domain/shelf.ts';
import type { MakePlan } from '../../src/store/keeper.ts';
import { mustBe } from './database.ts';

/** Plans one new wax; `more` further entries that put grams on it. */
export const newWax =
  (name: string, more = 0): MakePlan =>
  (_, desk) => {
    const recorded = { ...desk.entry(), kind: 'recorded', noun: 'wax', fields: { name, code: desk.code('wax') } } as const;
    const rest = Array.from({ length: more }, () => ({ ...desk.entry(), kind: 'received', wax: recorded.id, grams: 7 }));
    return [recorded, ...rest] as unknown as Entry[];
  };

/** Plans to take an entry back. */
export const undo =
  (entry: Entry | undefined): MakePlan =>
  (_, desk) => [{ ...desk.entry(), kind: 'withdrawn', entry: (entry as Entry).id }];

/** Names of all waxes on the shelf. */
export function waxNames(shelf: Shelf): (string | undefined)[] {
  return [...shelf.things.wax.values()].map((wax) => wax.name);
}

/** The first entry of an action. */
export async function first(acted: Promise<readonly Entry[] | Problem>): Promise<Entry> {
  return mustBe(await acted)[0] as Entry;
}
