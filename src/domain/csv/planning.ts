import type { PlaceFinder } from './find-place.ts';
import type { KnownThing } from './known.ts';
import type { Matcher } from './matcher.ts';
import type { RowPlan } from './plan.ts';
import type { Register } from './register.ts';
import type { Row } from './table.ts';
import type { Target } from './targets.ts';

/** What a list is planned against, and what came of it so far. */
export interface Planning {
  readonly target: Target;
  readonly register: Register;
  readonly places: PlaceFinder;
  readonly matcher: Matcher;
  /** Label codes met in the list, and on which line. */
  readonly codes: Map<string, number>;
  /** Known things by id, for saying where they stand. */
  readonly byId: ReadonlyMap<string, KnownThing>;
}

export function unreadable(row: Row, says: readonly string[]): RowPlan {
  const title = row.cells.map((cell) => cell.trim()).find((cell) => cell !== '') ?? '';
  return { line: row.line, state: 'unreadable', take: false, title: title.slice(0, 60), says, drafts: [], cells: row.cells };
}

export function exists(planning: Planning, row: Row, title: string, thing: KnownThing): RowPlan {
  return {
    line: row.line,
    state: 'exists',
    take: false,
    title,
    says: [`It is on the shelf already${placed(planning, thing)}; nothing is changed.`],
    drafts: [],
  };
}

export function placed({ byId }: Planning, thing: KnownThing): string {
  const place = thing.at === undefined ? undefined : byId.get(thing.at)?.name;
  return place === undefined ? '' : `, in ${place}`;
}
