import { layFace, type Measure } from '../../domain/label-face.ts';
import { pathOf, QUIET, symbolFor } from '../../domain/label-qr.ts';
import { isProblem } from '../../domain/problem.ts';
import type { PrintedLabel } from '../../views/label-sheet.ts';
import { KIND_PATHS } from '../kind-paths.ts';
import { LABEL_FONT } from '../measure-text.ts';

export interface FaceProps {
  label: PrintedLabel;
  /** mm. */
  wide: number;
  tall: number;
  measure: Measure;
}

/** One label, drawn in mm from its top left corner: black on whatever it is printed on. */
export function LabelFace({ label, wide, tall, measure }: FaceProps) {
  const { symbol, texts, shape } = layFace(label.words, wide, tall, measure);
  const made = label.payload === '' ? undefined : symbolFor(label.payload, symbol.side);
  const drawn = made && !isProblem(made) ? made : undefined;
  const quiet = drawn ? QUIET * drawn.moduleMm : 0;
  return (
    <g fill="#000">
      {drawn && (
        <path
          d={pathOf(drawn.modules)}
          transform={`translate(${symbol.x + quiet} ${symbol.y + quiet}) scale(${drawn.moduleMm})`}
          shape-rendering="crispEdges"
        />
      )}
      {!drawn && (
        <rect
          x={symbol.x + 1}
          y={symbol.y + 1}
          width={symbol.side - 2}
          height={symbol.side - 2}
          fill="none"
          stroke="#000"
          stroke-width="0.3"
          stroke-dasharray="1 1"
        />
      )}
      {shape.size > 0 && (
        <path d={KIND_PATHS[label.shape]} fill-rule="evenodd" transform={`translate(${shape.x} ${shape.y}) scale(${shape.size / 20})`} />
      )}
      {texts.map(({ text, font, x, y, size }) => (
        <text key={y} x={x} y={y} font-size={size} font-family={LABEL_FONT[font].family} font-weight={LABEL_FONT[font].weight}>
          {text}
        </text>
      ))}
    </g>
  );
}
