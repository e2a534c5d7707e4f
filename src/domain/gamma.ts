const HALF_LOG_TAU = Math.log(2 * Math.PI) / 2;

/** ln Γ(x) for x > 0 by Stirling's series, shifted up to where its terms to x⁻⁷ give 12 digits (Abramowitz and Stegun 6.1.41). */
export function logGamma(x: number): number {
  let shift = 0;
  let at = x;
  for (; at < 12; at++) shift += Math.log(at);
  const inverse = 1 / (at * at);
  const series = (1 / 12 - inverse * (1 / 360 - inverse * (1 / 1260 - inverse / 1680))) / at;
  return (at - 0.5) * Math.log(at) - at + HALF_LOG_TAU + series - shift;
}

export function logBeta(a: number, b: number): number {
  return logGamma(a) + logGamma(b) - logGamma(a + b);
}

const ROUNDS = 500;

/** The regularised incomplete beta function I_x(a, b), by its continued fraction (Abramowitz and Stegun 26.5.8) after Lentz. */
export function incompleteBeta(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  if (x > (a + 1) / (a + b + 2)) return 1 - incompleteBeta(1 - x, b, a);
  const front = Math.exp(a * Math.log(x) + b * Math.log1p(-x) - logBeta(a, b)) / a;
  let c = 1;
  let d = 1 / (1 - ((a + b) * x) / (a + 1));
  let fraction = d;
  for (let m = 1; m < ROUNDS; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / (1 + even * d);
    c = 1 + even / c;
    fraction *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / (1 + odd * d);
    c = 1 + odd / c;
    fraction *= d * c;
    if (Math.abs(d * c - 1) < 1e-15) break;
  }
  return front * fraction;
}
