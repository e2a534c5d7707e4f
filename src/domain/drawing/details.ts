import { text, whole } from '../field.ts';
import { isProblem, type Problem } from '../problem.ts';
import { type Drawing, type DrawnFront, type FrontDetails, frontsOfKeys, undrawn } from './drawing.ts';

/** `null` takes a word or figure away. */
export type DetailChanges = { readonly [K in keyof FrontDetails]?: FrontDetails[K] | null };

const asLabel = text(24);
const asCapacity = whole(0, 100_000);

/** Says something of fronts: the same of all of them, but for the label, which only one can have. */
export function describeFronts(drawing: Drawing, keys: readonly string[], changes: DetailChanges): Drawing | Problem {
  const chosen = frontsOfKeys(drawing, keys);
  if (chosen.length === 0) return undrawn('Choose a front first.');
  const checked: Record<string, unknown> = { ...changes };
  if (changes.label !== undefined) {
    const label = asLabel(changes.label);
    if (isProblem(label)) return undrawn(label.says);
    if (chosen.length > 1) return undrawn('Each front has a label of its own. Choose one of them.');
    const other = drawing.fronts.find((front) => front.label === label && front.key !== chosen[0]?.key);
    if (other) return undrawn(`There is a front called ${label} already.`);
    checked['label'] = label;
  }
  if (typeof changes.capacity === 'number') {
    const capacity = asCapacity(changes.capacity);
    if (isProblem(capacity)) return undrawn(capacity.says);
  }
  const fronts = drawing.fronts.map((front) => (chosen.includes(front) ? assigned(front, checked) : front));
  return { ...drawing, fronts };
}

function assigned(front: DrawnFront, changes: Readonly<Record<string, unknown>>): DrawnFront {
  const kept = Object.entries({ ...front, ...changes }).filter(([, value]) => value !== null && value !== undefined);
  return { periods: [], ...Object.fromEntries(kept) } as unknown as DrawnFront;
}
