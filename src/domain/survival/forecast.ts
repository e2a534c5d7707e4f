import type { Posterior } from './posterior.ts';

/** Shots a mould still has in it: as likely more as fewer than the middle, and in the range with 80 %. */
export interface ShotsLeft {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

/** The chance that a mould whole at `from` is whole at `until`, both in parts of its expected life. The belief must already know that it is whole at `from`. */
export function chanceBeyond(posterior: Posterior, from: number, until: number): number {
  if (until <= from) return 1;
  let chance = 0;
  for (const { shape, rates, weights } of posterior) {
    const worn = until ** shape - from ** shape;
    for (let i = 0; i < rates.length; i++) chance += (weights[i] as number) * Math.exp(-(rates[i] as number) * worn);
  }
  return Math.min(1, chance);
}

/** The chance of n more sound shots after `shots`, of a mould expected to last `expected` shots. */
export function chanceOfMore(posterior: Posterior, shots: number, expected: number, more: number): number {
  return chanceBeyond(posterior, shots / expected, (shots + more) / expected);
}

/** Chance and its fall per unit of life. */
function chanceAndFall(posterior: Posterior, from: number, until: number): readonly [number, number] {
  let chance = 0;
  let fall = 0;
  for (const { shape, rates, weights } of posterior) {
    const power = until ** shape;
    const worn = power - from ** shape;
    let sum = 0;
    for (let i = 0; i < rates.length; i++) {
      const rate = rates[i] as number;
      const part = (weights[i] as number) * Math.exp(-rate * worn);
      chance += part;
      sum += rate * part;
    }
    fall += (sum * shape * power) / until;
  }
  return [chance, fall];
}

const ROUNDS = 60;

/** The life that is outlived with this chance, by a mould whole at `from`: Newton's steps, halved where they leave the bracket. */
export function lifeOutlived(posterior: Posterior, from: number, chance: number, guess = from + 0.5, nearness = 1e-6): number {
  let low = from;
  let high = Number.POSITIVE_INFINITY;
  let at = Math.max(guess, from + 1e-9);
  for (let round = 0; round < ROUNDS; round++) {
    const [value, fall] = chanceAndFall(posterior, from, at);
    if (value > chance) low = at;
    else high = at;
    // On the log of the chance a Weibull's tail is nearly straight.
    const newton = at + ((Math.log(value) - Math.log(chance)) * value) / fall;
    const next = newton > low && newton < high ? newton : high === Number.POSITIVE_INFINITY ? from + 2 * (at - from) : (low + high) / 2;
    if (Math.abs(next - at) < nearness) return next;
    at = next;
  }
  return at;
}

/** Shots left in a mould, whole ones, rounded down: a part of a shot is none. */
export function shotsLeft(posterior: Posterior, shots: number, expected: number): ShotsLeft {
  const from = shots / expected;
  const nearness = 0.05 / expected;
  const left = (chance: number) => Math.max(0, Math.floor((lifeOutlived(posterior, from, chance, from + 0.5, nearness) - from) * expected));
  return { low: left(0.9), middle: left(0.5), high: left(0.1) };
}
