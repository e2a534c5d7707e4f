import { useRef, useState } from 'preact/hooks';
import { addFront } from '../../domain/drawing/add.ts';
import { GRID_MM } from '../../domain/drawing/box.ts';
import type { FrontKind } from '../../domain/drawing/drawing.ts';
import { moveEdge } from '../../domain/drawing/edge.ts';
import { boxBetween, moveFronts } from '../../domain/drawing/move.ts';
import { isProblem } from '../../domain/problem.ts';
import type { Easel } from './use-drawing.ts';

/** What is being dragged: the chosen fronts, the corner of the one chosen, or a new front over free space; px. */
export interface Drag {
  readonly how: 'move' | 'corner' | 'new';
  readonly pointer: number;
  readonly x: number;
  readonly y: number;
  readonly dx: number;
  readonly dy: number;
}

/** Below this a drag is a tap that slipped, px. */
const SLIP_PX = 8;

/** Dragging, beside all that taps and keys can do. A finger drags only what is chosen: elsewhere it scrolls the page. */
export function useDrag(easel: Easel, scale: number, kind: FrontKind) {
  const [drag, setDrag] = useState<Drag | null>(null);
  const begun = useRef<Drag | null>(null);

  function onPointerDown(event: PointerEvent): void {
    if (event.button !== 0 || !(event.target instanceof Element)) return;
    const area = event.currentTarget as HTMLElement;
    const key = event.target.closest<HTMLElement>('[data-front]')?.dataset['front'];
    const how = event.target.closest('[data-corner]')
      ? 'corner'
      : key === undefined
        ? 'new'
        : easel.picked.includes(key)
          ? 'move'
          : undefined;
    if (!how || (how === 'new' && event.pointerType === 'touch')) return;
    const { left, top } = area.getBoundingClientRect();
    begun.current = { how, pointer: event.pointerId, x: event.clientX - left, y: event.clientY - top, dx: 0, dy: 0 };
  }

  function onPointerMove(event: PointerEvent): void {
    const from = begun.current;
    if (!from || from.pointer !== event.pointerId) return;
    const area = event.currentTarget as HTMLElement;
    const { left, top } = area.getBoundingClientRect();
    const next = { ...from, dx: event.clientX - left - from.x, dy: event.clientY - top - from.y };
    if (!drag && Math.hypot(next.dx, next.dy) < SLIP_PX) return;
    // Only now: with the pointer captured from the start, a tap would go to the area and not to the front.
    if (!drag) area.setPointerCapture(event.pointerId);
    setDrag(next);
  }

  function onPointerUp(): void {
    const done = drag;
    stop();
    if (!done) return;
    const [across, down] = [done.dx / scale, done.dy / scale];
    if (done.how === 'move') easel.take((drawing) => moveFronts(drawing, easel.picked, across, down), 'Moved.');
    else if (done.how === 'corner') corner(easel, across, down);
    else {
      const at = { x: done.x / scale, y: done.y / scale };
      easel.take((drawing) => addFront(drawing, kind, boxBetween(at, { x: at.x + across, y: at.y + down })), 'A new front.');
    }
  }

  function stop(): void {
    begun.current = null;
    setDrag(null);
  }

  return { drag, handlers: { onPointerDown, onPointerMove, onPointerUp, onPointerCancel: stop } };
}

/** The right and the lower edge go with the corner, each where it moved at all. */
function corner(easel: Easel, across: number, down: number): void {
  easel.take((drawing) => {
    const wide = Math.abs(across) < GRID_MM ? drawing : moveEdge(drawing, easel.picked, 'right', across);
    return isProblem(wide) || Math.abs(down) < GRID_MM ? wide : moveEdge(wide, easel.picked, 'bottom', down);
  }, 'Resized.');
}
