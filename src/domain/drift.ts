import type { Day } from './brand.ts';
import { logBeta } from './gamma.ts';
import type { Drift } from './shelf.ts';

/**
 * Whether a mould's rejects are rising, run by run: Page's cumulative sum (1954) of ln(likelihood ratio) of “the odds of a reject are three
 * times those of its record” against “they are as ever”, begun anew whenever it falls to nothing. The record is all its waxes before the
 * run: leaving out the suspicious ones would hold the luck of a good start against every later run. Each run's own share varies around the
 * record (beta-binomial): one bad sitting with cold wax is not a worn mould.
 */
const RISE = 3;
/** What a mould without a record is taken for; light, so that its own waxes soon outweigh it. Common practice, no source. */
const USUAL = { rejects: 0.5, waxes: 10 } as const;
/**
 * No record is taken for better than this: old cards often say nothing of rejects, and three rejects in a long run of a mould that spoils one in
 * a hundred are no news. Without it, moulds shot by the hundred were flagged falsely in 1 run of 30. Common practice, no source.
 */
const LEAST_SHARE = 0.02;
/** Waxes that a record counts for at most: how much a run may vary around it. */
const STEADY = 30;
/**
 * The sum from which the rise is told. A steady mould comes so far falsely in less than 1 of 200 runs as long as it spoils no more than 30 in 100, and odds that have tripled from 1 in
 * 10 are mostly told within five: both simulated in the tests.
 */
export const ALARM = 3.7;
/** Of steady moulds that spoil up to this share, less than 1 run in so many is told falsely: simulated in the tests. Above half, odds say less. */
const FALSE_ALARMS = [
  { share: 0.3, runs: 200 },
  { share: 0.5, runs: 150 },
  { share: 0.6, runs: 125 },
] as const;

/** Runs of a steady mould of which at most one is told falsely; undefined above the shares that were tried. */
export function runsToFalseAlarm(share: number): number | undefined {
  return FALSE_ALARMS.find((each) => share <= each.share)?.runs;
}

/** Waxes before which a mould has no record of its own to compare with. */
export const OWN_WAXES = 40;

const between = (share: number) => Math.min(0.9, Math.max(LEAST_SHARE, share));

interface Waxes {
  readonly waxes: number;
  readonly rejects: number;
}

/** ln of how much likelier the waxes are at odds three times those of `share`, than at `share`. */
function signOf({ waxes, rejects }: Waxes, share: number, weight: number): number {
  const ratio = (of: number) =>
    logBeta(of * weight + rejects, (1 - of) * weight + waxes - rejects) - logBeta(of * weight, (1 - of) * weight);
  const odds = (RISE * share) / (1 - share);
  return ratio(odds / (1 + odds)) - ratio(share);
}

/** What a run's rejects make of a mould's drift; undefined when there is nothing to remember. `good` and `rejects` are those before the run. */
export function driftAfter(
  before: { readonly good: number; readonly rejects: number; readonly drift?: Drift },
  run: { readonly on: Day; readonly good: number; readonly rejects: number },
): Drift | undefined {
  const waxes = run.good + run.rejects;
  if (waxes === 0) return before.drift;
  const { since = run.on, waxes: some = 0, rejects: bad = 0, sign = 0 } = before.drift ?? {};
  const record = { waxes: before.good + before.rejects + USUAL.waxes, rejects: before.rejects + USUAL.rejects };
  if (!before.drift && before.good + before.rejects < OWN_WAXES) return undefined;
  const next = sign + signOf({ waxes, rejects: run.rejects }, between(record.rejects / record.waxes), STEADY);
  // Kept short: it is stored with the mould.
  return next <= 0 ? undefined : { since, waxes: some + waxes, rejects: bad + run.rejects, sign: Math.round(next * 100) / 100 };
}

/** The same for a mould without a record of its own, of all its waxes at once against what its rubber's moulds spoil. */
export function signAgainst(all: Waxes, share: number): number {
  return all.waxes === 0 ? 0 : signOf(all, between(share), STEADY);
}
