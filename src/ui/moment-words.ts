import type { EntryId } from '../domain/brand.ts';
import { clockOf } from '../domain/clock.ts';

const WHEN: Intl.DateTimeFormatOptions = { day: 'numeric', month: 'long', year: 'numeric', hour: '2-digit', minute: '2-digit' };

/** Day and time, on this device's clock, at which an entry was made. */
export function sayMoment(id: EntryId): string {
  return new Date(clockOf(id).ms).toLocaleString('en-GB', WHEN);
}
