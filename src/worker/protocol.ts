import type { Manifest } from '../domain/backup/manifest.ts';
import type { Day, Sha256, ThingId } from '../domain/brand.ts';
import type { Delimiter } from '../domain/csv/delimiter.ts';
import type { Known } from '../domain/csv/known.ts';
import type { ImportPlan, Reading } from '../domain/csv/plan.ts';
import type { Row } from '../domain/csv/table.ts';
import type { Entry } from '../domain/entry.ts';
import type { Member } from '../domain/lineage/family.ts';
import type { Picture } from '../domain/lineage/layout.ts';
import type { DoubtFrom, Trace } from '../domain/lineage/trace.ts';
import type { Noun } from '../domain/noun.ts';
import type { Problem } from '../domain/problem.ts';
import type { Sighting } from '../domain/sighting.ts';
import type { LifeSum } from '../domain/survival/life-sums.ts';
import type { Packed } from '../domain/survival/packed.ts';
import type { Posterior } from '../domain/survival/posterior.ts';
import type { Picture as LabelPicture } from './grey.ts';

/** What the first rows of a list show, before anything is planned. */
export interface ListHead {
  readonly delimiter: Delimiter;
  readonly rows: readonly Row[];
  /** Rows in the whole list, headings included. */
  readonly total: number;
}

/** A picture in a backup: where its bytes and those of its thumbnail lie in the file. */
export interface PlacedPicture {
  readonly sha: Sha256;
  readonly type: string;
  readonly at: number;
  readonly bytes: number;
  readonly thumb: { readonly type: string; readonly at: number; readonly bytes: number; readonly sha: Sha256 };
}

/** What a backup, or a journal saved as text, holds. Every byte of it has been vouched for. */
export interface OpenedStudio {
  /** Absent for a journal saved as text. */
  readonly manifest?: Manifest;
  readonly name: string | undefined;
  readonly entries: readonly Entry[];
  /** Ids of the things on its shelves, by noun. */
  readonly things: readonly (readonly [Noun, readonly ThingId[]])[];
  readonly pictures: readonly PlacedPicture[];
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
  backup: { readonly asks: { readonly file: Blob; readonly isOnlyChecked: boolean }; readonly gives: OpenedStudio };
  life: {
    readonly asks: {
      /** Lives to sum, or the belief already known from them. */
      readonly sums: readonly ({ readonly lives: Packed } | { readonly posterior: Posterior })[];
      readonly moulds: Packed;
    };
    /** Undefined in place of a sum that was known. */
    readonly gives: { readonly sums: readonly (LifeSum | undefined)[]; readonly forecasts: Packed };
  };
  /** Rows of the journal, each the text of a list of entries; blobs, because handing those over copies nothing. */
  trace: { readonly asks: { readonly rows: readonly Blob[]; readonly from: DoubtFrom }; readonly gives: Trace };
  lineage: { readonly asks: { readonly members: readonly Member[]; readonly across?: number }; readonly gives: Picture };
}
export type JobName = keyof Jobs;

/** What a job works through, for the sentence that says it could not. */
export const JOB_READS: { readonly [J in JobName]: string } = {
  head: 'list',
  import: 'list',
  backup: 'backup',
  life: 'records of the moulds',
  trace: 'journal',
  lineage: 'lineage',
};

export type Request = { [J in JobName]: { readonly job: J; readonly asks: Jobs[J]['asks'] } }[JobName];

export interface Progress {
  readonly done: number;
  readonly total: number;
}

/**
 * Any number of words about progress, then one answer. The entries of a backup go before its answer, some at a time: a hundred thousand in one
 * message would hold the page up.
 */
export type Reply =
  | { readonly progress: Progress }
  | { readonly entries: readonly Entry[] }
  | { readonly answer: Jobs[JobName]['gives'] | Problem };

export type { LabelPicture };

/** One look for labels, asked of the worker that reads them. It loads its wasm from the address at the first. */
export interface LookRequest {
  readonly look: number;
  readonly wasmUrl: string;
  readonly picture: LabelPicture;
  readonly isThorough: boolean;
}

export interface LookReply {
  readonly look: number;
  /** Null when it cannot look at all. */
  readonly seen: readonly Sighting[] | null;
}
