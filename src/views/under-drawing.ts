import type { PlaceId, Sha256 } from '../domain/brand.ts';
import type { Place, Shelf } from '../domain/shelf.ts';
import { placesAround } from '../domain/whereabouts.ts';

/** Kept pictures that a cabinet may be drawn over: its own first, then those of the room it is to stand in, and of what is around that. */
export function underDrawing(shelf: Shelf, cabinet: Place | undefined, room: string): readonly Sha256[] {
  const around = placesAround(shelf, room as PlaceId).toReversed();
  return [...new Set([...(cabinet ? [cabinet] : []), ...around].flatMap(({ pictures }) => pictures ?? []))];
}
