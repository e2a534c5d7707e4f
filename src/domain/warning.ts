import type { Problem } from './problem.ts';

/** Nothing is wrong, but somebody should say “yes, do it” first: the same command with `confirmed: true` goes through. */
export interface Warning extends Problem {
  readonly warnings: readonly string[];
}

/** A warning when there is anything to warn of and it was not confirmed. */
export function unconfirmed(warnings: readonly string[], confirmed: boolean | undefined): Warning | undefined {
  if (confirmed || warnings.length === 0) return undefined;
  return { problem: true, says: warnings.join(' '), kept: 'Nothing has been written down yet.', warnings };
}

export function isWarning(value: unknown): value is Warning {
  return typeof value === 'object' && value !== null && Array.isArray((value as { warnings?: unknown }).warnings);
}
