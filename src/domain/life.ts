import type { Day } from './brand.ts';
import type { Rubber } from './mould.ts';
import type { Mould } from './shelf.ts';
import type { StudioFields } from './studio.ts';

/** How long a rubber is expected to last. */
export interface Life {
  readonly shots: number;
  readonly years: number;
}

/**
 * Shots from memory, soft (usual talk is 1000–5000 natural, 500–2000 vulcanised silicone, 100–300 platinum, 30–150 tin); every studio's
 * differ, so they can be put right. Years: natural rubber “decades” (castaldo.com care page), rubber moulds “over 10 years”
 * (sobling.jewelry), platinum 20 and tin about 5 (brickintheyard.com glossary, reynoldsam.com).
 */
export const DEFAULT_LIFE: Readonly<Record<Rubber, Life>> = {
  natural: { shots: 2000, years: 30 },
  'vulcanised silicone': { shots: 1000, years: 10 },
  'platinum silicone': { shots: 200, years: 20 },
  'tin silicone': { shots: 80, years: 5 },
};

/** Where a figure comes from, to be shown beside it. */
export type LifeFrom = 'this mould' | 'the studio' | 'memory';

export interface ExpectedLife {
  readonly shots?: { readonly value: number; readonly from: LifeFrom };
  readonly years?: { readonly value: number; readonly from: LifeFrom };
}

/** The mould's own figure before the studio's for its rubber, before the default. Empty for an unknown rubber. */
export function expectedLife(mould: Mould, studio: StudioFields): ExpectedLife {
  const { rubber, expectedShots } = mould;
  const own = rubber && studio.life?.[rubber];
  const fallback = rubber && DEFAULT_LIFE[rubber];
  const figure = (ours: number | undefined, theirs: number | undefined) =>
    ours !== undefined
      ? ({ value: ours, from: 'the studio' } as const)
      : theirs !== undefined
        ? ({ value: theirs, from: 'memory' } as const)
        : undefined;
  const shots = expectedShots !== undefined ? ({ value: expectedShots, from: 'this mould' } as const) : figure(own?.shots, fallback?.shots);
  const years = figure(own?.years, fallback?.years);
  return { ...(shots ? { shots } : {}), ...(years ? { years } : {}) };
}

/** Whether nothing should rest on a mould any more: graded worn or failed, or shot as often as it is expected to last. */
export function isSpentMould(mould: Mould, studio: StudioFields): boolean {
  if (mould.grade === 'worn' || mould.grade === 'failed') return true;
  const { shots } = expectedLife(mould, studio);
  return shots !== undefined && mould.shots >= shots.value;
}

/** Whether the rubber is older than it is expected to last, which a look at it can belie. */
export function isAged(mould: Mould, studio: StudioFields, today: Day): boolean {
  const { years } = expectedLife(mould, studio);
  return years !== undefined && mould.made !== undefined && yearsOld(mould.made, today) >= years.value;
}

/** Age in years, to a few days: (year + month/12 + day/365) apart. Much cheaper than a calendar's reckoning, and asked for every mould. */
export function yearsOld(made: Day, today: Day): number {
  return yearPoint(today) - yearPoint(made);
}

function yearPoint(day: Day): number {
  return Number(day.slice(0, 4)) + (Number(day.slice(5, 7)) - 1) / 12 + (Number(day.slice(8, 10)) - 1) / 365;
}
