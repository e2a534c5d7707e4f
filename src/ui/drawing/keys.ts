import { hullSpan, NEXT_MM, type Side } from '../../domain/drawing/box.ts';
import { frontsOfKeys } from '../../domain/drawing/drawing.ts';
import { moveEdge } from '../../domain/drawing/edge.ts';
import { mergeFronts } from '../../domain/drawing/merge.ts';
import { frontBeside, moveFronts } from '../../domain/drawing/move.ts';
import { splitFronts } from '../../domain/drawing/split.ts';
import type { Easel } from './use-drawing.ts';

/** The sheets that a key or a button opens. */
export type SheetName = 'cut' | 'size' | 'about' | 'out' | 'number';

const ARROWS: Readonly<Record<string, Side>> = { ArrowLeft: 'left', ArrowRight: 'right', ArrowUp: 'top', ArrowDown: 'bottom' };
/** How far a key or a tap moves an edge, mm. */
export const STEP_MM = 10;

/** Told on the screen, so that nobody has to guess. */
export const KEYS: readonly { readonly keys: string; readonly does: string }[] = [
  { keys: 'Arrows', does: 'go from front to front' },
  { keys: 'Shift + arrows', does: 'choose more of them' },
  { keys: 'Space', does: 'choose, or let go' },
  { keys: 'A', does: 'choose all' },
  { keys: '2 … 9', does: 'cut in so many, one above the other' },
  { keys: 'Shift + 2 … 9', does: 'cut in so many, side by side' },
  { keys: 'M', does: 'make one of the chosen' },
  { keys: 'Ctrl or Alt + arrows', does: 'right edge to the left or right, lower edge up or down' },
  { keys: 'Ctrl or Alt + Shift + arrows', does: 'move it' },
  { keys: 'R', does: 'rename it, say what it is for' },
  { keys: 'S', does: 'its exact size' },
  { keys: 'Delete', does: 'take it out' },
  { keys: 'Ctrl + Z, Ctrl + Y', does: 'undo, do again' },
];

/** What a key does on the board; nothing when it is none of the board's. */
export function keyed(event: KeyboardEvent, easel: Easel, open: (sheet: SheetName) => void, merge: () => void): (() => void) | undefined {
  const { picked, at } = easel;
  const side = ARROWS[event.key];
  const isHeld = event.ctrlKey || event.altKey || event.metaKey;
  if (side) {
    if (isHeld) return () => (event.shiftKey ? shift(easel, side) : stretch(easel, side));
    return () => step(easel, side, event.shiftKey);
  }
  if (isHeld) return undoing(event, easel);
  const digit = /^Digit([2-9])$/.exec(event.code)?.[1];
  if (digit !== undefined) {
    const [rows, columns] = event.shiftKey ? [1, Number(digit)] : [Number(digit), 1];
    return () => void easel.take((each) => splitFronts(each, picked, rows, columns), `Cut in ${digit}.`);
  }
  const plain: Readonly<Record<string, () => void>> = {
    ' ': () => easel.pick(at, true),
    a: easel.pickAll,
    escape: easel.pickNone,
    m: merge,
    r: () => open('about'),
    f2: () => open('about'),
    s: () => open('size'),
    delete: () => open('out'),
    backspace: () => open('out'),
  };
  return plain[event.key.toLowerCase()];
}

/** To the front on that side, chosen alone or with the others. */
function step({ drawing, picked, at, pick, pickMore }: Easel, side: Side, isMore: boolean): void {
  const from = drawing.fronts.find(({ key }) => key === at);
  const next = from && frontBeside(drawing, from, side);
  if (!next) return;
  if (isMore) pickMore([...picked, at, next.key]);
  else pick(next.key, false);
}

/** Undo and redo, which work wherever nothing is being typed. */
export function undoing(event: KeyboardEvent, { undo, redo }: Easel): (() => void) | undefined {
  if (!(event.ctrlKey || event.metaKey)) return undefined;
  const key = event.key.toLowerCase();
  if (key === 'y' || (key === 'z' && event.shiftKey)) return redo;
  return key === 'z' ? undo : undefined;
}

const WORD: Readonly<Record<Side, string>> = { left: 'to the left', right: 'to the right', top: 'up', bottom: 'down' };

export function shift({ take, picked }: Easel, side: Side): void {
  const [across, down] = { left: [-STEP_MM, 0], right: [STEP_MM, 0], top: [0, -STEP_MM], bottom: [0, STEP_MM] }[side] as [number, number];
  take((drawing) => moveFronts(drawing, picked, across, down), `Moved ${WORD[side]}.`);
}

/** The right edge goes left and right, the lower edge up and down; of a front at the cabinet's own edge it is the other one, where its neighbour is. */
export function stretch({ take, picked, drawing }: Easel, side: Side): void {
  const isAcross = side === 'left' || side === 'right';
  const by = side === 'right' || side === 'bottom' ? STEP_MM : -STEP_MM;
  const boxes = frontsOfKeys(drawing, picked).map(({ box }) => box);
  const span = hullSpan(boxes, isAcross ? 'x' : 'y');
  const isAtEdge = span.high > (isAcross ? drawing.widthMm : drawing.heightMm) - NEXT_MM && span.low > NEXT_MM;
  const edge: Side = isAcross ? (isAtEdge ? 'left' : 'right') : isAtEdge ? 'top' : 'bottom';
  const says = isAcross ? (by > 0 ? 'Wider.' : 'Narrower.') : by > 0 ? 'Taller.' : 'Lower.';
  take((each) => moveEdge(each, picked, edge, by), says);
}

/** Makes one front of the chosen ones. */
export function merged(easel: Easel, says: string): void {
  easel.take((drawing) => mergeFronts(drawing, easel.picked), says);
}
