import type { DesignId } from './brand.ts';
import { type Flag, flagOn, type Rules } from './flag.ts';
import { sayCount, sayNumber } from './measure-words.ts';
import type { Casting, Design, Shelf } from './shelf.ts';

const counted = new WeakMap<Shelf['things']['casting'], ReadonlyMap<DesignId, number>>();

/** Sound castings on hand of each design, over all metals and sizes. */
export function castingsOnHand(castings: Shelf['things']['casting']): ReadonlyMap<DesignId, number> {
  const known = counted.get(castings);
  if (known) return known;
  const onHand = new Map<DesignId, number>();
  for (const pile of castings.values()) {
    if (pile.retired || pile.design === undefined) continue;
    onHand.set(pile.design, (onHand.get(pile.design) ?? 0) + Math.max(0, (pile as Casting).pieces));
  }
  counted.set(castings, onHand);
  return onHand;
}

/** Whether fewer castings of a design are on hand than the studio keeps. */
export function stockFlags(design: Design, onHand: ReadonlyMap<DesignId, number>, rules: Rules): readonly Flag[] {
  if (design.retired || !design.keep) return [];
  const pieces = onHand.get(design.id) ?? 0;
  if (pieces >= design.keep) return [];
  const says = `${sayCount(pieces, 'casting')} on hand, ${sayCount(design.keep, 'is', 'are')} to be kept: ${sayNumber(design.keep - pieces)} short.`;
  return [flagOn(design, rules, 'stock low', pieces === 0 ? 'soon' : 'note', says, 'Put it on the list for the next run.')];
}
