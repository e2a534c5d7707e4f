import type { PlaceId } from '../domain/brand.ts';
import type { Shelf } from '../domain/shelf.ts';
import { placesAround } from '../domain/whereabouts.ts';

/** Where a place is on a cabinet's front: the cabinet, and the drawer or shelf of it (the cabinet itself when it is one open front). */
export interface OnFront {
  readonly cabinet: PlaceId;
  readonly drawer: PlaceId;
}

/** Null when the place is in no cabinet. */
export function onFront(shelf: Shelf, id: PlaceId | undefined): OnFront | null {
  const path = placesAround(shelf, id);
  const index = path.findLastIndex((place) => place.kind === 'cabinet');
  const cabinet = path[index];
  return cabinet ? { cabinet: cabinet.id, drawer: (path[index + 1] ?? cabinet).id } : null;
}
