import { useState } from 'preact/hooks';
import { frontsOfKeys } from '../../domain/drawing/drawing.ts';
import { placeFront } from '../../domain/drawing/move.ts';
import { isProblem } from '../../domain/problem.ts';
import { parseTypedNumber } from '../../domain/typed-number.ts';
import { mmFrom } from '../../domain/units.ts';
import { shownLength } from '../drawing/draft.ts';
import type { Easel } from '../drawing/use-drawing.ts';
import { useUnits } from '../use-units.ts';
import { Field } from './field.tsx';
import { FormSheet } from './form-sheet.tsx';

const SIDES = [
  ['x', 'From the left edge'],
  ['y', 'From the top edge'],
  ['w', 'Width'],
  ['h', 'Height'],
] as const;

/** Where one front is and how large, as measured with a rule. */
export function SizeSheet({ easel, onClose }: { easel: Easel; onClose: () => void }) {
  const units = useUnits();
  const [front] = frontsOfKeys(easel.drawing, easel.picked);
  const [begun] = useState(() => Object.fromEntries(SIDES.map(([side]) => [side, front ? shownLength(front.box[side], units) : ''])));
  const [typed, setTyped] = useState<Readonly<Record<string, string>>>(begun);
  if (!front) return null;

  function take(): string | undefined {
    if (SIDES.every(([side]) => typed[side] === begun[side])) return undefined;
    const box: Record<string, number> = {};
    for (const [side, word] of SIDES) {
      const read = parseTypedNumber(typed[side] ?? '');
      if (isProblem(read) || read === undefined) return `${word}: ${read?.says ?? 'say how much.'}`;
      // A figure left alone is not rounded to how it was shown.
      box[side] = typed[side] === begun[side] ? (front?.box[side] ?? 0) : mmFrom(read, units.length);
    }
    const next = placeFront(easel.drawing, front?.key ?? '', box as { x: number; y: number; w: number; h: number });
    if (isProblem(next)) return next.says;
    easel.take(() => next, 'Resized.');
    return undefined;
  }

  return (
    <FormSheet title={`Size of ${front.label}`} take={take} onClose={onClose}>
      <div class="two">
        {SIDES.map(([side, word]) => (
          <Field
            key={side}
            label={word}
            keys="decimal"
            unit={units.length}
            value={typed[side] ?? ''}
            onInput={(value) => setTyped({ ...typed, [side]: value })}
          />
        ))}
      </div>
    </FormSheet>
  );
}
