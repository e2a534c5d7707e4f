import { NOUNS } from '../../src/domain/noun.ts';
import type { Shelf, Thing } from '../../src/domain/shelf.ts';

/** A shelf as plain data in a steady order, so that two can be compared and their difference read. */
export function plainShelf(shelf: Shelf) {
  const things = Object.fromEntries(NOUNS.map((noun) => [noun, [...(shelf.things[noun] as ReadonlyMap<string, Thing>).values()]]));
  const contents = [...shelf.contents].map(([place, ids]) => [place, [...ids].sort()] as const).sort(([a], [b]) => (a < b ? -1 : 1));
  return { last: shelf.last, entries: shelf.entries, studio: shelf.studio, things, contents };
}

/** The same without `last`, which also counts entries that are not in force. */
export function plainSum(shelf: Shelf) {
  const { last: _, ...sum } = plainShelf(shelf);
  return sum;
}

/** The same as text, with the fields of each record in one order: they stand in another in a shelf that was read than in one just summed. */
export function shelfText(shelf: Shelf): string {
  return JSON.stringify(plainShelf(shelf), (_, value: unknown) =>
    typeof value === 'object' && value !== null && !Array.isArray(value)
      ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
      : value,
  );
}
