import type { Drawing } from './drawing.ts';

/** The steps of a drawing: what can be undone, what it is now, and what can be done again. */
export interface Steps {
  readonly past: readonly Drawing[];
  readonly now: Drawing;
  readonly future: readonly Drawing[];
}

/** Fronts that all remembered steps may have together: the steps are kept with the draft, which must stay small. */
const REMEMBERED = 1_600;

export function firstStep(now: Drawing): Steps {
  return { past: [], now, future: [] };
}

export function did({ past, now }: Steps, next: Drawing): Steps {
  const all = [...past, now];
  let fronts = all.reduce((sum, each) => sum + each.fronts.length, 0);
  while (all.length > 1 && fronts > REMEMBERED) fronts -= all.shift()?.fronts.length ?? 0;
  return { past: all, now: next, future: [] };
}

export function undone({ past, now, future }: Steps): Steps {
  const before = past.at(-1);
  return before ? { past: past.slice(0, -1), now: before, future: [now, ...future] } : { past, now, future };
}

export function redone({ past, now, future }: Steps): Steps {
  const [after, ...later] = future;
  return after ? { past: [...past, now], now: after, future: later } : { past, now, future };
}
