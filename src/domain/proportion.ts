import { incompleteBeta } from './gamma.ts';

/** Where a share lies, between 0 and 1. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** Wilson's interval of a share seen `hits` times in `tries`; z is the normal point, 1.645 for 90 % (NIST/SEMATECH 7.2.4.1). */
export function wilsonInterval(hits: number, tries: number, z: number): Interval {
  const share = hits / tries;
  const part = (z * z) / tries;
  const middle = (share + part / 2) / (1 + part);
  const half = (z / (1 + part)) * Math.sqrt((share * (1 - share)) / tries + part / tries / 4);
  return { low: hits === 0 ? 0 : middle - half, high: hits === tries ? 1 : middle + half };
}

/** Clopper and Pearson's exact interval: each end is the share at which so many or more, or so few or fewer, come up (1 − level)/2 of the time. */
export function exactInterval(hits: number, tries: number, level: number): Interval {
  const tail = (1 - level) / 2;
  const low = hits === 0 ? 0 : betaPoint(tail, hits, tries - hits + 1);
  const high = hits === tries ? 1 : betaPoint(1 - tail, hits + 1, tries - hits);
  return { low, high };
}

/** The point below which a beta distribution has this share, by halving: 1/2⁵² is as near as a number can tell. */
function betaPoint(share: number, a: number, b: number): number {
  let [low, high] = [0, 1];
  for (let round = 0; round < 52; round++) {
    const middle = (low + high) / 2;
    if (incompleteBeta(middle, a, b) < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
