import type { Day } from '../brand.ts';
import type { KnownNoun } from './known.ts';
import type { Mapping, Target } from './targets.ts';

/** How the person says the list is to be read. */
export interface Reading {
  readonly target: Target;
  readonly mapping: Mapping;
  /** Whether the first row holds headings. */
  readonly hasHeadings: boolean;
}

export const ROW_STATES = ['new', 'exists', 'doubtful', 'unreadable'] as const;
export type RowState = (typeof ROW_STATES)[number];

/** An entry to be, before it has an id. Texts like `#12` stand for the thing that draft 12 records. */
export interface PlanDraft {
  readonly kind: 'recorded' | 'injected' | 'inspected' | 'retired';
  readonly noun?: KnownNoun;
  readonly fields?: Readonly<Record<string, unknown>>;
  readonly at?: string;
  readonly on?: Day;
  readonly [more: string]: unknown;
}

/** What becomes of one row. */
export interface RowPlan {
  readonly line: number;
  readonly state: RowState;
  /** Whether it is brought in unless the person says otherwise. */
  readonly take: boolean;
  readonly title: string;
  readonly says: readonly string[];
  /** Its own drafts; what those refer to comes in with them. */
  readonly drafts: readonly number[];
  /** The cells of a row that cannot be read. */
  readonly cells?: readonly string[];
}

export interface ImportPlan {
  /** The shelf it was made on. */
  readonly last: string;
  readonly target: Target;
  readonly headings: readonly string[];
  readonly rows: readonly RowPlan[];
  readonly drafts: readonly PlanDraft[];
}

export function draftRef(index: number): string {
  return `#${index}`;
}

/** The draft a text stands for, or undefined when it is the id of a thing on the shelf. */
export function draftIndex(ref: string): number | undefined {
  return ref.startsWith('#') ? Number(ref.slice(1)) : undefined;
}

/** Whether a row is brought in, given the lines for which the person chose the other way. */
export function isTaken(row: RowPlan, flipped: ReadonlySet<number>): boolean {
  if (row.state === 'unreadable' || row.state === 'exists') return false;
  return row.take !== flipped.has(row.line);
}
