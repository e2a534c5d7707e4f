import { addFront } from '../../domain/drawing/add.ts';
import type { FrontKind } from '../../domain/drawing/drawing.ts';
import { type SheetName, shift, stretch } from '../drawing/keys.ts';
import type { Easel } from '../drawing/use-drawing.ts';
import { Button } from './button.tsx';

/** Above the board: what is chosen, and more to draw on. */
export function BoardTools({ easel, kind, onSheet }: { easel: Easel; kind: FrontKind; onSheet: (sheet: SheetName) => void }) {
  const { isSeveral, picked, drawing } = easel;
  return (
    <div class="draw-tools draw-above">
      <Button aria-pressed={isSeveral} onClick={() => easel.setSeveral(!isSeveral)}>
        {isSeveral ? '✓ Several' : 'Several'}
      </Button>
      <Button onClick={picked.length === drawing.fronts.length ? easel.pickNone : easel.pickAll}>
        {picked.length === drawing.fronts.length ? 'None' : 'All'}
      </Button>
      <Button onClick={() => easel.take((each) => addFront(each, kind), 'A new front in the free space.')}>New front</Button>
      <Button onClick={() => onSheet('number')}>Number</Button>
    </div>
  );
}

interface ToolsProps {
  easel: Easel;
  isBusy: boolean;
  isSizing: boolean;
  onSheet: (sheet: SheetName) => void;
  onMerge: () => void;
  onSizing: (isSizing: boolean) => void;
  onSwap: () => void;
  onSave: () => void;
}

/** At the thumb: what is done with the chosen fronts, undo and redo, and saving. */
export function DrawingTools(props: ToolsProps) {
  return props.isSizing ? <SizeTools {...props} /> : <MainTools {...props} />;
}

function MainTools({ easel, isBusy, onSheet, onMerge, onSizing, onSave }: ToolsProps) {
  const none = easel.picked.length === 0;
  return (
    <div class="draw-tools">
      <Button disabled={none} onClick={() => onSheet('cut')}>
        Cut
      </Button>
      <Button disabled={easel.picked.length < 2} onClick={onMerge}>
        Merge
      </Button>
      <Button disabled={none} onClick={() => onSizing(true)}>
        Size
      </Button>
      <Button disabled={none} onClick={() => onSheet('about')}>
        About
      </Button>
      <Button disabled={none} onClick={() => onSheet('out')}>
        Take out
      </Button>
      <Button disabled={!easel.canUndo} onClick={easel.undo}>
        Undo
      </Button>
      <Button disabled={!easel.canRedo} onClick={easel.redo}>
        Redo
      </Button>
      <Button look="main" disabled={isBusy} onClick={onSave}>
        Save
      </Button>
    </div>
  );
}

/** Every tap is seen on the board at once: no sheet lies over it. */
function SizeTools({ easel, onSheet, onSizing, onSwap }: ToolsProps) {
  const arrows = [
    ['left', '←', 'Move it to the left'],
    ['right', '→', 'Move it to the right'],
    ['top', '↑', 'Move it up'],
    ['bottom', '↓', 'Move it down'],
  ] as const;
  return (
    <div class="draw-tools">
      <Button onClick={() => stretch(easel, 'left')}>Narrower</Button>
      <Button onClick={() => stretch(easel, 'right')}>Wider</Button>
      <Button onClick={() => stretch(easel, 'top')}>Lower</Button>
      <Button onClick={() => stretch(easel, 'bottom')}>Taller</Button>
      {arrows.map(([side, sign, word]) => (
        <Button key={side} aria-label={word} onClick={() => shift(easel, side)}>
          {sign}
        </Button>
      ))}
      <Button disabled={easel.picked.length !== 1} onClick={() => onSheet('size')}>
        Exact
      </Button>
      <Button disabled={easel.picked.length !== 2} onClick={onSwap}>
        Swap
      </Button>
      <Button disabled={!easel.canUndo} onClick={easel.undo}>
        Undo
      </Button>
      <Button look="main" onClick={() => onSizing(false)}>
        Done
      </Button>
    </div>
  );
}
