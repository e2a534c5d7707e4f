import type { Since } from '../domain/backup-reminder.ts';
import { sayCount } from '../domain/measure-words.ts';

export const sayEntries = (count: number) => sayCount(count, 'entry', 'entries');

/** “34 entries, 3 things and 5 pictures” */
export function sinceInWords({ entries, things, pictures }: Since): string {
  const parts = [
    sayEntries(entries),
    ...(things > 0 ? [sayCount(things, 'thing')] : []),
    ...(pictures > 0 ? [sayCount(pictures, 'picture')] : []),
  ];
  const last = parts.pop() as string;
  return parts.length > 0 ? `${parts.join(', ')} and ${last}` : last;
}
