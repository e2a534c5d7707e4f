import type { Lifetime } from './lifetime.ts';

/** The 97.5 % point of the normal distribution. */
export const Z95 = 1.959963984540054;

/** The share still whole from one number of shots on, until the next step. */
export interface Step {
  readonly shots: number;
  /** Moulds that had come so far, ends at this very step included. */
  readonly atRisk: number;
  readonly ends: number;
  readonly share: number;
  /** Greenwood's standard error of the share. */
  readonly error: number;
  /** 95 % interval on the log(−log) scale; absent where the share is 0 or 1 and there is none. */
  readonly low?: number;
  readonly high?: number;
}

export interface Curve {
  readonly moulds: number;
  readonly ends: number;
  /** A step for each number of shots at which moulds ended. */
  readonly steps: readonly Step[];
  /** The longest life seen, ended or not: the curve says nothing beyond. */
  readonly longest: number;
  /** Shots that half of them make, with its 95 % interval; each absent when the curve never comes down so far. */
  readonly median?: number;
  readonly medianLow?: number;
  readonly medianHigh?: number;
}

/**
 * Kaplan and Meier's estimate (1958): S(t) = Π (1 − dᵢ/nᵢ) over the ends up to t, with Greenwood's variance S² Σ dᵢ/(nᵢ(nᵢ − dᵢ)).
 * A mould still whole at the very shots of an end is still at risk there.
 */
export function curveOf(lives: readonly Lifetime[]): Curve {
  const sorted = [...lives].sort((a, b) => a.shots - b.shots);
  const steps: Step[] = [];
  let share = 1;
  let sum = 0;
  for (let i = 0; i < sorted.length; ) {
    const { shots } = sorted[i] as Lifetime;
    let next = i;
    let ends = 0;
    for (; sorted[next]?.shots === shots; next++) if (sorted[next]?.isEnd) ends += 1;
    if (ends > 0) {
      const atRisk = sorted.length - i;
      share *= (atRisk - ends) / atRisk;
      sum += ends / (atRisk * (atRisk - ends));
      steps.push({ shots, atRisk, ends, share, error: share > 0 ? share * Math.sqrt(sum) : 0, ...interval(share, sum) });
    }
    i = next;
  }
  const first = (below: (step: Step) => number | undefined) => steps.find((step) => (below(step) ?? 1) <= 0.5 + 1e-12)?.shots;
  const median = first((step) => step.share);
  const medianLow = first((step) => step.low ?? step.share);
  const medianHigh = first((step) => step.high);
  return {
    moulds: lives.length,
    ends: lives.filter(({ isEnd }) => isEnd).length,
    steps,
    longest: sorted.at(-1)?.shots ?? 0,
    ...(median !== undefined ? { median } : {}),
    ...(medianLow !== undefined ? { medianLow } : {}),
    ...(medianHigh !== undefined ? { medianHigh } : {}),
  };
}

/** S^exp(± z·se(log(−log S))), where se(log(−log S)) = √(Greenwood's sum) / |log S|. */
function interval(share: number, sum: number): Pick<Step, 'low' | 'high'> {
  if (share <= 0 || share >= 1) return {};
  const width = (Z95 * Math.sqrt(sum)) / -Math.log(share);
  return { low: share ** Math.exp(width), high: share ** Math.exp(-width) };
}

/** Moulds that had come to so many shots. */
export function atRiskAt(lives: readonly Lifetime[], shots: number): number {
  return lives.filter((life) => life.shots >= shots).length;
}
