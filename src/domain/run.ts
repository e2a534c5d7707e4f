import type { Run } from './shelf.ts';

/** Share of rejects up to which a run went well. Common practice, no source. */
const GOOD_RUN = 0.05;

export function wentWell(run: Run): boolean {
  return run.rejects <= (run.good + run.rejects) * GOOD_RUN;
}

/** A mould's last runs with one more, at most `most`. Settings stay with the last run and the last that went well; nobody asks for the others'. */
export function withRun(before: readonly Run[], run: Run, most: number): readonly Run[] {
  const older = before.slice(1 - most);
  const wellAt = wentWell(run) ? -1 : older.findLastIndex(wentWell);
  return [...older.map((each, at) => (at === wellAt ? each : { on: each.on, good: each.good, rejects: each.rejects })), run];
}
