import type { MouldFault } from '../fault.ts';
import type { Mould } from '../shelf.ts';

/** What one mould says about how long its rubber lasts: an end at its shots, still whole at its shots, or nothing. */
export const FATES = ['end', 'still whole', 'nothing'] as const;
export type Fate = (typeof FATES)[number];

/** A mould's shots, and whether its life ended there. */
export interface Lifetime {
  readonly shots: number;
  readonly isEnd: boolean;
}

/** Faults a mould is born with. One that failed for nothing else was a dud, and says nothing about wear. Common practice, no source. */
const BORN_WITH: readonly MouldFault[] = ['cut wrong', 'flawed skin', 'bubbles in rubber', 'undercured'];

/** Reasons of retirement that end a life; the mould wore out or tore in use. */
const ENDS: readonly string[] = ['worn out', 'torn'];

/**
 * The rule of what counts:
 * retired worn out or torn: an end at its shots; retired as a dud: nothing;
 * graded failed and never put right: an end at its shots, unless all its faults are ones it was born with, which makes it a dud;
 * anything else, be it in use, graded worn, lent, lost, replaced or not wanted: still whole at its shots.
 * A mould without a shot says nothing, whatever became of it: intermediate moulds never shot, and moulds whose shots nobody logged.
 */
export function fateOf({ shots, retired, grade, faults = [] }: Mould): Fate {
  if (shots <= 0 || retired?.reason === 'dud') return 'nothing';
  if (retired && ENDS.includes(retired.reason)) return 'end';
  if (grade !== 'failed') return 'still whole';
  return faults.length > 0 && faults.every((fault) => BORN_WITH.includes(fault)) ? 'nothing' : 'end';
}

export function lifetimeOf(mould: Mould): Lifetime | undefined {
  const fate = fateOf(mould);
  return fate === 'nothing' ? undefined : { shots: mould.shots, isEnd: fate === 'end' };
}
