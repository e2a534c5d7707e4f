import type { Day } from '../domain/brand.ts';
import type { Delimiter } from '../domain/csv/delimiter.ts';
import type { Known } from '../domain/csv/known.ts';
import type { ImportPlan, Reading } from '../domain/csv/plan.ts';
import type { Row } from '../domain/csv/table.ts';
import type { Journal } from '../domain/journal.ts';
import type { Problem } from '../domain/problem.ts';

/** What the first rows of a list show, before anything is planned. */
export interface ListHead {
  readonly delimiter: Delimiter;
  readonly rows: readonly Row[];
  /** Rows in the whole list, headings included. */
  readonly total: number;
}

/** The jobs a worker does, each with what it is told and what it answers. */
export interface Jobs {
  head: { readonly asks: { readonly text: string; readonly delimiter?: Delimiter | undefined }; readonly gives: ListHead };
  import: {
    readonly asks: {
      readonly text: string;
      readonly delimiter?: Delimiter | undefined;
      readonly known: Known;
      readonly reading: Reading;
      readonly today: Day;
    };
    readonly gives: ImportPlan;
  };
  journal: { readonly asks: { readonly text: string }; readonly gives: Journal };
}
export type JobName = keyof Jobs;

/** What a job works through, for the sentence that says it could not. */
export const JOB_READS: { readonly [J in JobName]: string } = { head: 'list', import: 'list', journal: 'journal' };

export type Request = { [J in JobName]: { readonly job: J; readonly asks: Jobs[J]['asks'] } }[JobName];

export interface Progress {
  readonly done: number;
  readonly total: number;
}

/** Any number of words about progress, then one answer. */
export type Reply = { readonly progress: Progress } | { readonly answer: Jobs[JobName]['gives'] | Problem };
