import { sayTemperature, sayTemperatures, shownTemperature } from './measure-words.ts';
import type { Injector, Wax } from './shelf.ts';
import { SI_UNITS, type Units } from './units.ts';

export const VERDICTS = ['yes', 'take care', 'no'] as const;
export type Verdict = (typeof VERDICTS)[number];

/** Why a wax suits or does not. */
const WAX_REASONS = ['fits', 'no figures', 'brittle', 'too soft', 'pressure', 'sticky'] as const;
export interface WaxReason {
  readonly why: (typeof WAX_REASONS)[number];
  readonly verdict: Verdict;
  readonly says: string;
}
export interface WaxChoice {
  readonly verdict: Verdict;
  readonly reasons: readonly WaxReason[];
}

/** One reading (both alike), or the coldest and warmest of a month, °C. */
export interface RoomSpan {
  readonly lowC: number;
  readonly highC: number;
}

/** Nearer than this to an edge of its range a wax is used with care, °C. Common practice, no source. */
const EDGE_C = 2;

/**
 * Whether a wax suits a room: brittle below its range, too soft above it, in its own injector, and not at all when it is not for injecting.
 * Common practice, no source; the ranges are the studio's own figures, and a wax's colour means nothing.
 */
export function chooseWax(wax: Wax, room: RoomSpan, injectors: Iterable<Injector>, units: Units = SI_UNITS): WaxChoice {
  if (wax.use === 'sticky') {
    const says = 'Sticky wax melts lower than injection wax and only holds a piece in place: not for injecting.';
    return { verdict: 'no', reasons: [{ why: 'sticky', verdict: 'no', says }] };
  }
  const reasons = [
    ...roomReasons(wax, room, units),
    ...pressureReasons(
      wax,
      [...injectors].filter((each) => !each.retired),
    ),
  ];
  return { verdict: worst(reasons), reasons };
}

export function worst(reasons: readonly { readonly verdict: Verdict }[]): Verdict {
  return VERDICTS[Math.max(0, ...reasons.map(({ verdict }) => VERDICTS.indexOf(verdict)))] as Verdict;
}

function roomReasons(wax: Wax, room: RoomSpan, units: Units): readonly WaxReason[] {
  const { roomLowC: low, roomHighC: high } = wax;
  if (low === undefined && high === undefined) {
    return [{ why: 'no figures', verdict: 'take care', says: 'No figures yet: nobody has said in which room it works.' }];
  }
  const reasons = room.lowC === room.highC ? readingReasons(wax, room.lowC, units) : spanReasons(wax, room, units);
  if (reasons.length > 0) return reasons;
  const range =
    low === undefined
      ? `up to ${sayTemperature(high as number, units)}`
      : high === undefined
        ? `from ${sayTemperature(low, units)}`
        : sayTemperatures(low, high, units);
  return [
    { why: 'fits', verdict: 'yes', says: `The room suits it: it works ${low !== undefined && high !== undefined ? 'at ' : ''}${range}.` },
  ];
}

/** Compared as shown: 14 °C stands as 57 °F on the screen, so that 57 °F is not colder, though it is 13.9 °C. */
function isColder(aC: number, bC: number, units: Units): boolean {
  return shownTemperature(aC, units) < shownTemperature(bC, units);
}

function readingReasons({ roomLowC: low, roomHighC: high }: Wax, at: number, units: Units): readonly WaxReason[] {
  const reasons: WaxReason[] = [];
  if (low !== undefined && isColder(at, low, units))
    reasons.push({ why: 'brittle', verdict: 'no', says: `Brittle below ${sayTemperature(low, units)}.` });
  else if (low !== undefined && at - low < EDGE_C) {
    reasons.push({ why: 'brittle', verdict: 'take care', says: `Close to its cold edge: brittle below ${sayTemperature(low, units)}.` });
  }
  if (high !== undefined && isColder(high, at, units))
    reasons.push({ why: 'too soft', verdict: 'no', says: `Too soft above ${sayTemperature(high, units)}: it bends.` });
  else if (high !== undefined && high - at < EDGE_C) {
    reasons.push({ why: 'too soft', verdict: 'take care', says: `Close to its warm edge: too soft above ${sayTemperature(high, units)}.` });
  }
  return reasons;
}

/** A month counts as outside only when all of it is; a part outside asks for care on those days. */
function spanReasons({ roomLowC: low, roomHighC: high }: Wax, room: RoomSpan, units: Units): readonly WaxReason[] {
  const reasons: WaxReason[] = [];
  if (low !== undefined && isColder(room.lowC, low, units)) {
    reasons.push(
      isColder(room.highC, low, units)
        ? { why: 'brittle', verdict: 'no', says: `Brittle below ${sayTemperature(low, units)}, and the room stays colder.` }
        : { why: 'brittle', verdict: 'take care', says: `Brittle below ${sayTemperature(low, units)}: not on the coldest days.` },
    );
  }
  if (high !== undefined && isColder(high, room.highC, units)) {
    reasons.push(
      isColder(high, room.lowC, units)
        ? { why: 'too soft', verdict: 'no', says: `Too soft above ${sayTemperature(high, units)}, and the room stays warmer.` }
        : { why: 'too soft', verdict: 'take care', says: `Too soft above ${sayTemperature(high, units)}: not on the warmest days.` },
    );
  }
  return reasons;
}

const nameOf = (injector: Injector) => injector.name ?? injector.code ?? 'an injector without a name';

/** A wax for high pressure stays with that injector, and one for low pressure out of it. */
function pressureReasons(wax: Wax, injectors: readonly Injector[]): readonly WaxReason[] {
  if (wax.pressure !== 'needs high' && wax.pressure !== 'low only') return [];
  const isHigh = wax.pressure === 'needs high';
  const fit = injectors.filter((each) => (each.pressure === 'high') === isHigh);
  const held = injectors.filter((each) => each.holds === wax.id);
  const need = isHigh ? 'Needs the high-pressure injector' : 'For low pressure only';
  if (fit.length === 0)
    return [{ why: 'pressure', verdict: 'no', says: `${need}, and there is none${isHigh ? '' : ' but high-pressure ones'}.` }];
  const wrong = held.find((each) => !fit.includes(each));
  if (wrong) return [{ why: 'pressure', verdict: 'take care', says: `${need}, and ${nameOf(wrong)} holds it.` }];
  if (!isHigh || held.length > 0) return [];
  const first = fit[0] as Injector;
  return [{ why: 'pressure', verdict: 'take care', says: `${need}: fill ${nameOf(first)} with it first.` }];
}

/** The injectors that hold a wax now. */
export function injectorsHolding(wax: Wax, injectors: Iterable<Injector>): readonly Injector[] {
  return [...injectors].filter((each) => !each.retired && each.holds === wax.id);
}
