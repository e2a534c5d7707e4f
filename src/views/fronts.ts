import type { PlaceId } from '../domain/brand.ts';
import type { FlagKind } from '../domain/entry.ts';
import { piecesByPlace, STANDING, type StandingNoun } from '../domain/filling.ts';
import { LEVELS, type Level } from '../domain/flag.ts';
import { type FrontRect, layFront } from '../domain/front-layout.ts';
import { childrenOf, labelOf } from '../domain/nesting.ts';
import type { Place, Shelf } from '../domain/shelf.ts';
import { titleOf } from '../domain/title.ts';

/** So many things of one kind that need attention in one place. */
export interface PlaceMark {
  readonly kind: FlagKind;
  readonly level: Level;
  readonly count: number;
}
/** What needs attention directly in each place. */
export type PlaceMarks = ReadonlyMap<PlaceId, readonly PlaceMark[]>;

export interface Front {
  readonly id: PlaceId;
  readonly label: string;
  /** Its name, where that says more than the label. */
  readonly name?: string;
  readonly kind: string;
  readonly rect: FrontRect;
  readonly periods: readonly string[];
  readonly pieces: number;
  /** Pieces by noun, those it has none of left out. */
  readonly counts: { readonly [N in StandingNoun]?: number };
  readonly capacity?: number;
  /** Worst first. */
  readonly marks: readonly PlaceMark[];
}

export interface CabinetFront {
  readonly id: PlaceId;
  readonly name: string;
  readonly room?: string;
  readonly widthMm: number;
  readonly heightMm: number;
  /** Whether the studio has drawn all its drawers. */
  readonly isDrawn: boolean;
  readonly fronts: readonly Front[];
  /** Pieces in all its drawers together, and those that stand in the cabinet but in none of them. */
  readonly pieces: number;
  readonly loose: number;
  readonly marks: readonly PlaceMark[];
}

/** Plain data: it is remembered as it is, to be shown at the next start before the shelf has been read. */
export interface Fronts {
  readonly cabinets: readonly CabinetFront[];
  /** Places that belong to no cabinet: boxes on a bench, shelves on a wall, rooms that hold things themselves, and who has what away. */
  readonly elsewhere: readonly Front[];
  /** Things recorded without a place. */
  readonly nowhere: number;
  /** Number of things of any kind: nothing at all means a first visit. */
  readonly things: number;
}

const NO_RECT: FrontRect = { x: 0, y: 0, w: 0, h: 0 };

export function frontsOf(shelf: Shelf, marks: PlaceMarks): Fronts {
  const children = childrenOf(shelf);
  const fill = fillOf(shelf, marks);
  const cabinets: CabinetFront[] = [];
  const elsewhere: Front[] = [];
  const seen = new Set<PlaceId>();

  function visit(place: Place, room: string | undefined): void {
    if (seen.has(place.id) || place.retired) return;
    seen.add(place.id);
    if (place.kind === 'cabinet') return void cabinets.push(cabinetFront(place, room));
    const inside = children.get(place.id) ?? [];
    const isRoom = place.kind === 'room';
    if (!isRoom || fill(place.id).pieces > 0) elsewhere.push(front(place, NO_RECT, isRoom ? fill(place.id) : deepFill(place.id)));
    for (const child of inside) if (isRoom || child.kind === 'cabinet') visit(child, isRoom ? titleOf(shelf, place) : room);
  }

  function cabinetFront(cabinet: Place, room: string | undefined): CabinetFront {
    const inside = (children.get(cabinet.id) ?? []).filter((child) => child.kind !== 'cabinet' && !child.retired);
    const layout = layFront(cabinet, inside);
    const fronts: Front[] = [];
    for (const each of inside.length > 0 ? inside : [cabinet]) {
      const rect = layout.rects.get(each.id);
      if (rect) fronts.push(front(each, rect, deepFill(each.id)));
    }
    const loose = inside.length > 0 ? fill(cabinet.id) : { pieces: 0, marks: [] };
    for (const child of children.get(cabinet.id) ?? []) if (child.kind === 'cabinet') visit(child, room);
    return {
      id: cabinet.id,
      name: titleOf(shelf, cabinet),
      ...(room === undefined ? {} : { room }),
      widthMm: layout.widthMm,
      heightMm: layout.heightMm,
      isDrawn: layout.isDrawn,
      fronts,
      pieces: fronts.reduce((sum, each) => sum + each.pieces, loose.pieces),
      loose: loose.pieces,
      marks: together([loose.marks, ...fronts.map((each) => each.marks)]),
    };
  }

  function front(place: Place, rect: FrontRect, held: Fill): Front {
    const label = labelOf(shelf, place);
    const periods = (place.periods ?? []).flatMap((id) => shelf.things.period.get(id)?.name ?? []);
    return {
      id: place.id,
      label,
      ...(place.name && place.name !== label ? { name: place.name } : {}),
      kind: place.kind ?? 'box',
      rect,
      periods,
      pieces: held.pieces,
      counts: held.counts,
      ...(place.capacity === undefined ? {} : { capacity: place.capacity }),
      marks: held.marks,
    };
  }

  /** What a front shows counts for all that is behind it: boxes in the drawer too. */
  function deepFill(id: PlaceId, depth = 0): Fill {
    const inside = children.get(id);
    if (!inside || depth > 8) return fill(id);
    const parts = [fill(id), ...inside.filter((child) => child.kind !== 'cabinet').map((child) => deepFill(child.id, depth + 1))];
    const counts: Record<string, number> = {};
    for (const part of parts) for (const [noun, count] of Object.entries(part.counts)) counts[noun] = (counts[noun] ?? 0) + count;
    return { pieces: parts.reduce((sum, part) => sum + part.pieces, 0), counts, marks: together(parts.map((part) => part.marks)) };
  }

  for (const place of children.get(undefined) ?? []) visit(place, undefined);
  // What two devices put inside each other has no top; it is shown all the same.
  for (const place of shelf.things.place.values()) if (place.kind === 'cabinet') visit(place, undefined);
  return { cabinets, elsewhere, nowhere: nowhereIn(shelf), things: thingsIn(shelf) };
}

interface Fill {
  readonly pieces: number;
  readonly counts: Front['counts'];
  readonly marks: readonly PlaceMark[];
}

function fillOf(shelf: Shelf, marks: PlaceMarks): (id: PlaceId) => Fill {
  const byNoun = STANDING.map((noun) => [noun, piecesByPlace(shelf, noun)] as const);
  return (id) => {
    const counts: { [N in StandingNoun]?: number } = {};
    let pieces = 0;
    for (const [noun, places] of byNoun) {
      const count = places.get(id);
      if (count === undefined) continue;
      counts[noun] = count;
      pieces += count;
    }
    return { pieces, counts, marks: marks.get(id) ?? [] };
  };
}

/** Marks of several places as one list, each kind once, worst first. */
function together(lists: readonly (readonly PlaceMark[])[]): readonly PlaceMark[] {
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

function thingsIn(shelf: Shelf): number {
  return Object.values(shelf.things).reduce((sum, map) => sum + map.size, 0);
}

const nowheres = new WeakMap<object, number>();

function nowhereIn(shelf: Shelf): number {
  let sum = 0;
  for (const noun of STANDING) {
    const things = shelf.things[noun];
    let count = nowheres.get(things);
    if (count === undefined) {
      count = 0;
      for (const thing of things.values()) if (thing.at === undefined && !thing.retired) count++;
      nowheres.set(things, count);
    }
    sum += count;
  }
  return sum;
}
