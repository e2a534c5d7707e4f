import type { Design } from '../shelf.ts';
import { parseRingLabel } from './ring.ts';

/** A size of a design and the millimetres it stands for. */
export interface Rung {
  readonly label: string;
  readonly mm: number;
  /** Whether the millimetres are a ring's inside diameter. */
  readonly isRing: boolean;
}

/** The sizes of a design that have millimetres, smallest first: the studio's own, else what a ring's label stands for. */
export function ladderOf(design: Design | undefined): readonly Rung[] {
  const rungs = (design?.sizes ?? []).flatMap(({ label, mm }): readonly Rung[] => {
    const ring = parseRingLabel(label);
    if (mm !== undefined) return [{ label, mm, isRing: ring !== undefined }];
    return ring ? [{ label, mm: ring.diameterMm, isRing: true }] : [];
  });
  return rungs.sort((a, b) => a.mm - b.mm);
}

/** The rung that a measured length is nearest to; of two as near, the smaller. */
export function nearestRung(ladder: readonly Rung[], mm: number): Rung | undefined {
  let best: Rung | undefined;
  for (const rung of ladder) if (!best || Math.abs(rung.mm - mm) < Math.abs(best.mm - mm)) best = rung;
  return best;
}
