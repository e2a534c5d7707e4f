import type { ComponentChildren } from 'preact';
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { FrontKind } from '../../domain/drawing/drawing.ts';
import type { SheetName } from '../drawing/keys.ts';
import { useBoardKeys } from '../drawing/use-board-keys.ts';
import { type Drag, useDrag } from '../drawing/use-drag.ts';
import type { Easel } from '../drawing/use-drawing.ts';
import { scaleOf } from '../front-scale.ts';
import { useWidth } from '../use-size.ts';
import { Button } from './button.tsx';
import { DrawingFront } from './drawing-front.tsx';

interface BoardProps {
  easel: Easel;
  /** What a front drawn with the pointer is. */
  kind: FrontKind;
  /** Pieces in each front, by its key. */
  pieces: ReadonlyMap<string, number>;
  onSheet: (sheet: SheetName) => void;
  onMerge: () => void;
  /** How much of each front hides the photo under it, %; 100 without a photo. */
  cover: number;
  photo: ComponentChildren;
}

/** Share of the window's height that the board may take before it is drawn smaller. */
const HEIGHT_SHARE = 0.6;
/** Sides of the carcass, px. */
const SIDES_PX = 10;

/** The cabinet's front in its true proportions, to be drawn on. Where its fronts are too small for a thumb, a tap brings that part nearer first. */
export function DrawingBoard({ easel, kind, pieces, onSheet, onMerge, cover, photo }: BoardProps) {
  const { ref, width } = useWidth<HTMLDivElement>();
  const pane = useRef<HTMLDivElement>(null);
  const [near, setNear] = useState<string | null>(null);
  const { drawing, picked, at } = easel;
  const { widthMm, heightMm, fronts } = drawing;
  const height = Math.max(300, window.innerHeight * HEIGHT_SHARE);
  const rects = { widthMm, heightMm, fronts: fronts.map(({ box }) => ({ rect: box })) };
  const { scale: whole, zoomed } = scaleOf(rects, Math.max(1, width - SIDES_PX), height);
  const isNear = near !== null && zoomed !== null;
  const scale = isNear ? zoomed : whole;
  const { drag, handlers } = useDrag(easel, scale, kind);
  const onKeyDown = useBoardKeys(easel, onSheet, onMerge);
  const isFocused = useRef(false);

  useLayoutEffect(() => {
    const box = fronts.find(({ key }) => key === near)?.box;
    if (!isNear || !box || !pane.current) return;
    pane.current.scrollTo({
      left: (box.x + box.w / 2) * scale - pane.current.clientWidth / 2,
      top: (box.y + box.h / 2) * scale - pane.current.clientHeight / 2,
    });
  }, [isNear, near, scale]);
  // The arrow keys take the focus along; a front that was cut or taken out must not lose it to nowhere.
  useEffect(() => {
    if (isFocused.current) pane.current?.querySelector<HTMLElement>(`[data-front="${CSS.escape(at)}"]`)?.focus();
  }, [at, drawing]);

  const onPick = (key: string, isAdding: boolean) => {
    if (zoomed !== null && !isNear) setNear(key);
    easel.pick(key, isAdding || easel.isSeveral);
  };
  return (
    <div class="draw-board" ref={ref}>
      {zoomed !== null && (
        <div class="cabinet-near">
          {isNear ? <Button onClick={() => setNear(null)}>Whole front</Button> : <p>Tap the front to come nearer.</p>}
        </div>
      )}
      <div class="carcass" style={{ width: `${isNear ? width - SIDES_PX : widthMm * scale}px` }}>
        <div class="carcass-top" />
        <div ref={pane} class={isNear ? 'carcass-pane carcass-near' : 'carcass-pane'} style={isNear ? { maxHeight: `${height}px` } : {}}>
          <fieldset
            class={cover < 100 ? 'carcass-front draw-area draw-seen' : 'carcass-front draw-area'}
            aria-label="Fronts of the cabinet"
            style={areaStyle(widthMm * scale, heightMm * scale, 100 * scale, cover)}
            onFocusIn={() => {
              isFocused.current = true;
            }}
            onFocusOut={(event) => {
              // Gone with the front it was on: then it is put back. Gone elsewhere: then it is not.
              if (event.relatedTarget) isFocused.current = false;
            }}
            data-own-keys
            onKeyDown={onKeyDown}
            {...handlers}
          >
            {photo}
            {width > 0 &&
              fronts.map((front) => (
                <DrawingFront
                  key={front.key}
                  front={front}
                  scale={scale}
                  pieces={pieces.get(front.key) ?? 0}
                  isPicked={picked.includes(front.key)}
                  isAt={front.key === at}
                  hasCorner={picked.length === 1 && picked[0] === front.key}
                  drag={picked.includes(front.key) ? drag : null}
                  onPick={onPick}
                />
              ))}
            {drag?.how === 'new' && <NewFront drag={drag} />}
          </fieldset>
        </div>
        <div class="carcass-foot" />
      </div>
    </div>
  );
}

function NewFront({ drag: { x, y, dx, dy } }: { drag: Drag }) {
  const [left, top] = [Math.min(x, x + dx), Math.min(y, y + dy)];
  return <div class="draw-new" style={{ left: `${left}px`, top: `${top}px`, width: `${Math.abs(dx)}px`, height: `${Math.abs(dy)}px` }} />;
}

function areaStyle(width: number, height: number, grid: number, cover: number): Record<string, string> {
  return { width: `${width}px`, height: `${height}px`, '--grid': `${grid}px`, '--cover': `${cover}%` };
}
