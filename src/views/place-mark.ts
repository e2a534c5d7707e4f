import type { PlaceId } from '../domain/brand.ts';
import type { FlagKind } from '../domain/entry.ts';
import { LEVELS, type Level } from '../domain/flag.ts';

/** So many things of one kind that need attention in one place. */
export interface PlaceMark {
  readonly kind: FlagKind;
  readonly level: Level;
  readonly count: number;
}

/** What needs attention directly in each place. */
export type PlaceMarks = ReadonlyMap<PlaceId, readonly PlaceMark[]>;

/** Marks of several places as one list, each kind once, worst first. */
export function together(lists: readonly (readonly PlaceMark[])[]): readonly PlaceMark[] {
  const filled = lists.filter((list) => list.length > 0);
  if (filled.length < 2) return filled[0] ?? [];
  const byKind = new Map<string, PlaceMark>();
  for (const mark of filled.flat()) {
    const key = `${mark.level} ${mark.kind}`;
    const before = byKind.get(key);
    byKind.set(key, before ? { ...before, count: before.count + mark.count } : mark);
  }
  return [...byKind.values()].sort((a, b) => LEVELS.indexOf(b.level) - LEVELS.indexOf(a.level) || b.count - a.count);
}
