import { type ListHead, type Progress, type RunningJob, startJob } from '../device/worker-client.ts';
import type { Day } from '../domain/brand.ts';
import type { Delimiter } from '../domain/csv/delimiter.ts';
import { knownOf } from '../domain/csv/known.ts';
import { type ImportPlan, isTaken, type Reading, ROW_STATES, type RowState } from '../domain/csv/plan.ts';
import { neededDrafts } from '../domain/csv/plan-entries.ts';
import type { Noun } from '../domain/noun.ts';
import type { Shelf } from '../domain/shelf.ts';

export type { ListHead, Progress, RunningJob };

export interface ListText {
  readonly text: string;
  /** Chosen by hand, when the guess was wrong. */
  readonly delimiter?: Delimiter | undefined;
}

/** The first rows of a list. */
export function headOfList(list: ListText): RunningJob<ListHead> {
  return startJob('head', list);
}

/** What each row of a list becomes on this shelf, worked out beside the app. */
export function previewImport(
  shelf: Shelf,
  list: ListText,
  reading: Reading,
  today: Day,
  onProgress: (progress: Progress) => void,
): RunningJob<ImportPlan> {
  return startJob('import', { ...list, known: knownOf(shelf), reading, today }, onProgress);
}

export interface ImportCounts {
  readonly rows: Readonly<Record<RowState, number>>;
  /** Rows that come in. */
  readonly taken: number;
  /** Things that are recorded with them, by noun. */
  readonly things: readonly { readonly noun: Noun; readonly count: number }[];
}

export function importCounts(plan: ImportPlan, flipped: ReadonlySet<number>): ImportCounts {
  const rows = Object.fromEntries(ROW_STATES.map((state) => [state, 0])) as Record<RowState, number>;
  let taken = 0;
  for (const row of plan.rows) {
    rows[row.state] += 1;
    if (isTaken(row, flipped)) taken += 1;
  }
  const things = new Map<Noun, number>();
  for (const index of neededDrafts(plan, flipped)) {
    const noun = plan.drafts[index]?.noun;
    if (noun) things.set(noun, (things.get(noun) ?? 0) + 1);
  }
  return { rows, taken, things: [...things].map(([noun, count]) => ({ noun, count })) };
}
