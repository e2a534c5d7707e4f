import { type Progress, startJob } from '../device/worker-client.ts';
import type { DoubtFrom, Trace } from '../domain/lineage/trace.ts';
import { type Problem, problem } from '../domain/problem.ts';
import type { Keeper } from '../store/keeper.ts';

export interface TraceRun {
  /** Undefined when it was called off. */
  readonly trace: Promise<Trace | Problem | undefined>;
  cancel(): void;
}

/** The journal's rows, taken one at a time and read by nobody yet. Rejects when the studio is replaced meanwhile. */
export async function journalBlobs(keeper: Pick<Keeper, 'journalTexts'>): Promise<readonly Blob[]> {
  const rows: Blob[] = [];
  for await (const text of keeper.journalTexts()) rows.push(new Blob([text]));
  return rows;
}

/** Follows a mould's doubtful waxes through the journal, beside the page. */
export function runTrace(journal: Promise<readonly Blob[]>, from: DoubtFrom, tell: (progress: Progress) => void): TraceRun {
  let stop: (() => void) | undefined;
  let isOff = false;
  const run = async (): Promise<Trace | Problem | undefined> => {
    let rows: readonly Blob[];
    try {
      rows = await journal;
    } catch {
      return problem('The journal could not be read.', 'Nothing was changed. Load the page again.');
    }
    if (isOff) return undefined;
    const job = startJob('trace', { rows, from }, tell);
    stop = job.cancel;
    return job.answer;
  };
  return {
    trace: run(),
    cancel() {
      isOff = true;
      stop?.();
    },
  };
}
