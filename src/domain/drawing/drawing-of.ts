import { type FrontLayout, layFront } from '../front-layout.ts';
import { isGone } from '../gone.ts';
import { childrenOf, labelOf } from '../nesting.ts';
import type { Place, Shelf } from '../shelf.ts';
import { tenths } from './box.ts';
import { type Drawing, type DrawnFront, FRONT_KINDS } from './drawing.ts';

/** The places whose fronts a cabinet shows, in the studio's order. */
export function frontsIn(shelf: Shelf, cabinet: Place): readonly Place[] {
  return (childrenOf(shelf).get(cabinet.id) ?? []).filter((place) => place.kind !== 'cabinet' && !isGone(shelf, place));
}

/** A recorded cabinet as a drawing to go on with. What was never drawn is where the shelves show it. */
export function drawingOf(shelf: Shelf, cabinet: Place): Drawing {
  const places = frontsIn(shelf, cabinet);
  const layout = layFront(cabinet, places);
  const fronts = places.map((place) => frontOf(shelf, place, layout));
  return { widthMm: tenths(layout.widthMm), heightMm: tenths(layout.heightMm), fronts, gone: [], next: 1 };
}

function frontOf(shelf: Shelf, place: Place, { rects }: FrontLayout): DrawnFront {
  const { x, y, w, h } = rects.get(place.id) ?? { x: 0, y: 0, w: 0, h: 0 };
  return {
    key: place.id,
    of: place.id,
    label: labelOf(shelf, place),
    kind: FRONT_KINDS.find((kind) => kind === place.kind) ?? 'box',
    periods: place.periods ?? [],
    ...(place.open === undefined ? {} : { open: place.open }),
    ...(place.for === undefined ? {} : { for: place.for }),
    ...(place.capacity === undefined ? {} : { capacity: place.capacity }),
    box: { x: tenths(x), y: tenths(y), w: tenths(w), h: tenths(h) },
  };
}
