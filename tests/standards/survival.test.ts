import { describe, expect, it, test } from 'vitest';
import { isProblem } from '../../src/domain/problem.ts';
import { chanceBeyond, chanceOfMore, lifeOutlived } from '../../src/domain/survival/forecast.ts';
import { curveOf } from '../../src/domain/survival/kaplan-meier.ts';
import type { LifePrior } from '../../src/domain/survival/life-prior.ts';
import type { Lifetime } from '../../src/domain/survival/lifetime.ts';
import { posteriorOf } from '../../src/domain/survival/posterior.ts';
import { fitWeibull, type WeibullFit } from '../../src/domain/survival/weibull-fit.ts';

const ends = (...shots: number[]): Lifetime[] => shots.map((each) => ({ shots: each, isEnd: true }));
const whole = (...shots: number[]): Lifetime[] => shots.map((each) => ({ shots: each, isEnd: false }));

// Freireich et al. 1963, Blood 21:699–716: weeks in remission with 6-MP; data as the University of Oslo gives them.
const SIX_MP = [...ends(6, 6, 6, 7, 10, 13, 16, 22, 23), ...whole(6, 9, 10, 11, 17, 19, 20, 25, 32, 32, 34, 35)];

describe('Kaplan and Meier’s curve of the 6-MP patients', () => {
  // Share, Greenwood error and 95 % log-log interval as R 4.2.2’s survival 3.5-3 gives them to 12 digits.
  const table = [
    [6, 21, 3, 0.857142857143, 0.0763603548321, 0.619717955, 0.951551748],
    [7, 17, 1, 0.806722689076, 0.0869352851801, 0.563146565, 0.922809019],
    [10, 15, 1, 0.752941176471, 0.0963496529943, 0.503199511, 0.889361835],
    [13, 12, 1, 0.690196078431, 0.106814707775, 0.431610222, 0.849065963],
    [16, 11, 1, 0.627450980392, 0.1140538652568, 0.367510856, 0.804912189],
    [22, 7, 1, 0.53781512605, 0.128233751693, 0.267778937, 0.746790718],
    [23, 6, 1, 0.448179271709, 0.1345914567558, 0.188052006, 0.680142628],
  ] as const;
  const curve = curveOf(SIX_MP);

  it('steps where and as far as R says, with ties still at risk', () => {
    expect(curve.steps.map(({ shots, atRisk, ends: d }) => [shots, atRisk, d])).toEqual(table.map((row) => row.slice(0, 3)));
    for (const [i, [, , , share, error, low, high]] of table.entries()) {
      const step = curve.steps[i];
      expect(Math.abs((step?.share ?? 0) - share)).toBeLessThan(1e-9);
      expect(Math.abs((step?.error ?? 0) - error)).toBeLessThan(1e-9);
      expect(Math.abs((step?.low ?? 0) - low)).toBeLessThan(1e-8);
      expect(Math.abs((step?.high ?? 0) - high)).toBeLessThan(1e-8);
    }
  });

  it('agrees with the table as textbooks print it', () => {
    const printed = ['0.857 0.0764', '0.807 0.0869', '0.753 0.0963', '0.690 0.1068', '0.627 0.1141', '0.538 0.1282', '0.448 0.1346'];
    expect(curve.steps.map(({ share, error }) => `${share.toFixed(3)} ${error.toFixed(4)}`)).toEqual(printed);
  });

  it('has its median at 23 weeks', () => {
    expect(curve.median).toBe(23);
    // By the log-log interval of the table above: its lower end comes to a half at 13, its upper end never does.
    expect(curve.medianLow).toBe(13);
    expect(curve.medianHigh).toBeUndefined();
  });
});

test('the curve of NIST/SEMATECH 8.2.1.5: twenty units, four taken out early, ten whole at 200 hours', () => {
  const lives = [...ends(10, 32, 56, 98, 122, 181), ...whole(50, 100, 125, 150), ...whole(...Array<number>(10).fill(200))];
  // Product limit as the handbook multiplies it out; errors by R’s survival.
  const expected = [
    [10, 20, 19 / 20, 0.048733972],
    [32, 19, 0.9, 0.067082039],
    [56, 17, (0.9 * 16) / 17, 0.08138832],
    [98, 16, (0.9 * 15) / 17, 0.09192128],
    [122, 14, (((0.9 * 15) / 17) * 13) / 14, 0.101356803],
    [181, 11, (((((0.9 * 15) / 17) * 13) / 14) * 10) / 11, 0.112140686],
  ] as const;
  const { steps } = curveOf(lives);
  expect(steps.map(({ shots, atRisk }) => [shots, atRisk])).toEqual(expected.map(([shots, atRisk]) => [shots, atRisk]));
  for (const [i, [, , share, error]] of expected.entries()) {
    expect(steps[i]?.share).toBeCloseTo(share, 12);
    expect(steps[i]?.error).toBeCloseTo(error, 8);
  }
});

// NIST/SEMATECH 8.4.1.3, data of 8.2.2.1: ten failures, ten units whole at 500 hours.
const NIST = [...ends(54, 187, 216, 240, 244, 335, 361, 373, 375, 386), ...whole(...Array<number>(10).fill(500))];

test('the curve of NIST/SEMATECH 8.4.1.3 falls by a twentieth a failure, to a half at 386 with the binomial’s error', () => {
  const { steps } = curveOf(NIST);
  for (const [i, step] of steps.entries()) expect(step.share).toBeCloseTo(1 - (i + 1) / 20, 12);
  expect(steps.at(-1)).toMatchObject({ shots: 386 });
  expect(steps.at(-1)?.error).toBeCloseTo(Math.sqrt(0.25 / 20), 10);
});

