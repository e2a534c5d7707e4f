import { frontsOfKeys } from '../../domain/drawing/drawing.ts';
import { heldInFronts } from '../../views/drawing-holds.ts';
import { sizeInWords } from '../drawing/size-words.ts';
import type { Easel } from '../drawing/use-drawing.ts';
import { useShelf } from '../studio.tsx';
import { useUnits } from '../use-units.ts';

/** Above the buttons, where it is always seen: what was just done, what stands in its way, else what is chosen. */
export function Told({ easel }: { easel: Easel }) {
  const { says, isWrong } = easel.told;
  const chosen = useChosen(easel);
  return (
    <p class={isWrong ? 'draw-told field-problem' : 'draw-told'} role="status">
      {says || chosen}
    </p>
  );
}

function useChosen({ drawing, picked }: Easel): string {
  const units = useUnits();
  const held = heldInFronts(useShelf(), drawing, picked).says;
  const [front, ...more] = frontsOfKeys(drawing, picked);
  if (!front) return drawing.fronts.length === 1 ? 'This is the whole front. Tap it, then Cut.' : 'Tap a front to choose it.';
  if (more.length > 7) return `${more.length + 1} fronts chosen.`;
  if (more.length > 0) return `${[front, ...more].map(({ label }) => label).join(', ')} chosen.`;
  return [`${front.label}: ${front.kind}`, sizeInWords(front.box.w, front.box.h, units), held].filter(Boolean).join(', ');
}
