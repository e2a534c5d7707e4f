import type { Problem } from '../problem.ts';
import { chanceOfMore, lifeOutlived, type ShotsLeft } from './forecast.ts';
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

/** Points of the table that forecasts of many moulds are read from, closer together for young moulds. */
const POINTS = 32;
/** Belief that many moulds can do without: it moves no chance by more than this. */
const SPARED = 5e-4;

/** Shots left, in parts of the expected life, at rising ages. */
interface LeftTable {
  readonly oldest: number;
  readonly left: readonly ShotsLeft[];
}

/**
 * Forecasts of many moulds: the chances reckoned for each, to 1 in 2,000; the shots left read from a table between its nearest points, to
 * a hundredth or so. Searching for the shots left of every mould by itself would cost ten times as much.
 */
export function forecastAll(posteriors: readonly Posterior[], moulds: readonly ToForecast[]): readonly ShotForecast[] {
  const oldest = posteriors.map(() => 0);
  for (const { sum, shots, expected } of moulds) oldest[sum] = Math.max(oldest[sum] ?? 0, shots / expected);
  const beliefs = posteriors.map((posterior) => sparing(posterior));
  const tables = beliefs.map((belief, sum) => tableOf(belief, oldest[sum] ?? 0));
  return moulds.map(({ sum, shots, expected, more }) => {
    const table = tables[sum];
    return {
      left: table ? readLeft(table, shots / expected, expected) : { low: 0, middle: 0, high: 0 },
      chance: chanceOfMore(beliefs[sum] ?? [], shots, expected, more),
    };
  });
}

/** The belief without its thinnest parts, which are many. */
function sparing(posterior: Posterior): Posterior {
  const weights = posterior.flatMap((row) => row.weights).sort((a, b) => a - b);
  let spared = 0;
  const least = weights.find((weight) => {
    spared += weight;
    return spared > SPARED;
  });
  return posterior.flatMap(({ shape, rates, weights: all }) => {
    const kept = all.flatMap((weight, i) => (weight >= (least ?? 0) ? [{ weight: weight / (1 - SPARED), rate: rates[i] as number }] : []));
    return kept.length > 0 ? [{ shape, rates: kept.map(({ rate }) => rate), weights: kept.map(({ weight }) => weight) }] : [];
  });
}

function tableOf(belief: Posterior, oldest: number): LeftTable {
  const left: ShotsLeft[] = [];
  for (let i = 0; i < POINTS; i++) {
    const from = oldest * (i / (POINTS - 1)) ** 2;
    const before = left.at(-1);
    const at = (chance: number, guess = 0.5) => lifeOutlived(belief, from, chance, from + guess, 1e-3) - from;
    left.push({ low: at(0.9, before?.low), middle: at(0.5, before?.middle), high: at(0.1, before?.high) });
  }
  return { oldest, left };
}

function readLeft({ oldest, left }: LeftTable, from: number, expected: number): ShotsLeft {
  const at = oldest > 0 ? Math.sqrt(from / oldest) * (POINTS - 1) : 0;
  const i = Math.min(POINTS - 2, Math.floor(at));
  const [a, b] = [left[i] as ShotsLeft, left[i + 1] as ShotsLeft];
  const point = oldest * (i / (POINTS - 1)) ** 2;
  const next = oldest * ((i + 1) / (POINTS - 1)) ** 2;
  const part = next > point ? (from - point) / (next - point) : 0;
  const between = (low: number, high: number) => Math.max(0, Math.floor((low + part * (high - low)) * expected));
  return { low: between(a.low, b.low), middle: between(a.middle, b.middle), high: between(a.high, b.high) };
}
