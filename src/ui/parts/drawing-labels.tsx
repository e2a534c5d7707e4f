import { NUMBERINGS, type Numbering, numberAnew } from '../../domain/drawing/labels.ts';
import type { Easel } from '../drawing/use-drawing.ts';
import { Button } from './button.tsx';
import { Sheet } from './sheet.tsx';

const WORDS: Readonly<Record<Numbering, string>> = {
  down: '1, 2, 3 down each column',
  across: '1, 2, 3 across each row',
  columns: 'A1, A2 … B1, B2: a letter for each column',
};

/** New labels for all fronts, which are then listed in the same order. */
export function LabelsSheet({ easel, onClose }: { easel: Easel; onClose: () => void }) {
  return (
    <Sheet title="Label all fronts anew" onClose={onClose}>
      <p>
        Drawers keep what is in them and the code on their label. They are listed in this order, too. To rename one, choose it and tap
        About.
      </p>
      <div class="sheet-list">
        {NUMBERINGS.map((how) => (
          <Button
            key={how}
            onClick={() => {
              easel.take((drawing) => numberAnew(drawing, how), 'Labelled anew.');
              onClose();
            }}
          >
            {WORDS[how]}
          </Button>
        ))}
      </div>
    </Sheet>
  );
}
