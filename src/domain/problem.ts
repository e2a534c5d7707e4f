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

/** A value as a message quotes it. Never throws, whatever came out of a file. */
export function quoted(raw: unknown): string {
  const text = typeof raw === 'object' && raw !== null ? (Array.isArray(raw) ? 'a list' : 'a table') : String(raw);
  return `“${text.slice(0, 40)}”`;
}

export function isProblem(value: unknown): value is Problem {
  return typeof value === 'object' && value !== null && (value as { problem?: unknown }).problem === true;
}
