/** What went wrong with something typed, pasted, scanned or opened, and what was kept. Returned, never thrown, by domain code. */
export interface Problem {
  readonly problem: true;
  /** What happened, as a sentence for the person holding the phone. */
  readonly says: string;
  /** What was kept or left untouched, and what to do next; empty when nothing was at stake. */
  readonly kept: string;
}

export function problem(says: string, kept = ''): Problem {
  return { problem: true, says, kept };
}

export function isProblem(value: unknown): value is Problem {
  return typeof value === 'object' && value !== null && (value as { problem?: unknown }).problem === true;
}
