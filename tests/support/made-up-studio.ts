import { lifeOutlived, shotsLeft } from '../../src/domain/survival/forecast.ts';
import { MEDIAN_SPREAD, SHAPE_MIDDLE, SHAPE_SPREAD } from '../../src/domain/survival/life-prior.ts';
import { posteriorOf, type RelativeLife } from '../../src/domain/survival/posterior.ts';

/** How long moulds of one rubber really live: median in parts of what is expected, and Weibull shape. */
export interface TrueLife {
  readonly median: number;
  readonly shape: number;
}

/** Two independent normal numbers by Box and Muller's way. */
function normal(next: () => number): number {
  return Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
}

/** A truth drawn from the very belief the forecast starts from. */
export function truthFromPrior(next: () => number): TrueLife {
  return { median: Math.exp(MEDIAN_SPREAD * normal(next)), shape: SHAPE_MIDDLE * Math.exp(SHAPE_SPREAD * normal(next)) };
}

/** Shots a mould makes before it ends, whole ones. */
function lifeOf(truth: TrueLife, expected: number, next: () => number): number {
  return Math.ceil(expected * truth.median * (-Math.log(1 - next()) / Math.LN2) ** (1 / truth.shape));
}

/** What came of one forecast, by the whole shots that a page would show. */
export interface Outcome {
  /** Ends that the forecast rested on. */
  readonly ends: number;
  readonly inHalf: boolean;
  readonly inEighty: boolean;
  /** Whether it made the shots it was promised with 90 %. */
  readonly keptPromise: boolean;
}

/** One studio's moulds of one rubber, some of them ended, the others seen at some moment of their lives; then how the forecasts of two of those turned out. */
export function studioOutcomes(truth: TrueLife, expected: number, moulds: number, next: () => number): readonly Outcome[] {
  const all = Array.from({ length: moulds }, () => {
    const life = lifeOf(truth, expected, next);
    // Looked at after so many shots: short of its life for about half of them, so that there is much censoring.
    const seen = Math.max(1, Math.floor(expected * truth.median * 2 * next() ** 1.5));
    return { life, seen };
  });
  const lives: RelativeLife[] = all.map(({ life, seen }) => ({ at: Math.min(life, seen) / expected, isEnd: life <= seen }));
  const ends = lives.filter(({ isEnd }) => isEnd).length;
  const posterior = posteriorOf(lives);
  return all
    .filter(({ life, seen }) => life > seen)
    .slice(0, 2)
    .map(({ life, seen }) => {
      const sound = life - seen - 1;
      const from = seen / expected;
      const shown = shotsLeft(posterior, seen, expected);
      const outlived = (share: number) => Math.floor((lifeOutlived(posterior, from, share) - from) * expected);
      return {
        ends,
        inHalf: sound >= outlived(0.75) && sound <= outlived(0.25),
        inEighty: sound >= shown.low && sound <= shown.high,
        keptPromise: sound >= shown.low,
      };
    });
}

/** Percent of forecasts of which something holds. */
export function percentOf(outcomes: readonly Outcome[], holds: (outcome: Outcome) => boolean): number {
  return (100 * outcomes.filter(holds).length) / outcomes.length;
}
