import type { Run } from './shelf.ts';

/** Share of rejects up to which a run went well. Common practice, no source. */
const GOOD_RUN = 0.05;

export function wentWell(run: Run): boolean {
  return run.rejects <= (run.good + run.rejects) * GOOD_RUN;
}

/** The runs a mould is remembered by, with one more: the last, and before it the last that went well when the last did not. Nobody asks for others. */
export function withRun(before: readonly Run[], run: Run): readonly Run[] {
  const well = wentWell(run) ? undefined : before.findLast(wentWell);
  return well ? [well, run] : [run];
}
