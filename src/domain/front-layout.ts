import type { PlaceId } from './brand.ts';
import type { Place } from './shelf.ts';

/** A rectangle on a cabinet's front, mm from its left and top edge. */
export interface FrontRect {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

export interface FrontLayout {
  readonly widthMm: number;
  readonly heightMm: number;
  /** False when at least one front was put somewhere by this function because the studio has not drawn it. */
  readonly isDrawn: boolean;
  readonly rects: ReadonlyMap<PlaceId, FrontRect>;
}

/** A front nobody has drawn is given the size of a common shallow drawer and a frame of 18 mm board (common practice, no source). */
const WIDTH_MM = 600;
const ROW_MM = 110;
const FRAME_MM = 18;
const GAP_MM = 8;

/**
 * Where each drawer or shelf is on its cabinet's front. Those not drawn yet are stacked below the drawn ones, so that everything can always
 * be seen; a cabinet with nothing in it is one open front, under its own id.
 */
export function layFront(cabinet: Place, children: readonly Place[]): FrontLayout {
  const rects = new Map<PlaceId, FrontRect>();
  let right = 0;
  let bottom = 0;
  for (const child of children) {
    if (!child.box) continue;
    const { x, y, w, h } = child.box;
    rects.set(child.id, { x, y, w, h });
    right = Math.max(right, x + w);
    bottom = Math.max(bottom, y + h);
  }
  const isWhollyDrawn = rects.size > 0;
  const widthMm = Math.max(cabinet.widthMm ?? 0, isWhollyDrawn ? right : 0) || WIDTH_MM;
  const undrawn = children.filter((child) => !child.box);
  if (undrawn.length === 0 && isWhollyDrawn) {
    return { widthMm, heightMm: Math.max(cabinet.heightMm ?? 0, bottom), isDrawn: true, rects };
  }
  const stacked = children.length === 0 ? [cabinet] : undrawn;
  const top = bottom > 0 ? bottom + GAP_MM : FRAME_MM;
  const columns = stacked.length > 24 ? 3 : stacked.length > 10 ? 2 : 1;
  const rows = Math.ceil(stacked.length / columns);
  const room = (cabinet.heightMm ?? 0) - top - FRAME_MM;
  const rowMm = room > 0 && room / rows >= GAP_MM * 4 ? room / rows : ROW_MM;
  const columnMm = (widthMm - 2 * FRAME_MM) / columns;
  stacked.forEach((place, index) => {
    const column = Math.floor(index / rows);
    const row = index % rows;
    rects.set(place.id, { x: FRAME_MM + column * columnMm, y: top + row * rowMm, w: columnMm - GAP_MM, h: rowMm - GAP_MM });
  });
  return { widthMm, heightMm: Math.max(cabinet.heightMm ?? 0, top + rows * rowMm + FRAME_MM), isDrawn: false, rects };
}
