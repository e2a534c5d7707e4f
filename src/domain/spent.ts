import type { Thing } from './shelf.ts';

/** A pile of which nothing is left; its record stays for what came of it. */
export function isUsedUp(thing: Thing): boolean {
  return (thing.noun === 'injectedWax' || thing.noun === 'casting') && thing.pieces <= 0;
}

/** Whether it should not be reached for any more: failed, out of use, or used up. */
export function isSpent(thing: Thing): boolean {
  return thing.retired !== undefined || ('grade' in thing && thing.grade === 'failed') || isUsedUp(thing);
}
