/**
 * What is believed of a rubber before the studio's own moulds have spoken. A life is counted in parts of the shots the mould is expected
 * to last, so that 1 is a life as expected; its log-density is told for the logs of the median life and of the Weibull shape.
 */
export interface LifePrior {
  logDensity(logMedian: number, logShape: number): number;
  /** Where the density is worth looking at: lowest and highest log. */
  readonly medians: readonly [number, number];
  readonly shapes: readonly [number, number];
}

/**
 * The expected life is a median that may well be wrong by a factor of two or three: e¹ = 2.7 either way takes in two thirds. From memory:
 * usual talk gives each rubber a range with ends four or five times apart. Narrower, and a studio whose moulds live half or twice as long
 * as expected would still be told wrong after eight ends (the bench's calibration).
 */
export const MEDIAN_SPREAD = 1;
/** Rubber mostly wears out: shapes about 2, nine in ten between 0.75 and 5.4. From memory. */
export const SHAPE_MIDDLE = 2;
export const SHAPE_SPREAD = 0.6;

const FAR = 5;

export const LIFE_PRIOR: LifePrior = {
  logDensity: (logMedian, logShape) =>
    -((logMedian / MEDIAN_SPREAD) ** 2) / 2 - ((logShape - Math.log(SHAPE_MIDDLE)) / SHAPE_SPREAD) ** 2 / 2,
  medians: [-FAR * MEDIAN_SPREAD, FAR * MEDIAN_SPREAD],
  shapes: [Math.log(SHAPE_MIDDLE) - FAR * SHAPE_SPREAD, Math.log(SHAPE_MIDDLE) + FAR * SHAPE_SPREAD],
};
