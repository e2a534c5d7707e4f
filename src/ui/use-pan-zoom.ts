import { useCallback, useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { drawnPart, isDrawn, type Rect, type Size, type View, viewOfAll, viewOn, withinReach, zoomed } from './pan-zoom.ts';

/** A finger that moved less than this was a tap, px. */
const TAP_PX = 8;
const STEP_PX = 80;
/** Zoomed out so far, the names of the rows would lie over one another. */
const FAR = 0.45;
const ZOOM_STEP = 1.3;
/** How near one card is looked at, with letters of the usual size. */
const NEAR = 0.9;

/** The size of letters asked for, as a multiple of the usual 16 px. The picture's boxes are of one size, so that it is zoomed instead. */
const letters = () => Number.parseFloat(getComputedStyle(document.documentElement).fontSize) / 16;

/** A picture that is dragged, pinched and zoomed: moved by its style alone, and drawn again only when a drag leaves what is drawn. */
export function usePanZoom(content: Size, begin: Rect | undefined) {
  const pane = useRef<HTMLDivElement>(null);
  const layer = useRef<HTMLDivElement>(null);
  const view = useRef<View | undefined>(undefined);
  const tools = useRef<HTMLDivElement>(null);
  const [drawn, setDrawn] = useState<Rect>({ x: 0, y: 0, width: 0, height: 0 });
  const last = useRef(drawn);

  const show = useCallback(
    (next: View) => {
      const [at, to] = [pane.current, layer.current];
      if (!at || !to) return;
      const size = { width: at.clientWidth, height: at.clientHeight };
      const kept = withinReach(next, content, size);
      view.current = kept;
      to.style.transform = `translate(${kept.x}px, ${kept.y}px) scale(${kept.s})`;
      // What stays at the pane's left edge, such as the names of the rows, undoes the picture's own move and zoom.
      to.style.setProperty('--left', `${-kept.x / kept.s}px`);
      to.style.setProperty('--unzoom', String(1 / kept.s));
      to.classList.toggle('lineage-far', kept.s < FAR);
      if (isDrawn(kept, size, last.current)) return;
      last.current = drawnPart(kept, size);
      setDrawn(last.current);
    },
    [content],
  );

  const sizeOf = () => ({ width: pane.current?.clientWidth ?? 0, height: pane.current?.clientHeight ?? 0 });
  const here = useCallback(() => {
    const size = sizeOf();
    const all = viewOfAll(content, size);
    const near = NEAR * letters();
    show(begin && all.s < near ? viewOn(begin, content, size, near) : all);
  }, [begin, content, show]);
  useLayoutEffect(here, [here]);

  const middle = () => {
    const { width, height } = sizeOf();
    return { x: width / 2, y: height / 2 };
  };
  const zoom = (factor: number, held: Point = middle()) => {
    if (view.current) show(zoomed(view.current, factor, held));
  };
  const move = (dx: number, dy: number) => {
    if (view.current) show({ ...view.current, x: view.current.x + dx, y: view.current.y + dy });
  };
  const whole = () => show(viewOfAll(content, sizeOf()));

  const acts = useRef<Acts>({ zoom, move, whole, here });
  acts.current = { zoom, move, whole, here };
  useEffect(() => {
    const [at, below] = [pane.current, tools.current];
    return at && below ? listen(at, below, acts) : undefined;
  }, []);
  return { pane, layer, tools, drawn, closer: () => zoom(ZOOM_STEP), farther: () => zoom(1 / ZOOM_STEP), whole, here };
}

interface Point {
  readonly x: number;
  readonly y: number;
}

interface Acts {
  readonly zoom: (factor: number, held?: Point) => void;
  readonly move: (dx: number, dy: number) => void;
  readonly whole: () => void;
  readonly here: () => void;
}

/** Fingers and wheel on the picture, keys on the buttons below it. Gives how to stop. */
function listen(pane: HTMLElement, tools: HTMLElement, acts: { readonly current: Acts }): () => void {
  const stop = new AbortController();
  const { signal } = stop;
  const fingers = new Map<number, Point>();
  let travelled = 0;
  const inPane = ({ clientX, clientY }: MouseEvent): Point => {
    const { left, top } = pane.getBoundingClientRect();
    return { x: clientX - left, y: clientY - top };
  };
  const down = (event: PointerEvent) => {
    if (event.button !== 0) return;
    if (fingers.size === 0) travelled = 0;
    fingers.set(event.pointerId, inPane(event));
  };
  const drag = (event: PointerEvent) => {
    const before = fingers.get(event.pointerId);
    if (!before) return;
    const now = inPane(event);
    const [dx, dy] = [now.x - before.x, now.y - before.y];
    travelled += Math.hypot(dx, dy);
    // Only a drag is captured: a captured tap would not reach the link under it.
    if (travelled > TAP_PX) pane.setPointerCapture(event.pointerId);
    fingers.set(event.pointerId, now);
    const other = [...fingers].find(([id]) => id !== event.pointerId)?.[1];
    if (!other) return acts.current.move(dx, dy);
    const apart = (point: Point) => Math.max(1, Math.hypot(point.x - other.x, point.y - other.y));
    acts.current.zoom(apart(now) / apart(before), { x: (now.x + other.x) / 2, y: (now.y + other.y) / 2 });
    acts.current.move(dx / 2, dy / 2);
  };
  const up = (event: PointerEvent) => fingers.delete(event.pointerId);
  pane.addEventListener('pointerdown', down, { signal });
  pane.addEventListener('pointermove', drag, { signal });
  pane.addEventListener('pointerup', up, { signal });
  pane.addEventListener('pointercancel', up, { signal });
  const click = (event: MouseEvent) => {
    if (travelled <= TAP_PX) return;
    event.preventDefault();
    event.stopPropagation();
  };
  pane.addEventListener('click', click, { signal, capture: true });
  const wheel = (event: WheelEvent) => {
    // A plain wheel scrolls the page.
    if (!event.ctrlKey) return;
    event.preventDefault();
    acts.current.zoom(Math.exp(-event.deltaY / 200), inPane(event));
  };
  pane.addEventListener('wheel', wheel, { signal, passive: false });
  const key = (event: KeyboardEvent) => {
    if (event.altKey || event.metaKey || event.ctrlKey || !KEYS[event.key]) return;
    event.preventDefault();
    KEYS[event.key]?.(acts.current);
  };
  tools.addEventListener('keydown', key, { signal });
  return () => stop.abort();
}

const KEYS: Readonly<Record<string, (acts: Acts) => void>> = {
  ArrowLeft: ({ move }) => move(STEP_PX, 0),
  ArrowRight: ({ move }) => move(-STEP_PX, 0),
  ArrowUp: ({ move }) => move(0, STEP_PX),
  ArrowDown: ({ move }) => move(0, -STEP_PX),
  '+': ({ zoom }) => zoom(ZOOM_STEP),
  '=': ({ zoom }) => zoom(ZOOM_STEP),
  '-': ({ zoom }) => zoom(1 / ZOOM_STEP),
  '0': ({ whole }) => whole(),
  Home: ({ here }) => here(),
};
