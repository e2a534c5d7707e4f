import type { Day, ThingId } from './brand.ts';
import { addDays } from './day.ts';
import { FLAG_KINDS, type FlagKind } from './entry.ts';
import type { Thing } from './shelf.ts';
import type { StudioFields } from './studio.ts';
import type { UsualRejects } from './usual-rejects.ts';

/** How pressing something is, least first: good to know, before long, now. */
export const LEVELS = ['note', 'soon', 'act'] as const;
export type Level = (typeof LEVELS)[number];

/** Something that needs attention, why in words and numbers, and what to do about it. */
export interface Flag {
  readonly kind: FlagKind;
  /** What a mark says where the kind alone would mislead. */
  readonly word?: string;
  readonly of: ThingId;
  readonly level: Level;
  /** Its place in a list, most pressing level first, then in the order of the kinds: 0 to RANKS − 1. */
  readonly rank: number;
  readonly says: string;
  readonly todo: string;
  /** Set aside: it counts again from that day on. */
  readonly asideUntil?: Day;
}

export const RANKS = LEVELS.length * FLAG_KINDS.length;

function rankOf(level: Level, kind: FlagKind): number {
  return (LEVELS.length - 1 - LEVELS.indexOf(level)) * FLAG_KINDS.length + FLAG_KINDS.indexOf(kind);
}

/** What flags are judged by besides the things themselves. */
export interface Rules {
  readonly today: Day;
  readonly studio: StudioFields;
  /** A mould in use that was last looked at on this day or before is due a look. */
  readonly lookBefore: Day;
  /** Share of rejects usual for each rubber. */
  readonly usual: UsualRejects;
}

/** Days without a look after which a mould in use is due one, where the studio has not said. Common practice, no source. */
export const LOOK_DAYS = 180;

export function rulesOf(today: Day, studio: StudioFields, usual: UsualRejects = {}): Rules {
  return { today, studio, lookBefore: addDays(today, -(studio.lookDays ?? LOOK_DAYS)), usual };
}

export function flagOn(thing: Thing, rules: Pick<Rules, 'today'>, kind: FlagKind, level: Level, says: string, todo: string): Flag {
  const until = thing.aside?.[kind];
  const flag = { kind, of: thing.id, level, rank: rankOf(level, kind), says, todo };
  return until !== undefined && until > rules.today ? { ...flag, asideUntil: until } : flag;
}
