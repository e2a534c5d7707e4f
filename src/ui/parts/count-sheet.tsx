import { useState } from 'preact/hooks';
import { count } from '../../actions/count.ts';
import { dayInWords } from '../../domain/day-words.ts';
import { sayCount } from '../../domain/measure-words.ts';
import type { Casting, InjectedWax } from '../../domain/shelf.ts';
import { titleOf } from '../../domain/title.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { useSave } from '../use-save.ts';
import { Button } from './button.tsx';
import { SaveProblem } from './save-problem.tsx';
import { Sheet } from './sheet.tsx';
import { Stepper } from './stepper.tsx';

/** How many injected waxes or castings were counted, beside how many are recorded. */
export function CountSheet({ thing, onClose }: { thing: InjectedWax | Casting; onClose: () => void }) {
  const deps = useDeps();
  const title = titleOf(useShelf(), thing);
  const [pieces, setPieces] = useState(Math.max(0, thing.pieces));
  const save = useSave({ pieces });
  const since = thing.countedOn ? ` Last counted on ${dayInWords(thing.countedOn)}.` : '';
  return (
    <Sheet title={`Count: ${title}`} onClose={onClose}>
      <p>
        Recorded until now: {sayCount(thing.pieces, 'piece')}.{since}
      </p>
      <SaveProblem save={save} />
      <Stepper label="Pieces there now" value={pieces} leaps={[10, -10]} onChange={setPieces} />
      <div class="button-row">
        <Button
          look="main"
          disabled={save.isBusy}
          onClick={() =>
            save.run(
              () => count(deps, { of: thing.id, pieces }),
              () => {
                onClose();
                return `${title}: ${sayCount(pieces, 'piece')} counted.`;
              },
            )
          }
        >
          Write down {sayCount(pieces, 'piece')}
        </Button>
      </div>
    </Sheet>
  );
}
