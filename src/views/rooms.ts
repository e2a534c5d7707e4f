import type { PlaceId } from '../domain/brand.ts';
import { isGone } from '../domain/gone.ts';
import { sayCount } from '../domain/measure-words.ts';
import { childrenOf } from '../domain/nesting.ts';
import type { Place, Shelf } from '../domain/shelf.ts';
import { titleOf } from '../domain/title.ts';
import { heldIn } from './drawing-holds.ts';

export interface RoomRow {
  readonly id: PlaceId;
  readonly name: string;
  /** “24 drawers, 118 moulds”. */
  readonly says: string;
}

export interface RoomCard {
  /** Undefined for what stands in no room. */
  readonly id?: PlaceId;
  readonly name: string;
  /** In the studio's order. */
  readonly cabinets: readonly RoomRow[];
}

/** Rooms with their cabinets, those in no room first where there are any. */
export function roomsOf(shelf: Shelf): readonly RoomCard[] {
  const children = childrenOf(shelf);
  const cabinetsIn = (id: PlaceId | undefined) =>
    (children.get(id) ?? []).filter((place) => place.kind === 'cabinet' && !isGone(shelf, place)).map((place) => rowOf(shelf, place));
  const rooms = [...shelf.things.place.values()].filter((place) => place.kind === 'room' && !isGone(shelf, place));
  const loose = cabinetsIn(undefined);
  return [
    ...(loose.length > 0 ? [{ name: 'In no room', cabinets: loose }] : []),
    ...rooms.map((room) => ({ id: room.id, name: titleOf(shelf, room), cabinets: cabinetsIn(room.id) })),
  ];
}

function rowOf(shelf: Shelf, cabinet: Place): RoomRow {
  const fronts = (childrenOf(shelf).get(cabinet.id) ?? []).filter((place) => !isGone(shelf, place)).length;
  const held = heldIn(shelf, [cabinet.id]);
  return {
    id: cabinet.id,
    name: titleOf(shelf, cabinet),
    says: [sayCount(fronts, 'front'), sayCount(held.pieces, 'piece')].join(', '),
  };
}
