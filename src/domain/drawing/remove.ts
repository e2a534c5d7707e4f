import type { Problem } from '../problem.ts';
import { type Drawing, frontsOfKeys, undrawn } from './drawing.ts';
import { goneWith } from './merge.ts';

/** Takes fronts out. What stands in them goes to another front, by its key, or to a place elsewhere, by its id; unsaid while nothing stands there. */
export function removeFronts(drawing: Drawing, keys: readonly string[], to?: string): Drawing | Problem {
  const taken = frontsOfKeys(drawing, keys);
  if (taken.length === 0) return undrawn('Choose the front to take out first.');
  const target = taken.find(({ key, of }) => key === to || of === to);
  if (to !== undefined && target) return undrawn(`${target.label} is taken out itself. Choose another place for what is in it.`);
  return { ...drawing, fronts: drawing.fronts.filter((front) => !taken.includes(front)), gone: goneWith(drawing, taken, to) };
}
