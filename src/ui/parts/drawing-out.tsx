import { SIDES } from '../../domain/drawing/box.ts';
import { frontsOfKeys } from '../../domain/drawing/drawing.ts';
import { frontBeside } from '../../domain/drawing/move.ts';
import { removeFronts } from '../../domain/drawing/remove.ts';
import { heldInFronts } from '../../views/drawing-holds.ts';
import type { Easel } from '../drawing/use-drawing.ts';
import { useShelf } from '../studio.tsx';
import { Button } from './button.tsx';
import { Sheet } from './sheet.tsx';
import { ThingPicker } from './thing-picker.tsx';

interface OutProps {
  easel: Easel;
  /** The cabinet itself, for what may stand in it and in no drawer; a new one has none yet. */
  cabinet: string | undefined;
  onClose: () => void;
}

/** What is in the fronts to be taken out, and where it can go: to a neighbour, loose into the cabinet, or anywhere else. */
export function OutSheet({ easel, cabinet, onClose }: OutProps) {
  const { drawing, picked } = easel;
  const held = heldInFronts(useShelf(), drawing, picked);
  const chosen = frontsOfKeys(drawing, picked);
  const labels = chosen.map(({ label }) => label).join(', ');
  const near = new Map(
    chosen.flatMap((front) => SIDES.flatMap((side) => frontBeside(drawing, front, side) ?? [])).map((front) => [front.key, front]),
  );
  const offered = [...near.values()].filter(({ key }) => !picked.includes(key)).slice(0, 6);
  const out = (to: string) => {
    if (easel.take((each) => removeFronts(each, picked, to), `${labels} taken out.`)) onClose();
  };
  return (
    <Sheet title={`Take out ${labels}`} onClose={onClose}>
      <p>
        <strong>
          {chosen.length === 1 ? `${labels} holds` : 'They hold'} {held.says}.
        </strong>{' '}
        Where does it go? It is moved when you save the drawing.
      </p>
      <div class="sheet-list">
        {offered.map(({ key, label }) => (
          <Button key={key} onClick={() => out(key)}>
            Into {label}
          </Button>
        ))}
        {cabinet && <Button onClick={() => out(cabinet)}>Into the cabinet, in no drawer</Button>}
      </div>
      <ThingPicker label="Another place" nouns={['place']} value="" hasScan={false} onPick={out} />
      {easel.told.isWrong && <p class="field-problem">{easel.told.says}</p>}
    </Sheet>
  );
}
