import type { Problem } from '../problem.ts';
import { hullOf, overlap } from './box.ts';
import { type Drawing, type DrawnFront, frontsOfKeys, type Gone, undrawn } from './drawing.ts';

/** Makes one front of several. A recorded one is kept, the first of them where there are more, and what stood in the others goes into it. */
export function mergeFronts(drawing: Drawing, keys: readonly string[]): Drawing | Problem {
  const chosen = frontsOfKeys(drawing, keys);
  const kept = chosen.find(({ of }) => of !== undefined) ?? chosen[0];
  if (!kept || chosen.length < 2) return undrawn('Choose two or more fronts to make one of them.');
  const box = hullOf(chosen.map((front) => front.box));
  const between = drawing.fronts.find((front) => !chosen.includes(front) && overlap(front.box, box));
  if (between) return undrawn(`${between.label} is in the way: together they would not make one straight front.`);
  const merged: DrawnFront = { ...kept, box, periods: [...new Set(chosen.flatMap(({ periods }) => periods))], ...sumOf(chosen) };
  const fronts = drawing.fronts.flatMap((front) => (front.key === kept.key ? [merged] : chosen.includes(front) ? [] : [front]));
  return {
    ...drawing,
    fronts,
    gone: goneWith(
      drawing,
      chosen.filter((front) => front !== kept),
      kept.key,
    ),
  };
}

function sumOf(fronts: readonly DrawnFront[]): { readonly capacity?: number } {
  if (fronts.some(({ capacity }) => capacity === undefined)) return {};
  return { capacity: fronts.reduce((sum, { capacity = 0 }) => sum + capacity, 0) };
}

/** What is gone once these fronts are taken out too; what was to go into them goes where their own contents go. */
export function goneWith(drawing: Drawing, taken: readonly DrawnFront[], to: string | undefined): readonly Gone[] {
  const keys = new Set(taken.map(({ key }) => key));
  const goes = to === undefined ? {} : { to };
  const before = drawing.gone.map(({ to: was, ...gone }) =>
    was === undefined ? gone : keys.has(was) ? { ...gone, ...goes } : { ...gone, to: was },
  );
  return [...before, ...taken.flatMap(({ of, label }) => (of === undefined ? [] : [{ of, label, ...goes }]))];
}
