/** Where a picture lies in its window: px = content × s + (x, y). */
export interface View {
  readonly x: number;
  readonly y: number;
  readonly s: number;
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

export interface Rect extends Size {
  readonly x: number;
  readonly y: number;
}

/** Letters of twice the size, and nearer still. */
export const ZOOM_MOST = 3.2;
const ZOOM_LEAST = 0.05;
/** Around the picture, px; above it stands the name of the first row. */
const MARGIN = 36;
/** A little of the picture always stays within reach, px. */
const HELD = 60;

/** The view that shows all of it, no larger than it is. */
export function viewOfAll(content: Size, pane: Size): View {
  const room = (length: number) => Math.max(1, length - 2 * MARGIN);
  const s = Math.max(ZOOM_LEAST, Math.min(1, room(pane.width) / content.width, room(pane.height) / content.height));
  return { x: (pane.width - content.width * s) / 2, y: (pane.height - content.height * s) / 2, s };
}

/** The view with a rectangle in the middle, or as near to it as leaves no part of the pane empty. */
export function viewOn(rect: Rect, content: Size, pane: Size, s: number): View {
  const fit = (middle: number, whole: number, room: number) => {
    const length = whole * s;
    return length + 2 * MARGIN <= room ? (room - length) / 2 : Math.min(MARGIN, Math.max(room - length - MARGIN, room / 2 - middle * s));
  };
  return { x: fit(rect.x + rect.width / 2, content.width, pane.width), y: fit(rect.y + rect.height / 2, content.height, pane.height), s };
}

/** Zoomed by a factor, with the point of the pane that is held staying where it is. */
export function zoomed(view: View, factor: number, held: { readonly x: number; readonly y: number }): View {
  const s = Math.min(ZOOM_MOST, Math.max(ZOOM_LEAST, view.s * factor));
  return { x: held.x - ((held.x - view.x) * s) / view.s, y: held.y - ((held.y - view.y) * s) / view.s, s };
}

/** Not so far aside that the picture is lost. */
export function withinReach(view: View, content: Size, pane: Size): View {
  const clamp = (value: number, low: number, high: number) => Math.min(Math.max(value, Math.min(low, high)), Math.max(low, high));
  return {
    s: view.s,
    x: clamp(view.x, HELD - content.width * view.s, pane.width - HELD),
    y: clamp(view.y, HELD - content.height * view.s, pane.height - HELD),
  };
}

/** The part of the content that a pane shows, with as much again on every side: what is drawn, so that a drag shows no gaps. */
export function drawnPart({ x, y, s }: View, { width, height }: Size): Rect {
  return { x: (-x - width) / s, y: (-y - height) / s, width: (3 * width) / s, height: (3 * height) / s };
}

/** Whether everything the pane shows has been drawn. */
export function isDrawn({ x, y, s }: View, { width, height }: Size, drawn: Rect): boolean {
  const [left, top] = [-x / s, -y / s];
  return left >= drawn.x && top >= drawn.y && left + width / s <= drawn.x + drawn.width && top + height / s <= drawn.y + drawn.height;
}

export function touches(rect: Rect, drawn: Rect): boolean {
  return (
    rect.x < drawn.x + drawn.width && rect.x + rect.width > drawn.x && rect.y < drawn.y + drawn.height && rect.y + rect.height > drawn.y
  );
}
