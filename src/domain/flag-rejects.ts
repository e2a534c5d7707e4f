import { dayInWords } from './day-words.ts';
import { ALARM, OWN_WAXES, signAgainst } from './drift.ts';
import { type Flag, flagOn, type Rules } from './flag.ts';
import type { Rubber } from './mould.ts';
import type { Mould, Shelf } from './shelf.ts';

/** Rejects below which nobody need look. Common practice, no source. */
const LEAST_REJECTS = 3;
/** Waxes of a rubber's moulds that make its usual share worth comparing with. */
const RUBBER_WAXES = 200;

/** The share of waxes thrown out that is usual for moulds of each rubber, in whole hundredths, so that it seldom changes. */
export type UsualRejects = { readonly [R in Rubber]?: number };

const known = new WeakMap<Shelf['things']['mould'], UsualRejects>();

export function usualRejects(moulds: Shelf['things']['mould']): UsualRejects {
  const before = known.get(moulds);
  if (before) return before;
  const sums: { [R in Rubber]?: { waxes: number; rejects: number } } = {};
  for (const { rubber, good, rejects } of moulds.values()) {
    if (!rubber || good + rejects === 0) continue;
    sums[rubber] ??= { waxes: 0, rejects: 0 };
    const sum = sums[rubber];
    sum.waxes += good + rejects;
    sum.rejects += rejects;
  }
  const usual = Object.fromEntries(
    Object.entries(sums)
      .filter(([, { waxes }]) => waxes >= RUBBER_WAXES)
      .map(([rubber, { waxes, rejects }]) => [rubber, Math.round((100 * rejects) / waxes) / 100]),
  ) as UsualRejects;
  known.set(moulds, usual);
  return usual;
}

/** The same where judging this one mould needs it: its own record, or few rejects, spare going through all moulds. */
export function usualFor({ good, rejects }: Mould, moulds: Shelf['things']['mould']): UsualRejects {
  return good + rejects >= OWN_WAXES || rejects < LEAST_REJECTS ? {} : usualRejects(moulds);
}

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
export function flagOnRejects(mould: Mould, rules: Rules): Flag | undefined {
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
