import type { Day } from './brand.ts';
import { daysBetween } from './day.ts';
import { NOUNS } from './noun.ts';
import type { Shelf, Thing } from './shelf.ts';

/** What a studio comes to, as far as a backup is concerned. */
export interface Census {
  /** Newest entry. */
  readonly last: string;
  /** Entries in force. */
  readonly entries: number;
  readonly things: number;
  /** Different pictures that things show. */
  readonly pictures: number;
  /** The first day anything was recorded; absent while nothing is. */
  readonly since?: Day;
}

/** A backup that was handed over, and what the studio came to then. */
export interface LastBackup extends Omit<Census, 'since'> {
  readonly on: Day;
}

export interface Since {
  readonly entries: number;
  readonly things: number;
  readonly pictures: number;
}

const known = new WeakMap<Shelf, Census>();

/** Counted once for each shelf. */
export function censusOf(shelf: Shelf): Census {
  const found = known.get(shelf);
  if (found) return found;
  const pictures = new Set<string>();
  let things = 0;
  let since: Day | undefined;
  for (const noun of NOUNS) {
    for (const thing of (shelf.things[noun] as ReadonlyMap<string, Thing>).values()) {
      things += 1;
      if (since === undefined || thing.since < since) since = thing.since;
      for (const picture of thing.pictures ?? []) pictures.add(picture);
      for (const picture of thing.looks ?? []) pictures.add(picture);
    }
  }
  const census = { last: shelf.last, entries: shelf.entries, things, pictures: pictures.size, ...(since ? { since } : {}) };
  known.set(shelf, census);
  return census;
}

/** What has come in since the last backup; undefined when nothing has happened. A taking-back alone counts as one entry. */
export function sinceBackup(now: Census, backup: LastBackup | undefined): Since | undefined {
  if (!backup) return now.entries > 0 ? now : undefined;
  if (now.last === backup.last) return undefined;
  return {
    entries: Math.max(1, now.entries - backup.entries),
    things: Math.max(0, now.things - backup.things),
    pictures: Math.max(0, now.pictures - backup.pictures),
  };
}

/** `quiet` nothing; `line` a line where somebody looks anyway; `note` a note at the foot of the shelves. */
export const STAKES = ['quiet', 'line', 'note'] as const;
export type Stake = (typeof STAKES)[number];

/**
 * How much would be lost with the phone before a reminder is shown, and a louder one. All of these figures are our own choice: some
 * working days of a small studio, and some weeks. A picture cannot be typed in again, so fewer of them weigh as much.
 */
export const REMINDER = {
  line: { entries: 30, pictures: 10, days: 30 },
  note: { entries: 200, pictures: 50, days: 90 },
  /** Days a reminder stays away when it is set aside. */
  asideDays: 14,
} as const;

export interface Reminder {
  readonly stake: Stake;
  readonly since?: Since;
  /** Days since the last backup, or since the first thing was recorded. */
  readonly days: number;
}

/** Days alone remind of a few entries as well, but never when nothing has happened. */
export function backupReminder(now: Census, backup: LastBackup | undefined, today: Day, asideUntil?: Day): Reminder {
  const since = sinceBackup(now, backup);
  const from = backup?.on ?? now.since;
  const days = from === undefined ? 0 : Math.max(0, daysBetween(from, today));
  if (!since) return { stake: 'quiet', days };
  const isOver = ({ entries, pictures, days: most }: (typeof REMINDER)['line' | 'note']) =>
    since.entries >= entries || since.pictures >= pictures || days >= most;
  const isLoud = isOver(REMINDER.note) && (since.entries >= REMINDER.line.entries || since.pictures >= REMINDER.line.pictures);
  const stake = asideUntil !== undefined && today < asideUntil ? 'quiet' : isLoud ? 'note' : isOver(REMINDER.line) ? 'line' : 'quiet';
  return { stake, since, days };
}
