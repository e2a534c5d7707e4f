import { type Flag, flagOn, type Level, type Rules } from './flag.ts';
import { sayCount, sayMass, sayTemperatures } from './measure-words.ts';
import { roomNextMonth, roomToday } from './room.ts';
import { monthName } from './season.ts';
import type { Injector, Wax } from './shelf.ts';
import type { Units } from './units.ts';
import { chooseWax, injectorsHolding, type WaxReason } from './wax-choice.ts';
import { waxUse } from './wax-use.ts';

/** Whether there is enough of a wax, and whether it suits this month and the next. */
export function waxFlags(wax: Wax, injectors: Iterable<Injector>, rules: Rules, units: Units): readonly Flag[] {
  if (wax.retired) return [];
  return [lowFlag(wax, rules, units), wrongFlag(wax, [...injectors], rules, units)].filter((flag) => flag !== undefined);
}

function lowFlag(wax: Wax, rules: Rules, units: Units): Flag | undefined {
  const use = waxUse(wax, rules.today);
  const mass = (grams: number) => sayMass(grams, units);
  if (wax.grams < 0) {
    return flagOn(wax, rules, 'wax low', 'act', `The reckoning says ${mass(wax.grams)}, which cannot be.`, 'Weigh the tub.');
  }
  if (!use.isLow) return undefined;
  const pace =
    use.gramsADay > 0 ? `; ${mass(use.gramsADay)} a day used, so ${use.daysLeft === 1 ? 'one day’s' : `${use.daysLeft} days’`} worth` : '';
  const isAtKeep = wax.keepGrams !== undefined && use.needed === wax.keepGrams;
  const against = isAtKeep
    ? `at least ${mass(wax.keepGrams ?? 0)} is to be kept`
    : `${sayCount(use.deliveryDays, 'day')} to get more${use.isDeliveryAssumed ? ' (assumed)' : ''} ${use.deliveryDays === 1 ? 'asks' : 'ask'} for ${mass(use.needed)}`;
  const isTooLate = wax.grams <= 0 || (use.daysLeft !== undefined && use.daysLeft < use.deliveryDays);
  return flagOn(
    wax,
    rules,
    'wax low',
    isTooLate ? 'act' : 'soon',
    `${mass(wax.grams)} left${pace}; ${against}.`,
    isTooLate ? 'Order it today.' : 'Order it.',
  );
}

/** Only waxes at work: one that an injector holds, or that was used this month or the last. */
function wrongFlag(wax: Wax, injectors: readonly Injector[], rules: Rules, units: Units): Flag | undefined {
  const held = injectorsHolding(wax, injectors);
  if (wax.use === 'sticky' || (held.length === 0 && !wasUsedLately(wax, rules))) return undefined;
  const where =
    held.length > 0
      ? ` ${held.map((each) => each.name ?? each.code ?? 'An injector').join(' and ')} ${held.length === 1 ? 'holds' : 'hold'} it.`
      : '';
  const now = roomToday(rules.today, rules.studio);
  const next = roomNextMonth(rules.today, rules.studio);
  for (const room of [now, next]) {
    const isNow = room === now;
    const reason = roomReason(wax, injectors, room, units);
    if (!reason || (reason.verdict === 'take care' && (isNow || held.length === 0))) continue;
    const level: Level = reason.verdict === 'take care' ? 'note' : isNow && held.length > 0 ? 'act' : 'soon';
    const says = `${monthName(Number(room.month))}: the workshop is ${sayTemperatures(room.lowC, room.highC, units)}${room.isOwn ? '' : ' (assumed)'}. ${reason.says}${where}`;
    const todo =
      level === 'note'
        ? 'Have another wax ready for those days.'
        : held.length > 0
          ? 'Fill the injector with a wax that suits.'
          : 'Change to a wax that suits.';
    const flag = flagOn(wax, rules, 'wax wrong', level, says, todo);
    return isNow ? flag : { ...flag, word: 'wax wrong next month' };
  }
  return undefined;
}

function roomReason(
  wax: Wax,
  injectors: readonly Injector[],
  room: { readonly lowC: number; readonly highC: number },
  units: Units,
): WaxReason | undefined {
  const { reasons } = chooseWax(wax, room, injectors, units);
  const wrong = reasons.filter(({ why }) => why === 'brittle' || why === 'too soft');
  return wrong.find(({ verdict }) => verdict === 'no') ?? wrong[0];
}

function wasUsedLately(wax: Wax, rules: Rules): boolean {
  const [year, month] = [Number(rules.today.slice(0, 4)), Number(rules.today.slice(5, 7))];
  const before = month === 1 ? `${year - 1}-12` : `${year}-${String(month - 1).padStart(2, '0')}`;
  return (wax.used?.[rules.today.slice(0, 7)] ?? 0) > 0 || (wax.used?.[before] ?? 0) > 0;
}
