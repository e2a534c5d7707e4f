import { layOut, type SheetGrid } from '../../domain/label-sheet.ts';
import type { PrintedLabel } from '../../views/label-sheet.ts';
import { Shape } from './shape.tsx';
import { Stepper } from './stepper.tsx';

interface PositionsProps {
  grid: SheetGrid;
  labels: readonly PrintedLabel[];
  used: readonly number[];
  onChange: (used: readonly number[]) => void;
}

/** The first sheet as it lies before you: a tap marks a position whose label is gone already. */
export function LabelPositions({ grid, labels, used, onChange }: PositionsProps) {
  const each = grid.columns * grid.rows;
  const gone = new Set(used.filter((position) => position < each));
  const [first = []] = layOut(grid, labels.length, [...gone]);
  let leading = 0;
  while (gone.has(leading)) leading++;
  const setLeading = (count: number) => {
    const rest = [...gone].filter((position) => position >= Math.max(leading, count));
    onChange([...Array.from({ length: count }, (_, i) => i), ...rest]);
  };
  return (
    <section class="card">
      <h2>Labels gone already</h2>
      <p>A sheet begun before: say how many are gone, or tap the ones that are.</p>
      <Stepper label="Gone from the top" value={leading} high={each - 1} leaps={[grid.columns]} onChange={setLeading} />
      <section class="label-sheet-scroll" aria-label="The first sheet">
        <div class="label-sheet" style={{ gridTemplateColumns: `repeat(${grid.columns}, minmax(48px, 1fr))` }}>
          {Array.from({ length: each }, (_, position) => {
            const isGone = gone.has(position);
            const number = first[position];
            const code = number === undefined ? '' : labels[number]?.words.code;
            const where = `Row ${Math.floor(position / grid.columns) + 1}, label ${(position % grid.columns) + 1}`;
            return (
              <button
                key={position}
                type="button"
                class={`label-position${isGone ? ' label-gone' : ''}${code ? ' label-filled' : ''}`}
                aria-pressed={isGone}
                aria-label={`${where}: ${isGone ? 'gone' : code || 'free'}`}
                onClick={() => onChange(isGone ? [...gone].filter((one) => one !== position) : [...gone, position])}
              >
                {isGone ? <Shape name="failed" size={16} /> : code ? <Shape name="yes" size={16} /> : null}
              </button>
            );
          })}
        </div>
      </section>
    </section>
  );
}
