import { LIFE_PRIOR, type LifePrior } from './life-prior.ts';

/** A life in parts of the expected one, and whether it ended there. */
export interface RelativeLife {
  readonly at: number;
  readonly isEnd: boolean;
}

/** The belief for one shape: S(t) = Σ weight · exp(−rate · t^shape). The weights of all rows add up to 1. */
export interface Row {
  readonly shape: number;
  readonly rates: readonly number[];
  readonly weights: readonly number[];
}
/** What is believed of a rubber's lives, as a table of Weibull lives with weights. */
export type Posterior = readonly Row[];

const MEDIANS = 40;
const SHAPES = 16;
/** Belief thinner than e^−21 = 10⁻⁹ of the thickest is left out. */
const THIN = 21;
const ROUNDS = 8;

/** Lives as the likelihood reads them: equal ones counted together. */
interface Counted {
  readonly ends: number;
  /** Σ ln t over the ends. */
  readonly endLogs: number;
  readonly logs: readonly number[];
  readonly counts: readonly number[];
}

function countLives(lives: readonly RelativeLife[]): Counted {
  const groups = new Map<number, number>();
  let ends = 0;
  let endLogs = 0;
  for (const { at, isEnd } of lives) {
    groups.set(at, (groups.get(at) ?? 0) + 1);
    if (!isEnd) continue;
    ends += 1;
    endLogs += Math.log(at);
  }
  return { ends, endLogs, logs: [...groups.keys()].map(Math.log), counts: [...groups.values()] };
}

interface Box {
  readonly medians: readonly [number, number];
  readonly shapes: readonly [number, number];
}

/**
 * Prior × likelihood on a grid of log median × log shape, integrated by the trapezoidal rule, which is exact to many digits for smooth
 * bells. The grid is laid again and again over the part that matters, so that a hundred ends are as well resolved as none.
 * Likelihood of a Weibull with median m and shape k, a = ln 2 · m^−k: Π over ends (a k t^(k−1)) · exp(−a Σ over all t^k).
 */
export function posteriorOf(lives: readonly RelativeLife[], prior: LifePrior = LIFE_PRIOR): Posterior {
  const counted = countLives(lives);
  let box: Box = { medians: widened(prior.medians, counted.logs), shapes: prior.shapes };
  let grid = densities(counted, prior, box);
  for (let round = 0; round < ROUNDS; round++) {
    const next = thickPart(grid, box);
    const isCloser = width(next.medians) < 0.7 * width(box.medians) || width(next.shapes) < 0.7 * width(box.shapes);
    if (!isCloser) break;
    box = next;
    grid = densities(counted, prior, box);
  }
  return rowsOf(grid, box);
}

const width = ([low, high]: readonly [number, number]) => high - low;

/** Lives far from what was expected must not fall off the grid. */
function widened([low, high]: readonly [number, number], logs: readonly number[]): readonly [number, number] {
  return [Math.min(low, ...logs.map((log) => log - 1)), Math.max(high, ...logs.map((log) => log + 3))];
}

function points([low, high]: readonly [number, number], count: number): readonly number[] {
  return high > low ? Array.from({ length: count }, (_, i) => low + ((high - low) * i) / (count - 1)) : [low];
}

/** Log-densities, a row for each shape. */
function densities(counted: Counted, prior: LifePrior, box: Box): readonly (readonly number[])[] {
  const medians = points(box.medians, MEDIANS);
  return points(box.shapes, SHAPES).map((logShape) => {
    const shape = Math.exp(logShape);
    let sum = 0;
    for (let i = 0; i < counted.logs.length; i++) sum += (counted.counts[i] as number) * Math.exp(shape * (counted.logs[i] as number));
    return medians.map((logMedian) => {
      const logRate = Math.log(Math.LN2) - shape * logMedian;
      const ends = counted.ends * (logRate + logShape) + (shape - 1) * counted.endLogs;
      return prior.logDensity(logMedian, logShape) + ends - Math.exp(logRate) * sum;
    });
  });
}

function highest(grid: readonly (readonly number[])[]): number {
  return grid.reduce((most, row) => row.reduce((max, value) => Math.max(max, value), most), Number.NEGATIVE_INFINITY);
}

/** The box around all that is not thin, a cell wider on every side. */
function thickPart(grid: readonly (readonly number[])[], box: Box): Box {
  const least = highest(grid) - THIN;
  const isThickRow = grid.map((row) => row.some((value) => value > least));
  const isThickColumn = (grid[0] ?? []).map((_, column) => grid.some((row) => (row[column] as number) > least));
  return { medians: around(box.medians, isThickColumn), shapes: around(box.shapes, isThickRow) };
}

function around([low, high]: readonly [number, number], isThick: readonly boolean[]): readonly [number, number] {
  if (isThick.length < 2) return [low, high];
  const cell = (high - low) / (isThick.length - 1);
  const first = Math.max(0, isThick.indexOf(true) - 1);
  const last = Math.min(isThick.length - 1, isThick.lastIndexOf(true) + 1);
  return [low + first * cell, low + last * cell];
}

function rowsOf(grid: readonly (readonly number[])[], box: Box): Posterior {
  const most = highest(grid);
  const medians = points(box.medians, MEDIANS);
  const total = grid.flat().reduce((sum, value) => sum + Math.exp(value - most), 0);
  return points(box.shapes, SHAPES).flatMap((logShape, at) => {
    const shape = Math.exp(logShape);
    const kept = (grid[at] ?? []).flatMap((value, column) =>
      value > most - THIN
        ? [{ rate: Math.LN2 * Math.exp(-shape * (medians[column] as number)), weight: Math.exp(value - most) / total }]
        : [],
    );
    return kept.length > 0 ? [{ shape, rates: kept.map(({ rate }) => rate), weights: kept.map(({ weight }) => weight) }] : [];
  });
}
