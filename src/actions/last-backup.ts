import { backupReminder, type Census, censusOf, type LastBackup, REMINDER, type Reminder } from '../domain/backup-reminder.ts';
import { addDays, parseDay } from '../domain/day.ts';
import { isProblem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

type Needed = Pick<Deps, 'keeper' | 'settings'>;

/** Each studio on this device has its own: a copy of the demo is none of yours. */
const keptAs = ({ keeper }: Pick<Deps, 'keeper'>) => `backup-on:${keeper.name}`;
const asideAs = ({ keeper }: Pick<Deps, 'keeper'>) => `backup-aside:${keeper.name}`;

const countIn = (raw: unknown) => (typeof raw === 'number' && Number.isFinite(raw) && raw >= 0 ? raw : undefined);

/** When this device last handed a backup over, and what was in it. What an earlier version noted lacks things and pictures. */
export function lastBackup(deps: Needed): LastBackup | undefined {
  const kept = deps.settings.get<Partial<Record<keyof LastBackup, unknown>>>(keptAs(deps)) ?? {};
  const on = parseDay(kept.on);
  const entries = countIn(kept.entries);
  if (isProblem(on) || entries === undefined) return undefined;
  const last = typeof kept.last === 'string' ? kept.last : '';
  return { on, last, entries, things: countIn(kept.things) ?? 0, pictures: countIn(kept.pictures) ?? 0 };
}

/** Notes that a backup of what the studio came to then was handed over today. A journal alone holds no pictures: those of the backup before count on. */
export function noteBackup(deps: Needed & Pick<Deps, 'today'>, census: Census, hasPictures: boolean): void {
  const { last, entries, things } = census;
  const pictures = hasPictures ? census.pictures : (lastBackup(deps)?.pictures ?? 0);
  deps.settings.set(keptAs(deps), { on: deps.today(), last, entries, things, pictures } satisfies LastBackup);
}

/** How much is at stake. The demo is made anew at any time, so nothing is at stake there. */
export function reminderNow(deps: Needed & Pick<Deps, 'today' | 'isDemo'>): Reminder {
  if (deps.isDemo) return { stake: 'quiet', days: 0 };
  const aside = parseDay(deps.settings.get(asideAs(deps)));
  return backupReminder(censusOf(deps.keeper.shelf()), lastBackup(deps), deps.today(), isProblem(aside) ? undefined : aside);
}

/** Sets the reminder aside for some days. */
export function setReminderAside(deps: Needed & Pick<Deps, 'today'>): void {
  deps.settings.set(asideAs(deps), addDays(deps.today(), REMINDER.asideDays));
}
