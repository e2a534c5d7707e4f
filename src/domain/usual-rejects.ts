import { OWN_WAXES } from './drift.ts';
import type { Rubber } from './mould.ts';
import type { Mould, Shelf } from './shelf.ts';

/** Rejects below which nobody need look. Common practice, no source. */
export const LEAST_REJECTS = 3;
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
