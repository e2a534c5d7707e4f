import { type ComponentChildren, createPortal } from 'preact';
import { useMemo } from 'preact/hooks';
import { layOut, positionsOf, type SheetGrid } from '../../domain/label-sheet.ts';
import type { PrintedLabel } from '../../views/label-sheet.ts';
import { makeMeasure } from '../measure-text.ts';
import { LabelFace } from './label-face.tsx';

/** A drawing as high as its page is pushed onto a second one by a rounded pixel; mm left off at the foot. */
const FOOT = 0.4;

/** Pages beside the app that only printing shows. */
function Pages({ children }: { children: ComponentChildren }) {
  return createPortal(<div class="print-pages">{children}</div>, document.body);
}

/** One page, drawn in mm; enlarged about its middle by what the printer shrinks. */
function Page({ grid, correction, children }: { grid: SheetGrid; correction: number; children: ComponentChildren }) {
  const { pageWide, pageTall } = grid;
  const [x, y] = [pageWide / 2, pageTall / 2];
  const tall = pageTall - FOOT;
  return (
    <svg
      class="print-page"
      role="img"
      aria-label="Page of labels"
      width={`${pageWide}mm`}
      height={`${tall}mm`}
      viewBox={`0 0 ${pageWide} ${tall}`}
    >
      <g transform={`translate(${x} ${y}) scale(${correction}) translate(${-x} ${-y})`}>{children}</g>
    </svg>
  );
}

interface LabelPagesProps {
  labels: readonly PrintedLabel[];
  grid: SheetGrid;
  used: readonly number[];
  isCut: boolean;
  correction: number;
}

export function LabelPages({ labels, grid, used, isCut, correction }: LabelPagesProps) {
  const measure = useMemo(makeMeasure, []);
  const positions = positionsOf(grid);
  return (
    <Pages>
      {layOut(grid, labels.length, used).map((page, i) => (
        <Page key={i} grid={grid} correction={correction}>
          {page.map((number, position) => {
            const [label, at] = [number === undefined ? undefined : labels[number], positions[position]];
            if (!label || !at) return null;
            return (
              <g key={label.id} transform={`translate(${at.x} ${at.y})`}>
                {isCut && <rect width={grid.wide} height={grid.tall} fill="none" stroke="#999" stroke-width="0.1" />}
                <LabelFace label={label} wide={grid.wide} tall={grid.tall} measure={measure} />
              </g>
            );
          })}
        </Page>
      ))}
    </Pages>
  );
}

const TICK = 10;

/** A bar to hold a ruler to, along and across, and the outline of every label to hold against a sheet before a window. */
export function TestPage({ grid, bar, correction }: { grid: SheetGrid; bar: number; correction: number }) {
  const { pageWide, pageTall } = grid;
  const [x, y] = [(pageWide - bar) / 2, (pageTall - bar) / 2];
  return (
    <Pages>
      <Page grid={grid} correction={correction}>
        {positionsOf(grid).map((at) => (
          <rect key={`${at.x} ${at.y}`} {...at} width={grid.wide} height={grid.tall} fill="none" stroke="#bbb" stroke-width="0.15" />
        ))}
        {x > 0 && <TestBar bar={bar} transform={`translate(${x} ${pageTall / 2})`} />}
        {y > 0 && <TestBar bar={bar} transform={`translate(${pageWide / 2} ${y}) rotate(90)`} />}
      </Page>
    </Pages>
  );
}

function TestBar({ bar, transform }: { bar: number; transform: string }) {
  return (
    <g transform={transform} fill="#000">
      <rect width={bar} height="1" />
      {Array.from({ length: Math.floor(bar / TICK) + 1 }, (_, i) => (
        <rect key={i} x={Math.min(bar - 0.2, Math.max(0, i * TICK - 0.1))} y="-3" width="0.2" height="3" />
      ))}
      <text x={1.5} y="-4" font-size="4" font-family="sans-serif">
        {bar} mm
      </text>
    </g>
  );
}
