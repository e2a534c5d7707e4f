import type { FrontRect } from '../domain/front-layout.ts';

/** Smallest side of a front that a waxy thumb hits, px. */
const TAP_PX = 48;
/** Side given to the smallest front when it is zoomed to, px. */
const ZOOMED_PX = 64;

interface Fronts {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly fronts: readonly { readonly rect: FrontRect }[];
}

export interface FrontScale {
  /** Pixels for a millimetre, with the whole front shown. */
  readonly scale: number;
  /** Pixels for a millimetre when a part of the front is looked at; null when the whole front can be tapped as it is. */
  readonly zoomed: number | null;
}

/** The true proportions at the largest size that fits the width; kept within the height too where fronts stay big enough to tap. */
export function scaleOf({ widthMm, heightMm, fronts }: Fronts, widthPx: number, heightPx: number): FrontScale {
  const smallest = Math.min(...fronts.map(({ rect }) => Math.min(rect.w, rect.h)), widthMm);
  const fit = widthPx / widthMm;
  const scale = Math.max(Math.min(fit, heightPx / heightMm), Math.min(fit, ZOOMED_PX / smallest));
  return { scale, zoomed: smallest * scale < TAP_PX ? ZOOMED_PX / smallest : null };
}
