import type { PlaceId, Sha256 } from '../domain/brand.ts';
import type { Place, Shelf } from '../domain/shelf.ts';
import { titleOf } from '../domain/title.ts';
import { compareTitles } from '../domain/title-order.ts';
import { placesAround } from '../domain/whereabouts.ts';

export interface PlacePicture {
  readonly sha: Sha256;
  /** The place it is of, numbered where there are several of it. */
  readonly of: string;
}

export interface UnderDrawing {
  /** The cabinet's own first, then those of the room it is to stand in, and of what is around that. */
  readonly near: readonly PlacePicture[];
  /** Those of every other place, by their names. */
  readonly others: readonly PlacePicture[];
}

/** Kept pictures that a cabinet may be drawn over, each once. */
export function underDrawing(shelf: Shelf, cabinet: Place | undefined, room: string): UnderDrawing {
  const seen = new Set<Sha256>();
  const picturesOf = (place: Place): PlacePicture[] => {
    const fresh = (place.pictures ?? []).filter((sha) => !seen.has(sha));
    for (const sha of fresh) seen.add(sha);
    const title = titleOf(shelf, place);
    return fresh.map((sha, at) => ({ sha, of: fresh.length > 1 ? `${title}, ${at + 1}` : title }));
  };
  const near = [...(cabinet ? [cabinet] : []), ...placesAround(shelf, room as PlaceId).toReversed()].flatMap(picturesOf);
  const others = [...shelf.things.place.values()]
    .filter((place) => (place.pictures ?? []).length > 0)
    .map((place) => ({ place, title: titleOf(shelf, place) }))
    .sort((a, b) => compareTitles(a.title, b.title))
    .flatMap(({ place }) => picturesOf(place));
  return { near, others };
}
