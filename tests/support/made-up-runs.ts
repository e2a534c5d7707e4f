/** A gamma-distributed number by Marsaglia and Tsang's way (2000). */
function gamma(shape: number, next: () => number): number {
  if (shape < 1) return gamma(shape + 1, next) * next() ** (1 / shape);
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
    const v = (1 + c * x) ** 3;
    if (v > 0 && Math.log(1 - next()) < (x * x) / 2 + d - d * v + d * Math.log(v)) return d * v;
  }
}

/** One run's waxes. The share spoilt varies from run to run as a beta distribution of this weight; without end, it does not vary. */
export function waxesOf(
  share: number,
  weight: number,
  waxes: number,
  next: () => number,
): { readonly good: number; readonly rejects: number } {
  let spoils = share;
  if (Number.isFinite(weight)) {
    const bad = gamma(share * weight, next);
    spoils = bad / (bad + gamma((1 - share) * weight, next));
  }
  let rejects = 0;
  for (let wax = 0; wax < waxes; wax++) if (next() < spoils) rejects += 1;
  return { good: waxes - rejects, rejects };
}
