import type { PlaceId } from '../domain/brand.ts';
import { STANDING } from '../domain/filling.ts';
import { layFront } from '../domain/front-layout.ts';
import { isGone } from '../domain/gone.ts';
import { childrenOf } from '../domain/nesting.ts';
import type { Place, Shelf } from '../domain/shelf.ts';
import { titleOf } from '../domain/title.ts';
import { type Fill, type Front, fillOf, front } from './front.ts';
import { type PlaceMark, type PlaceMarks, together } from './place-mark.ts';

export type { PlaceMark, PlaceMarks };

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

/** Raised with every change to what `Fronts` holds: one that was remembered by another version is not shown. */
export const FRONTS_SHAPE = 4;

/** Plain data: it is remembered as it is, to be shown at the next start before the shelf has been read. */
export interface Fronts {
  readonly cabinets: readonly CabinetFront[];
  /** Places that belong to no cabinet: boxes on a bench, shelves on a wall, rooms that hold things themselves, and who has what away. */
  readonly elsewhere: readonly Front[];
  /** Things recorded without a place. */
  readonly nowhere: number;
  /** Number of things of any kind: none at all means a first visit. */
  readonly things: number;
}

const NO_FILL: Fill = { pieces: 0, counts: {}, marks: [] };

let last: { readonly things: Shelf['things']; readonly marks: PlaceMarks; readonly fronts: Fronts } | undefined;

/** All fronts; asked again with the same shelf and marks, the very same answer. */
export function frontsOf(shelf: Shelf, marks: PlaceMarks): Fronts {
  if (last?.things !== shelf.things || last.marks !== marks) last = { things: shelf.things, marks, fronts: draw(shelf, marks) };
  return last.fronts;
}

function draw(shelf: Shelf, marks: PlaceMarks): Fronts {
  const children = childrenOf(shelf);
  const cabinets: CabinetFront[] = [];
  const elsewhere: Front[] = [];

  function visit(place: Place, room: string | undefined): void {
    if (isGone(shelf, place)) return;
    const inside = children.get(place.id) ?? [];
    if (place.kind === 'cabinet') {
      cabinets.push(cabinetFront(shelf, place, inside, marks, room));
      for (const inner of inside) if (inner.kind === 'cabinet') visit(inner, room);
      return;
    }
    const isRoom = place.kind === 'room';
    const own = front(shelf, place, marks);
    if (!isRoom || own.pieces > 0) elsewhere.push(own);
    for (const inner of inside) if (isRoom || inner.kind === 'cabinet') visit(inner, isRoom ? titleOf(shelf, place) : room);
  }

  for (const place of children.get(undefined) ?? []) visit(place, undefined);
  // Room by room; those in no room first.
  cabinets.sort((a, b) => Number(a.room !== undefined) - Number(b.room !== undefined));
  return { cabinets, elsewhere, nowhere: nowhereIn(shelf), things: thingsIn(shelf) };
}

function cabinetFront(shelf: Shelf, cabinet: Place, children: readonly Place[], marks: PlaceMarks, room: string | undefined): CabinetFront {
  const inside = children.filter((child) => child.kind !== 'cabinet' && !isGone(shelf, child));
  const { widthMm, heightMm, isDrawn, rects } = layFront(cabinet, inside);
  const shown = inside.length > 0 ? inside : [cabinet];
  const name = titleOf(shelf, cabinet);
  const fronts = shown.map((place) => withoutName(front(shelf, place, marks, rects.get(place.id)), name));
  const loose = inside.length > 0 ? fillOf(shelf, cabinet.id, marks) : NO_FILL;
  return {
    id: cabinet.id,
    name,
    ...(room === undefined ? {} : { room }),
    widthMm,
    heightMm,
    isDrawn,
    fronts,
    pieces: fronts.reduce((sum, each) => sum + each.pieces, loose.pieces),
    loose: loose.pieces,
    marks: together([loose.marks, ...fronts.map((each) => each.marks)]),
  };
}

/** “Plan chest, drawer 1” is “drawer 1” on the plan chest. */
function withoutName(drawn: Front, cabinet: string): Front {
  if (!drawn.name?.startsWith(cabinet)) return drawn;
  const rest = drawn.name.slice(cabinet.length).replace(/^[\s,›·–-]+/, '');
  const { name: _, ...nameless } = drawn;
  return rest === '' || rest === drawn.label ? nameless : { ...nameless, name: rest };
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
