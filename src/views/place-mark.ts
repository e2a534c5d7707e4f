import type { PlaceId } from '../domain/brand.ts';
import { FLAG_KINDS, type FlagKind } from '../domain/entry.ts';
import { LEVELS, type Level } from '../domain/flag.ts';

/** So many things of one kind that need attention in one place. */
export interface PlaceMark {
  readonly kind: FlagKind;
  readonly level: Level;
  readonly count: number;
}

/** What needs attention directly in each place. */
export type PlaceMarks = ReadonlyMap<PlaceId, readonly PlaceMark[]>;

/** Marks of several places as one list, each kind once and at its most pressing, worst first: by level, then as on the list of what needs attention. */
export function together(lists: readonly (readonly PlaceMark[])[]): readonly PlaceMark[] {
  const byKind = new Map<FlagKind, PlaceMark>();
  for (const mark of lists.flat()) {
    const before = byKind.get(mark.kind);
    const level = before && rankOf(before) > rankOf(mark) ? before.level : mark.level;
    byKind.set(mark.kind, { kind: mark.kind, level, count: (before?.count ?? 0) + mark.count });
  }
  return [...byKind.values()].sort((a, b) => rankOf(b) - rankOf(a) || FLAG_KINDS.indexOf(a.kind) - FLAG_KINDS.indexOf(b.kind));
}

const rankOf = ({ level }: PlaceMark) => LEVELS.indexOf(level);
