import type { FaceText, Measure } from '../domain/label-face.ts';

/** The same type on the screen and on paper: what is measured here is what is printed. */
export const LABEL_FONT: Readonly<Record<FaceText['font'], { readonly family: string; readonly weight: number }>> = {
  plain: { family: 'system-ui, "Segoe UI", Roboto, "Noto Sans", sans-serif', weight: 400 },
  bold: { family: 'system-ui, "Segoe UI", Roboto, "Noto Sans", sans-serif', weight: 700 },
  code: { family: 'ui-monospace, "Roboto Mono", "DejaVu Sans Mono", monospace', weight: 700 },
};
const SIZE = 100;
/** A printer's own fonts and hinting may be a little wider. */
const SPARE = 1.02;
/** Of an em, where there is no canvas to measure on. */
const GUESS = 0.62;

/** Measures with the fonts of this device. */
export function makeMeasure(): Measure {
  const paint = document.createElement('canvas').getContext('2d');
  const known = new Map<string, number>();
  return (text, font) => {
    const key = `${font} ${text}`;
    let width = known.get(key);
    if (width === undefined) {
      if (paint) paint.font = `${LABEL_FONT[font].weight} ${SIZE}px ${LABEL_FONT[font].family}`;
      width = paint ? (paint.measureText(text).width / SIZE) * SPARE : text.length * GUESS;
      known.set(key, width);
    }
    return width;
  };
}
