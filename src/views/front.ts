import type { PlaceId } from '../domain/brand.ts';
import { piecesByPlace, STANDING, type StandingNoun } from '../domain/filling.ts';
import type { FrontRect } from '../domain/front-layout.ts';
import { childrenOf, labelOf } from '../domain/nesting.ts';
import type { Place, Shelf } from '../domain/shelf.ts';
import { type PlaceMark, type PlaceMarks, together } from './place-mark.ts';

/** What is behind one front. */
export interface Fill {
  readonly pieces: number;
  /** Pieces by noun, those it has none of left out. */
  readonly counts: { readonly [N in StandingNoun]?: number };
  /** Worst first. */
  readonly marks: readonly PlaceMark[];
}

/** The front of a drawer, shelf or box: what its label says, and what is behind it. */
export interface Front extends Fill {
  readonly id: PlaceId;
  readonly label: string;
  /** Its name, where that says more than the label. */
  readonly name?: string;
  readonly kind: string;
  /** Without a door or a drawer front: shelves, boxes and open racks. */
  readonly isOpen: boolean;
  readonly rect: FrontRect;
  readonly periods: readonly string[];
  readonly capacity?: number;
}

const NO_RECT: FrontRect = { x: 0, y: 0, w: 0, h: 0 };

/** A front counts for all that is behind it: boxes in the drawer too, unless it is a room. */
export function front(shelf: Shelf, place: Place, marks: PlaceMarks, rect = NO_RECT): Front {
  const label = labelOf(shelf, place);
  return {
    id: place.id,
    label,
    ...(place.name && place.name !== label ? { name: place.name } : {}),
    kind: place.kind ?? 'box',
    isOpen: place.open ?? (place.kind === 'shelf' || place.kind === 'box'),
    rect,
    periods: (place.periods ?? []).flatMap((id) => shelf.things.period.get(id)?.name ?? []),
    ...(place.capacity === undefined ? {} : { capacity: place.capacity }),
    ...(place.kind === 'room' ? fillOf(shelf, place.id, marks) : deepFillOf(shelf, place.id, marks)),
  };
}

/** What stands directly in a place. */
export function fillOf(shelf: Shelf, id: PlaceId, marks: PlaceMarks): Fill {
  const counts: { [N in StandingNoun]?: number } = {};
  let pieces = 0;
  for (const noun of STANDING) {
    const count = piecesByPlace(shelf, noun).get(id);
    if (count === undefined) continue;
    counts[noun] = count;
    pieces += count;
  }
  return { pieces, counts, marks: together([marks.get(id) ?? []]) };
}

function deepFillOf(shelf: Shelf, id: PlaceId, marks: PlaceMarks): Fill {
  const own = fillOf(shelf, id, marks);
  const inside = childrenOf(shelf).get(id);
  if (!inside) return own;
  const parts = [own, ...inside.map((inner) => deepFillOf(shelf, inner.id, marks))];
  const counts: { [N in StandingNoun]?: number } = {};
  for (const part of parts) for (const noun of STANDING) if (part.counts[noun]) counts[noun] = (counts[noun] ?? 0) + part.counts[noun];
  return { pieces: parts.reduce((sum, part) => sum + part.pieces, 0), counts, marks: together(parts.map((part) => part.marks)) };
}
