import type { Entry } from './entry.ts';
import { type Problem, problem } from './problem.ts';

/** Rules between fields of one entry. */
export function withinReason(entry: Entry): Entry | Problem {
  if (entry.step !== undefined && entry.step >= entry.id) return problem(`Entry ${entry.id} says it belongs to an action after itself.`);
  if (entry.kind === 'withdrawn' && entry.entry >= entry.id)
    return problem(`Entry ${entry.id} takes back an entry that is not older than itself.`);
  if (isInItself(entry)) return problem(`Entry ${entry.id} puts a place inside itself.`);
  return entry;
}

function isInItself(entry: Entry): boolean {
  if (entry.kind === 'moved') return (entry.things as readonly string[]).includes(entry.to);
  if (entry.kind === 'recorded')
    return entry.at === (entry.id as string) || (entry.noun === 'place' && entry.fields.in === (entry.id as string));
  return entry.kind === 'corrected' && entry.noun === 'place' && entry.fields.in === entry.of;
}
