import { type Flag, flagOn, type Rules } from './flag.ts';
import type { Mould } from './shelf.ts';

/** The runs that count as recent, and what makes their rejects worth a look. Common practice, no source. */
const RECENT_RUNS = 3;
const RECENT_WAXES = 10;
const RECENT_REJECTS = 3;
const LEAST_SHARE = 0.1;
/** Waxes before the recent runs that make an earlier share worth comparing with. */
const EARLIER_WAXES = 20;

interface RejectShares {
  readonly runs: number;
  readonly rejects: number;
  readonly waxes: number;
  /** Rejects ÷ waxes of the last runs. */
  readonly recent: number;
  /** The same of everything before them; undefined with too few waxes. */
  readonly earlier?: number;
}

/** Rejects of a mould's last three runs against all before; undefined before there are enough waxes to tell. */
function rejectShares(mould: Mould): RejectShares | undefined {
  const runs = (mould.runs ?? []).slice(-RECENT_RUNS);
  let good = 0;
  let rejects = 0;
  for (const run of runs) {
    good += run.good;
    rejects += run.rejects;
  }
  const waxes = good + rejects;
  if (waxes < RECENT_WAXES) return undefined;
  const before = mould.good + mould.rejects - waxes;
  const earlier = before >= EARLIER_WAXES ? { earlier: (mould.rejects - rejects) / before } : {};
  return { runs: runs.length, rejects, waxes, recent: rejects / waxes, ...earlier };
}

/** Flagged at a tenth or more thrown out and twice the earlier share; a look on or after the last run settles it. */
export function flagOnRejects(mould: Mould, rules: Rules): Flag | undefined {
  const lastRun = mould.runs?.at(-1)?.on;
  if (lastRun === undefined || (mould.gradeOn !== undefined && mould.gradeOn >= lastRun)) return undefined;
  const shares = rejectShares(mould);
  if (!shares || shares.rejects < RECENT_REJECTS || shares.recent < Math.max(LEAST_SHARE, 2 * (shares.earlier ?? 0))) return undefined;
  const runs = shares.runs === 1 ? 'The last run' : `The last ${shares.runs} runs`;
  const before = shares.earlier === undefined ? '' : `; before that ${percent(shares.earlier)}`;
  const says = `${runs}: ${shares.rejects} of ${shares.waxes} waxes thrown out (${percent(shares.recent)})${before}.`;
  return flagOn(mould, rules, 'rejects', 'soon', says, 'Look at the mould, and at the wax’s heat and pressure, before the next run.');
}

function percent(share: number): string {
  return `${Math.round(share * 100)} %`;
}
