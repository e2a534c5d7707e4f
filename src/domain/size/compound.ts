import type { Allowance } from './allowance.ts';

/** What several steps together leave of a size. */
export interface Compounded {
  /** Size after ÷ size before: Π (1 − sᵢ). */
  readonly factor: number;
  /** Linear loss, %. */
  readonly percent: number;
  /** One standard deviation of `factor`, relative to it: √ Σ (σᵢ ÷ (1 − sᵢ))². */
  readonly relative: number;
}

/** Steps one after another: losses compound as a product, spreads in quadrature. */
export function compound(steps: readonly Allowance[]): Compounded {
  let factor = 1;
  let variance = 0;
  for (const { percent, spread } of steps) {
    const left = 1 - percent / 100;
    factor *= left;
    variance += (spread / 100 / left) ** 2;
  }
  return { factor, percent: (1 - factor) * 100, relative: Math.sqrt(variance) };
}

/** Size the master needs so that what comes of it has the size wanted, mm. */
export function masterFor(targetMm: number, factor: number): number {
  return targetMm / factor;
}

/** What is left of a volume, or of a weight in the same metal: factor³. */
export function volumeFactor(factor: number): number {
  return factor ** 3;
}
