import { useState } from 'preact/hooks';
import { splitFronts } from '../../domain/drawing/split.ts';
import type { Easel } from '../drawing/use-drawing.ts';
import { Button } from './button.tsx';
import { Sheet } from './sheet.tsx';
import { Stepper } from './stepper.tsx';

/** In how many the chosen fronts are cut. */
export function CutSheet({ easel, onClose }: { easel: Easel; onClose: () => void }) {
  const [rows, setRows] = useState(2);
  const [columns, setColumns] = useState(1);
  const [isRefused, setRefused] = useState(false);
  const count = rows * columns;
  const what = easel.picked.length === 1 ? 'it' : `each of the ${easel.picked.length}`;
  function cut(): void {
    if (easel.take((drawing) => splitFronts(drawing, easel.picked, rows, columns), `Cut in ${count}, all of them chosen.`)) onClose();
    else setRefused(true);
  }
  return (
    <Sheet title="Cut in how many?" onClose={onClose}>
      <Stepper label="One above the other" value={rows} low={1} high={100} leaps={[5, -5]} onChange={setRows} />
      <Stepper label="Side by side" value={columns} low={1} high={100} onChange={setColumns} />
      <p class="field-hint">The first part keeps the label and what is in it. The others are numbered on.</p>
      {isRefused && (
        <p class="field-problem" role="alert">
          {easel.told.says}
        </p>
      )}
      <Button look="main" disabled={count < 2} onClick={cut}>
        Cut {what} in {count}
      </Button>
    </Sheet>
  );
}
