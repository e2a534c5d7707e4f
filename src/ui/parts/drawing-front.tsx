import type { DrawnFront } from '../../domain/drawing/drawing.ts';
import { sayCount } from '../../domain/measure-words.ts';
import { sizeInWords } from '../drawing/size-words.ts';
import type { Drag } from '../drawing/use-drag.ts';
import { useUnits } from '../use-units.ts';

interface FrontProps {
  front: DrawnFront;
  /** Pixels for a millimetre. */
  scale: number;
  pieces: number;
  isPicked: boolean;
  /** The one that the Tab key comes to. */
  isAt: boolean;
  /** Whether its corner can be dragged. */
  hasCorner: boolean;
  drag: Drag | null;
  onPick: (key: string, isAdding: boolean) => void;
}

/** Gap of shadow between two fronts, px. */
const GAP = 3;
/** Room that the size needs beside the label, px. */
const [SIZE_WIDTH, SIZE_HEIGHT] = [152, 62];
/** Room that the number of pieces needs in the corner. */
const [COUNT_WIDTH, COUNT_HEIGHT] = [80, 48];

/** One front on the drawing board. */
export function DrawingFront({ front, scale, pieces, isPicked, isAt, hasCorner, drag, onPick }: FrontProps) {
  const units = useUnits();
  const { key, label, kind, box } = front;
  const [dx, dy] = drag?.how === 'corner' ? [drag.dx, drag.dy] : [0, 0];
  const width = Math.max(8, box.w * scale - GAP + dx);
  const height = Math.max(8, box.h * scale - GAP + dy);
  const isOpen = front.open ?? kind !== 'drawer';
  const size = sizeInWords(box.w, box.h, units);
  const held = pieces > 0 ? `, holds ${sayCount(pieces, 'piece')}` : '';
  return (
    <>
      <button
        type="button"
        class={`front draw-one ${isOpen ? 'front-open' : ''} ${isPicked ? 'draw-picked' : ''}`}
        style={{
          left: `${box.x * scale}px`,
          top: `${box.y * scale}px`,
          width: `${width}px`,
          height: `${height}px`,
          ...(drag?.how === 'move' ? { transform: `translate(${drag.dx}px, ${drag.dy}px)` } : {}),
        }}
        aria-pressed={isPicked}
        tabIndex={isAt ? 0 : -1}
        data-front={key}
        onClick={(event) => onPick(key, event.ctrlKey || event.metaKey || event.shiftKey)}
      >
        <span class="unseen">{`${kind} ${label}, ${size}${held}`}</span>
        <span class="front-label" aria-hidden="true">
          {label}
        </span>
        {width >= SIZE_WIDTH && height >= SIZE_HEIGHT && (
          <span class="draw-word" aria-hidden="true">
            {size}
          </span>
        )}
        {isPicked && (
          <span class="draw-check" aria-hidden="true">
            ✓
          </span>
        )}
        {pieces > 0 && width >= COUNT_WIDTH && height >= COUNT_HEIGHT && (
          <span class="draw-count" aria-hidden="true">
            {pieces}
          </span>
        )}
      </button>
      {hasCorner && (
        <span
          class="draw-corner"
          data-corner
          aria-hidden="true"
          style={{ left: `${box.x * scale + width - CORNER / 2}px`, top: `${box.y * scale + height - CORNER / 2}px` }}
        />
      )}
    </>
  );
}
/** Side of the handle at the corner, px. */
const CORNER = 48;
