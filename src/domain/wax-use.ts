import type { Day } from './brand.ts';
import { daysBetween } from './day.ts';
import type { Wax } from './shelf.ts';

/** Full months looked back on, beside the one that is running. */
const MONTHS_BACK = 6;
/** A wax first used last week is not reckoned to be used at that pace: the days divided by are never fewer. */
const DAYS_LEAST = 28;
/** Where the wax does not say how long it takes to come. Common practice, no source. */
const DELIVERY_DAYS = 14;
/** Grams to have for the delivery time, as a multiple of what is used in it. Common practice, no source. */
const DELIVERY_MARGIN = 1.5;

export interface WaxUse {
  /** Grams a day; 0 when nothing was used. */
  readonly gramsADay: number;
  /** Days the figure rests on. */
  readonly days: number;
  /** Whole days the wax lasts at that pace; undefined when none is used. */
  readonly daysLeft?: number;
  readonly deliveryDays: number;
  readonly isDeliveryAssumed: boolean;
  /** Grams to have so that it does not run out while more is on its way. */
  readonly needed: number;
  /** Grams used while more is on its way. */
  readonly usedInDelivery: number;
  /** Below what is needed, or below what the studio keeps. */
  readonly isLow: boolean;
}

/**
 * gramsADay = grams used in the running month and the six before it ÷ days from the first of those months with any use to today, at least
 * 28; needed = gramsADay × delivery days × 1.5.
 */
export function waxUse(wax: Wax, today: Day): WaxUse {
  const months = Object.entries(wax.used ?? {}).filter(
    ([month, grams]) => grams > 0 && month >= monthBefore(today, MONTHS_BACK) && month <= today.slice(0, 7),
  );
  const first = months.map(([month]) => month).sort()[0];
  const days = first === undefined ? 0 : Math.max(DAYS_LEAST, daysBetween(`${first}-01` as Day, today) + 1);
  const gramsADay = days === 0 ? 0 : months.reduce((sum, [, grams]) => sum + grams, 0) / days;
  const deliveryDays = wax.deliveryDays ?? DELIVERY_DAYS;
  const usedInDelivery = gramsADay * deliveryDays;
  const needed = Math.max(usedInDelivery * DELIVERY_MARGIN, wax.keepGrams ?? 0);
  return {
    gramsADay,
    days,
    ...(gramsADay > 0 ? { daysLeft: Math.max(0, Math.floor(wax.grams / gramsADay)) } : {}),
    deliveryDays,
    isDeliveryAssumed: wax.deliveryDays === undefined,
    needed,
    usedInDelivery,
    isLow: needed > 0 && wax.grams < needed,
  };
}

function monthBefore(day: Day, months: number): string {
  const count = Number(day.slice(0, 4)) * 12 + Number(day.slice(5, 7)) - 1 - months;
  return `${String(Math.floor(count / 12)).padStart(4, '0')}-${String((count % 12) + 1).padStart(2, '0')}`;
}
