import { useMemo } from 'preact/hooks';
import { layFace } from '../../domain/label-face.ts';
import { MODULE_MM, symbolFor } from '../../domain/label-qr.ts';
import type { SheetGrid } from '../../domain/label-sheet.ts';
import { isProblem } from '../../domain/problem.ts';
import type { PrintedLabel } from '../../views/label-sheet.ts';
import { makeMeasure } from '../measure-text.ts';
import { LabelFace } from './label-face.tsx';
import { Caution, ProblemNote } from './note.tsx';

/** The first label as it will be, enlarged, and whether phones will read its symbol easily. */
export function LabelPreview({ label, grid }: { label: PrintedLabel; grid: SheetGrid }) {
  const measure = useMemo(makeMeasure, []);
  const { wide, tall } = grid;
  const made = label.payload === '' ? undefined : symbolFor(label.payload, layFace(label.words, wide, tall, measure).symbol.side);
  const isLink = label.code !== undefined && label.payload !== label.code;
  return (
    <section class="card">
      <h2>What a label looks like</h2>
      <svg
        class="label-preview"
        viewBox={`0 0 ${wide} ${tall}`}
        role="img"
        aria-label={`The label of ${label.words.name || label.words.code}, enlarged`}
      >
        <LabelFace label={label} wide={wide} tall={tall} measure={measure} />
      </svg>
      {label.code === undefined && <p class="field-hint">It has no code yet; it gets one before it is printed.</p>}
      {label.code !== undefined && (
        <p class="field-hint">
          {isLink
            ? `The symbol is a link: any phone’s camera opens ${label.payload}`
            : 'The symbol holds the bare code, for this app’s scanner.'}
        </p>
      )}
      {isProblem(made) && <ProblemNote problem={made} />}
      {made && !isProblem(made) && made.isFine && (
        <Caution>
          The symbol’s squares are {made.moduleMm.toFixed(2)} mm; under {MODULE_MM} mm a phone has to come close.{' '}
          {isLink ? 'A shorter address, the bare code, or a larger label reads better.' : 'A larger label reads better.'}
        </Caution>
      )}
    </section>
  );
}
