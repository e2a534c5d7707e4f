/** The demo studio's two years; all reckoned in UTC, so that the file is the same wherever it is made. */
export const FIRST_DAY = '2024-11-04';
export const LAST_DAY = '2026-11-20';
/** Day that shots made before the journal are put down under. */
export const BEFORE = '2024-10-31';

const DAY_MS = 86_400_000;

export function msOf(day: string, minute = 0) {
  const [year = 0, month = 1, date = 1] = day.split('-').map(Number);
  return Date.UTC(year, month - 1, date) + minute * 60_000;
}

export function dayAfter(day: string, days: number): string {
  return new Date(msOf(day) + days * DAY_MS).toISOString().slice(0, 10);
}

export function daysFrom(from: string, to: string) {
  return Math.round((msOf(to) - msOf(from)) / DAY_MS);
}

/** The workshop is shut at weekends, for the turn of the year and for the first half of August. */
function isShut(day: string) {
  const week = new Date(msOf(day)).getUTCDay();
  const date = day.slice(5);
  return week === 0 || week === 6 || date >= '12-22' || date <= '01-03' || (date >= '08-03' && date <= '08-14');
}

export function workDays() {
  const days: string[] = [];
  for (let day = FIRST_DAY; day <= LAST_DAY; day = dayAfter(day, 1)) if (!isShut(day)) days.push(day);
  return days;
}