function fitted(lives: readonly Lifetime[]): WeibullFit {
  const fit = fitWeibull(lives);
  if (isProblem(fit)) throw new Error(fit.says);
  return fit;
}

describe('a Weibull life fitted with some still whole', () => {
  it('agrees with NIST/SEMATECH 8.4.1.3', () => {
    const fit = fitted(NIST);
    expect(Math.abs(fit.scale - 606.528)).toBeLessThan(1e-3);
    expect(Math.abs(fit.shape - 1.7208)).toBeLessThan(1e-4);
    expect(Math.abs(fit.logLikelihood - -75.135)).toBeLessThan(1e-3);
  });

  it('agrees with R’s survreg on the same data, errors and all', () => {
    const fit = fitted(NIST);
    expect(Math.abs(fit.shape - 1.7207972608)).toBeLessThan(1e-6);
    expect(Math.abs(fit.scale - 606.527558)).toBeLessThan(1e-6);
    expect(Math.abs(fit.shapeError - 0.5021506)).toBeLessThan(1e-6);
    expect(Math.abs(fit.scaleError - 124.9106562)).toBeLessThan(1e-5);
    expect(Math.abs(fit.covariance - -28.31362645)).toBeLessThan(1e-5);
    expect(Math.abs(fit.logLikelihood - -75.13461816)).toBeLessThan(1e-7);
    expect(Math.abs(fit.median - 490.173781)).toBeLessThan(1e-5);
    expect(Math.abs(fit.tenth - 164.022439)).toBeLessThan(1e-5);
  });

  it('agrees with R’s survreg on the 6-MP patients, of whom 12 in 21 were still well', () => {
    const fit = fitted(SIX_MP);
    expect(Math.abs(fit.shape - 1.3537345238)).toBeLessThan(1e-6);
    expect(Math.abs(fit.scale - 33.76515097)).toBeLessThan(1e-6);
    expect(Math.abs(fit.shapeError - 0.37687683)).toBeLessThan(1e-6);
    expect(Math.abs(fit.scaleError - 9.23034293)).toBeLessThan(1e-6);
    expect(Math.abs(fit.logLikelihood - -41.65867848)).toBeLessThan(1e-7);
  });
});

/** A known shape, and a gamma belief about the rate a of S(t) = exp(−a t^k): the case that can be worked out on paper. */
function gammaPrior(shape: number, alpha: number, beta: number): LifePrior {
  const logRate = (logMedian: number) => Math.log(Math.LN2) - shape * logMedian;
  return {
    logDensity: (logMedian) => alpha * logRate(logMedian) - beta * Math.exp(logRate(logMedian)),
    medians: [-5, 15],
    shapes: [Math.log(shape), Math.log(shape)],
  };
}

describe('the forecast with a known shape and a gamma belief, against its closed form (R’s integrate and SciPy’s quad agree to 12 digits)', () => {
  const lives = [...ends(40, 65, 90), ...whole(50, 80)].map(({ shots, isEnd }) => ({ at: shots, isEnd }));

  it('is Lomax’s distribution for shape 1', () => {
    const posterior = posteriorOf(lives, gammaPrior(1, 2, 150));
    const chances = [
      [10, 0.901071710614],
      [25, 0.7737809375],
      [50, 0.606277611646],
      [100, 0.384705880342],
      [200, 0.172563596656],
    ] as const;
    for (const [until, chance] of chances) expect(Math.abs(chanceBeyond(posterior, 0, until) - chance)).toBeLessThan(1e-7);
    const points = [
      [0.95, 4.897943176],
      [0.9, 10.1154516101],
      [0.5, 70.6317186236],
      [0.05, 389.767996437],
    ] as const;
    for (const [chance, life] of points) expect(Math.abs(lifeOutlived(posterior, 0, chance) / life - 1)).toBeLessThan(1e-6);
  });

  it('is its square-root cousin for shape 2, from new and from 50 shots on', () => {
    const posterior = posteriorOf(lives, gammaPrior(2, 2, 7200));
    const fromNew = [
      [20, 0.935970467763],
      [40, 0.771369405186],
      [60, 0.567680028112],
      [80, 0.380554864865],
      [100, 0.237551828374],
      [150, 0.061035818792],
    ] as const;
    for (const [until, chance] of fromNew) expect(Math.abs(chanceBeyond(posterior, 0, until) - chance)).toBeLessThan(1e-7);
    const more = [
      [10, 0.835349620905],
      [20, 0.680793117515],
      [40, 0.42524646814],
    ] as const;
    for (const [shots, chance] of more) expect(Math.abs(chanceOfMore(posterior, 50, 1, shots) - chance)).toBeLessThan(1e-7);
    const points = [
      [0.95, 17.595498459],
      [0.9, 25.2864196793],
      [0.5, 66.8181719952],
      [0.1, 132.519500843],
    ] as const;
    for (const [chance, life] of points) expect(Math.abs(lifeOutlived(posterior, 0, chance) / life - 1)).toBeLessThan(1e-6);
  });

  it.each([
    [1, 0.531304096],
    [1.5, 0.547463186],
    [2, 0.567680028],
    [2.5, 0.591368508],
    [3, 0.617842799],
  ])('leans on the shape as it should: %d', (shape, chance) => {
    const posterior = posteriorOf(lives, gammaPrior(shape, 2, 2 * 60 ** shape));
    expect(Math.abs(chanceBeyond(posterior, 0, 60) - chance)).toBeLessThan(1e-7);
  });
});
