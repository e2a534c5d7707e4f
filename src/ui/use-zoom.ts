import { useRef, useState } from 'preact/hooks';

/** How much pictures are magnified, and how far they are moved, in widths and heights of their pane. */
export interface Zoom {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

const WHOLE: Zoom = { scale: 1, x: 0, y: 0 };
const SCALE_MAX = 8;
/** Pixels a finger has to go to turn to another picture. */
const SWIPE = 48;

const within = (value: number, most: number) => Math.min(most, Math.max(-most, value));

/** Never further than the picture's own edge. */
function kept({ scale, x, y }: Zoom): Zoom {
  const held = Math.min(SCALE_MAX, Math.max(1, scale));
  const most = (held - 1) / 2;
  return { scale: held, x: within(x, most), y: within(y, most) };
}

interface Touch {
  readonly x: number;
  readonly y: number;
}

export interface ZoomHands {
  readonly zoom: Zoom;
  readonly by: (factor: number) => void;
  readonly reset: () => void;
  /** Pointer listeners of one pane: two fingers magnify, one moves, and turns to another picture while nothing is magnified. */
  readonly on: (turn: (step: number) => void) => {
    onPointerDown: (event: PointerEvent) => void;
    onPointerMove: (event: PointerEvent) => void;
    onPointerUp: (event: PointerEvent) => void;
    onPointerCancel: (event: PointerEvent) => void;
  };
}

/** One magnification for all panes, so that the same spot is seen in each. */
export function useZoom(): ZoomHands {
  const [zoom, setZoom] = useState(WHOLE);
  const touches = useRef(new Map<number, Touch>());
  const began = useRef<Touch | undefined>(undefined);
  const apart = ([a, b]: readonly Touch[]) => (a && b ? Math.hypot(a.x - b.x, a.y - b.y) : 0);

  function move(event: PointerEvent): void {
    const before = touches.current.get(event.pointerId);
    if (!before) return;
    const was = apart([...touches.current.values()]);
    touches.current.set(event.pointerId, { x: event.clientX, y: event.clientY });
    const is = apart([...touches.current.values()]);
    const { offsetWidth, offsetHeight } = event.currentTarget as HTMLElement;
    if (touches.current.size > 1) {
      began.current = undefined;
      if (was > 0) setZoom((now) => kept({ ...now, scale: (now.scale * is) / was }));
    } else if (zoom.scale > 1) {
      const [dx, dy] = [(event.clientX - before.x) / offsetWidth, (event.clientY - before.y) / offsetHeight];
      setZoom((now) => kept({ ...now, x: now.x + dx, y: now.y + dy }));
    }
  }

  function end(event: PointerEvent, turn?: (step: number) => void): void {
    const from = began.current;
    touches.current.delete(event.pointerId);
    began.current = undefined;
    if (!turn || !from || zoom.scale > 1) return;
    const [dx, dy] = [event.clientX - from.x, event.clientY - from.y];
    if (Math.abs(dx) > SWIPE && Math.abs(dx) > Math.abs(dy)) turn(dx < 0 ? 1 : -1);
  }

  return {
    zoom,
    by: (factor) => setZoom((now) => kept({ ...now, scale: now.scale * factor })),
    reset: () => setZoom(WHOLE),
    on: (turn) => ({
      onPointerDown(event) {
        (event.currentTarget as HTMLElement).setPointerCapture(event.pointerId);
        touches.current.set(event.pointerId, { x: event.clientX, y: event.clientY });
        began.current = touches.current.size === 1 ? { x: event.clientX, y: event.clientY } : undefined;
      },
      onPointerMove: move,
      onPointerUp: (event) => end(event, turn),
      onPointerCancel: (event) => end(event),
    }),
  };
}
