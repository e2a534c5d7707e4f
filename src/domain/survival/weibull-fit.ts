import { type Problem, problem } from '../problem.ts';
import type { Lifetime } from './lifetime.ts';

/** A Weibull life, S(t) = exp(−(t/scale)^shape), with the standard errors of its figures. A shape over 1 wears out; 1 fails by accident. */
export interface WeibullFit {
  readonly shape: number;
  /** Shots that 36.8 % of moulds outlive. */
  readonly scale: number;
  readonly shapeError: number;
  readonly scaleError: number;
  /** Covariance of shape and scale. */
  readonly covariance: number;
  readonly logLikelihood: number;
  /** Shots that half of them make, and the same for the first tenth to go. */
  readonly median: number;
  readonly tenth: number;
}

const ROUNDS = 200;
/** Shapes beyond are no life of rubber: all ended at nearly the same shots. */
const SHAPE_MOST = 200;

/** Maximum likelihood with moulds still whole, by Newton's method on the profile likelihood in the log of the shape. */
export function fitWeibull(lives: readonly Lifetime[]): WeibullFit | Problem {
  const ends = lives.filter(({ isEnd }) => isEnd);
  if (ends.length === 0) return problem('No life has ended yet, so there is nothing to fit.');
  const longest = Math.max(...lives.map(({ shots }) => shots));
  // Counted in parts of the longest life, so that no power overflows.
  const logs = lives.map(({ shots }) => Math.log(shots / longest));
  const meanEnd = ends.reduce((sum, { shots }) => sum + Math.log(shots / longest), 0) / ends.length;
  if (meanEnd > -1e-9)
    return problem(
      ends.length === 1
        ? 'One life has ended, and no mould has come further: two ends apart, or a mould that outlived one, are needed for a fit.'
        : 'All ends are at the same number of shots, and no mould has come further: there is no spread to fit.',
    );
  const shape = shapeOf(logs, meanEnd);
  if (shape === undefined) return problem('The ends lie too close together for a fit.');
  const unit = (powers(logs, shape).sum / ends.length) ** (1 / shape);
  return figures(lives, ends, shape, unit * longest);
}

/** Σ u^k, Σ u^k ln u and Σ u^k (ln u)², given ln u. */
function powers(logs: readonly number[], shape: number): { readonly sum: number; readonly first: number; readonly second: number } {
  let [sum, first, second] = [0, 0, 0];
  for (const log of logs) {
    const power = Math.exp(shape * log);
    sum += power;
    first += power * log;
    second += power * log * log;
  }
  return { sum, first, second };
}

/** The root of Σu^k ln u / Σu^k − 1/k − mean ln(ends), which rises with k; bisected wherever a step of Newton's leaves the bracket. */
function shapeOf(logs: readonly number[], meanEnd: number): number | undefined {
  let low = Math.log(1e-3);
  let high = Math.log(SHAPE_MOST);
  const slopeAt = (log: number) => {
    const shape = Math.exp(log);
    const { sum, first, second } = powers(logs, shape);
    const mean = first / sum;
    return { value: mean - 1 / shape - meanEnd, slope: shape * (second / sum - mean * mean) + 1 / shape };
  };
  if (slopeAt(high).value < 0 || slopeAt(low).value > 0) return undefined;
  let log = 0;
  for (let round = 0; round < ROUNDS; round++) {
    const { value, slope } = slopeAt(log);
    if (value < 0) low = log;
    else high = log;
    const newton = log - value / slope;
    const next = newton > low && newton < high ? newton : (low + high) / 2;
    if (Math.abs(next - log) < 1e-14) return Math.exp(next);
    log = next;
  }
  return Math.exp(log);
}

/** Errors from the observed information in (log scale, log shape), carried over to scale and shape. */
function figures(lives: readonly Lifetime[], ends: readonly Lifetime[], shape: number, scale: number): WeibullFit {
  const zOf = ({ shots }: Lifetime) => shape * Math.log(shots / scale);
  let [sum, first, second] = [0, 0, 0];
  for (const life of lives) {
    const z = zOf(life);
    const power = Math.exp(z);
    sum += power;
    first += power * z;
    second += power * z * z;
  }
  const endSum = ends.reduce((total, life) => total + zOf(life), 0);
  const [scaleScale, scaleShape, shapeShape] = [shape * shape * sum, -shape * first, first + second - endSum];
  const determinant = scaleScale * shapeShape - scaleShape * scaleShape;
  const logLikelihood = endSum - sum + ends.length * Math.log(shape) - ends.reduce((total, { shots }) => total + Math.log(shots), 0);
  return {
    shape,
    scale,
    shapeError: shape * Math.sqrt(scaleScale / determinant),
    scaleError: scale * Math.sqrt(shapeShape / determinant),
    covariance: (-scaleShape / determinant) * shape * scale,
    logLikelihood,
    median: scale * Math.LN2 ** (1 / shape),
    tenth: scale * (-Math.log(0.9)) ** (1 / shape),
  };
}
