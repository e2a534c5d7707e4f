import { dayInWords } from './day-words.ts';
import { ALARM, OWN_WAXES, signAgainst } from './drift.ts';
import { type Flag, flagOn, type Rules } from './flag.ts';
import type { Mould } from './shelf.ts';
import { LEAST_REJECTS, type UsualRejects } from './usual-rejects.ts';

/** What rose, in numbers: against the mould's own record, or what is usual for its rubber while it has none. */
function rise(mould: Mould, usual: UsualRejects): string | undefined {
  const { drift, good, rejects } = mould;
  const before = good + rejects - (drift?.waxes ?? 0);
  if (drift && drift.sign >= ALARM && drift.rejects >= LEAST_REJECTS && before > 0) {
    const says = `Since ${dayInWords(drift.since)} ${drift.rejects} of ${drift.waxes} waxes were thrown out (${percent(drift.rejects / drift.waxes)})`;
    return `${says}; before that ${percent((rejects - drift.rejects) / before)} of ${before}.`;
  }
  const share = mould.rubber && usual[mould.rubber];
  const waxes = good + rejects;
  if (share === undefined || waxes >= OWN_WAXES || rejects < LEAST_REJECTS || signAgainst({ waxes, rejects }, share) < ALARM)
    return undefined;
  return `${rejects} of its first ${waxes} waxes were thrown out (${percent(rejects / waxes)}); moulds of ${mould.rubber} spoil ${percent(share)}.`;
}

/** Flagged when the rejects are rising beyond chance; a look on or after the last run settles it. */
export function flagOnRejects(mould: Mould, rules: Pick<Rules, 'today' | 'usual'>): Flag | undefined {
  if (mould.rejects < LEAST_REJECTS) return undefined;
  const lastRun = mould.runs?.at(-1)?.on;
  if (lastRun === undefined || (mould.gradeOn !== undefined && mould.gradeOn >= lastRun)) return undefined;
  const says = rise(mould, rules.usual);
  if (!says) return undefined;
  return flagOn(
    mould,
    rules,
    'rejects',
    'soon',
    says,
    'Try the wax’s heat, pressure and clamping before you blame the mould; then look at it.',
  );
}

function percent(share: number): string {
  return `${Math.round(share * 100)} %`;
}
