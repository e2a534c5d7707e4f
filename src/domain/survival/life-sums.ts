import type { Problem } from '../problem.ts';
import { chanceOfMore, type ShotsLeft, shotsLeft } from './forecast.ts';
import { type Curve, curveOf } from './kaplan-meier.ts';
import type { Lifetime } from './lifetime.ts';
import { type Posterior, posteriorOf } from './posterior.ts';
import { fitWeibull, type WeibullFit } from './weibull-fit.ts';

/** What is to be summed for one rubber: its moulds' lives, and how many shots each of them was expected to last. */
export interface LivesToSum {
  readonly lives: readonly Lifetime[];
  readonly expected: readonly number[];
}

/** What a studio's moulds of one rubber say: the share left by shots, a fitted life, and the belief forecasts are made from. */
export interface LifeSum {
  readonly curve: Curve;
  readonly fit: WeibullFit | Problem;
  readonly posterior: Posterior;
}

/** A mould to forecast: by which of the sums, at which shots, expected to last so many, and how many more are wanted of it. */
export interface ToForecast {
  readonly sum: number;
  readonly shots: number;
  readonly expected: number;
  readonly more: number;
}

export interface ShotForecast {
  readonly left: ShotsLeft;
  /** The chance that it makes the shots wanted. */
  readonly chance: number;
}

export function sumLives({ lives, expected }: LivesToSum): LifeSum {
  const relative = lives.map(({ shots, isEnd }, i) => ({ at: shots / (expected[i] as number), isEnd }));
  return { curve: curveOf(lives), fit: fitWeibull(lives), posterior: posteriorOf(relative) };
}

/** Forecasts of many moulds. Taken in the order of their shots, so that each begins from its neighbour's answer, and equal ones are asked once. */
export function forecastAll(posteriors: readonly Posterior[], moulds: readonly ToForecast[]): readonly ShotForecast[] {
  const forecasts: ShotForecast[] = new Array(moulds.length);
  const order = moulds
    .map((mould, at) => ({ mould, at }))
    .sort((a, b) => a.mould.sum - b.mould.sum || a.mould.expected - b.mould.expected || a.mould.shots - b.mould.shots);
  let last: { readonly mould: ToForecast; readonly left: ShotsLeft } | undefined;
  for (const { mould, at } of order) {
    const { sum, shots, expected, more } = mould;
    const posterior = posteriors[sum] ?? [];
    const isNear = last !== undefined && last.mould.sum === sum && last.mould.expected === expected;
    const left = isNear && last?.mould.shots === shots ? last.left : shotsLeft(posterior, shots, expected, isNear ? last?.left : undefined);
    last = { mould, left };
    forecasts[at] = { left, chance: chanceOfMore(posterior, shots, expected, more) };
  }
  return forecasts;
}
