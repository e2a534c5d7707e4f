import type { Day, InjectorId, WaxId } from '../domain/brand.ts';
import { monthOf } from '../domain/day.ts';
import { spanInWords } from '../domain/day-words.ts';
import { sayMass, sayPressures, sayTemperatures } from '../domain/measure-words.ts';
import { hemisphereOf, type MonthRoom, roomAssumed, roomToday } from '../domain/room.ts';
import { type MonthName, monthName, type Season, seasonOf } from '../domain/season.ts';
import type { Shelf, Wax } from '../domain/shelf.ts';
import { titleOf } from '../domain/title.ts';
import type { Units } from '../domain/units.ts';
import { chooseWax, injectorsHolding, VERDICTS, type Verdict, type WaxReason } from '../domain/wax-choice.ts';
import { waxUse } from '../domain/wax-use.ts';

export interface WaxCard {
  readonly id: WaxId;
  readonly name: string;
  readonly colour?: string;
  readonly behaviour?: string;
  readonly verdict: Verdict;
  readonly reasons: readonly WaxReason[];
  /** “1 250 g left, about 3 months’ worth”. */
  readonly left: string;
  readonly isLow: boolean;
  /** Why it is reckoned low, or what the days rest on. */
  readonly leftWhy?: string;
  /** Heat and pressure it is injected at; none for a wax that is not injected. */
  readonly heat?: string;
  readonly pressure?: string;
  readonly heldBy: readonly { readonly id: InjectorId; readonly name: string }[];
}

export interface WaxToday {
  readonly month: MonthName;
  readonly season: Season;
  readonly room: MonthRoom;
  /** The temperature reckoned with when none was read, °C. */
  readonly assumedC: number;
  /** Best suited first. */
  readonly cards: readonly WaxCard[];
}

/** Each wax in use: whether it suits a room of `roomC`, or this month's room when none was read, why, how much is left, and how it is injected. */
export function waxToday(shelf: Shelf, today: Day, roomC: number | undefined, units: Units): WaxToday {
  const { studio } = shelf;
  const room = roomToday(today, studio);
  const judged = roomC === undefined ? room : { lowC: roomC, highC: roomC };
  const cards = [...shelf.things.wax.values()]
    .filter((wax) => !wax.retired)
    .map((wax) => cardOf(shelf, wax, judged, today, units))
    .sort(
      (a, b) =>
        VERDICTS.indexOf(a.verdict) - VERDICTS.indexOf(b.verdict) || b.heldBy.length - a.heldBy.length || (a.name < b.name ? -1 : 1),
    );
  const month = monthOf(today);
  return { month: monthName(month), season: seasonOf(month, hemisphereOf(studio)), room, assumedC: roomAssumed(today, studio), cards };
}

function cardOf(shelf: Shelf, wax: Wax, room: { readonly lowC: number; readonly highC: number }, today: Day, units: Units): WaxCard {
  const injectors = [...shelf.things.injector.values()];
  const { verdict, reasons } = chooseWax(wax, room, injectors, units);
  const heat = wax.use === 'sticky' ? undefined : range(wax.injectLowC, wax.injectHighC, (low, high) => sayTemperatures(low, high, units));
  const pressure =
    wax.use === 'sticky' ? undefined : range(wax.pressureLowKpa, wax.pressureHighKpa, (low, high) => sayPressures(low, high, units));
  return {
    id: wax.id,
    name: titleOf(shelf, wax),
    ...(wax.colour ? { colour: wax.colour } : {}),
    ...(wax.behaviour ? { behaviour: wax.behaviour } : {}),
    verdict,
    reasons,
    ...stockOf(wax, today, units),
    ...(heat ? { heat } : {}),
    ...(pressure ? { pressure } : {}),
    heldBy: injectorsHolding(wax, injectors).map((injector) => ({ id: injector.id, name: titleOf(shelf, injector) })),
  };
}

function stockOf(wax: Wax, today: Day, units: Units): Pick<WaxCard, 'left' | 'isLow' | 'leftWhy'> {
  const use = waxUse(wax, today);
  const left = `${sayMass(wax.grams, units)} left`;
  if (use.daysLeft === undefined) return { left, isLow: use.isLow || wax.grams < 0 };
  const pace = `${sayMass(use.gramsADay, units)} a day over the last ${spanInWords(use.days)}`;
  const why = use.isLow ? `${pace}; ${sayMass(use.needed, units)} should be there` : pace;
  return { left: `${left}, about ${worth(spanInWords(use.daysLeft))} worth`, isLow: use.isLow || wax.grams < 0, leftWhy: why };
}

/** “1 day’s”, “3 months’”. */
const worth = (span: string) => (span.endsWith('s') ? `${span}’` : `${span}’s`);

/** Either end may be missing. */
function range(low: number | undefined, high: number | undefined, say: (low: number, high: number) => string): string | undefined {
  if (low === undefined && high === undefined) return undefined;
  if (low === undefined) return `up to ${say(high as number, high as number)}`;
  if (high === undefined) return `from ${say(low, low)}`;
  return say(low, high);
}
