import type { Day, ThingId } from './brand.ts';
import type { FlagKind } from './entry.ts';
import { SI_UNITS, type Units } from './units.ts';
import type { Thing } from './shelf.ts';
import type { StudioFields } from './studio.ts';

/** How pressing something is, least first: good to know, before long, now. */
export const LEVELS = ['note', 'soon', 'act'] as const;
export type Level = (typeof LEVELS)[number];

/** Something that needs attention, why in words and numbers, and what to do about it. */
export interface Flag {
  readonly kind: FlagKind;
  readonly of: ThingId;
  readonly level: Level;
  readonly says: string;
  readonly todo: string;
  /** Set aside: it counts again from that day on. */
  readonly asideUntil?: Day;
}

/** What flags are judged by besides the things themselves. */
export interface Rules {
  readonly today: Day;
  readonly studio: StudioFields;
  readonly units: Units;
}

export function rulesOf(today: Day, studio: StudioFields, units: Units = SI_UNITS): Rules {
  return { today, studio, units };
}

export function flagOn(thing: Thing, rules: Rules, kind: FlagKind, level: Level, says: string, todo: string): Flag {
  const until = thing.aside?.[kind];
  const flag = { kind, of: thing.id, level, says, todo };
  return until !== undefined && until > rules.today ? { ...flag, asideUntil: until } : flag;
}

/** Worse than another: by level, then in the order of the flag kinds. */
export function worseLevel(a: Level, b: Level): Level {
  return LEVELS.indexOf(a) >= LEVELS.indexOf(b) ? a : b;
}
