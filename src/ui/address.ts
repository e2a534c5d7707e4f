import type { Thing } from '../domain/shelf.ts';
import { to } from './router.ts';

/** The screen of a thing: a place shows its drawer, a mould has a screen of its own. */
export function addressOf(thing: Pick<Thing, 'noun' | 'id'>): string {
  const screen = thing.noun === 'place' || thing.noun === 'mould' ? thing.noun : 'thing';
  return to([screen, thing.id]);
}
