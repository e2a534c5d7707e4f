import type { DesignId, PeriodId } from './brand.ts';
import type { Period, Shelf } from './shelf.ts';
import type { Years } from './years.ts';

/** Whether a year or a stretch of years (astronomical, 1 BC is 0) touches a period's span; a span open at one end holds everything on that side. */
export function overlaps(period: Period, { from, to }: Years): boolean {
  if (period.from === undefined && period.to === undefined) return false;
  return (period.from ?? Number.NEGATIVE_INFINITY) <= to && from <= (period.to ?? Number.POSITIVE_INFINITY);
}

/** Periods in the studio's own order, then by the year they begin, those without a span last. */
export function periodsInOrder(shelf: Shelf): readonly Period[] {
  return [...shelf.things.period.values()].filter((period) => !period.retired).sort(byOrder);
}

/** The periods whose span touches the years, the narrowest first: it says most. */
export function periodsOverlapping(shelf: Shelf, years: Years): readonly Period[] {
  return periodsInOrder(shelf)
    .filter((period) => overlaps(period, years))
    .sort((a, b) => lengthOf(a) - lengthOf(b));
}

function lengthOf(period: Period): number {
  return (period.to ?? Number.POSITIVE_INFINITY) - (period.from ?? Number.NEGATIVE_INFINITY);
}

function byOrder(a: Period, b: Period): number {
  const order = (a.order ?? Number.MAX_VALUE) - (b.order ?? Number.MAX_VALUE);
  const from = (a.from ?? Number.MAX_VALUE) - (b.from ?? Number.MAX_VALUE);
  return order || from || ((a.name ?? '') < (b.name ?? '') ? -1 : 1);
}

/** Designs of each period. */
export function designsByPeriod(shelf: Shelf): ReadonlyMap<PeriodId, readonly DesignId[]> {
  const known = cached.get(shelf.things.design);
  if (known) return known;
  const byPeriod = new Map<PeriodId, DesignId[]>();
  for (const design of shelf.things.design.values()) {
    for (const period of design.periods ?? []) {
      const list = byPeriod.get(period);
      if (list) list.push(design.id);
      else byPeriod.set(period, [design.id]);
    }
  }
  cached.set(shelf.things.design, byPeriod);
  return byPeriod;
}

const cached = new WeakMap<Shelf['things']['design'], ReadonlyMap<PeriodId, readonly DesignId[]>>();
