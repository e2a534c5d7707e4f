import { type Problem, problem } from '../domain/problem.ts';

const KEPT = 'What you typed is still in the form, and everything saved before is untouched.';

/** What a failed read or write means for the person at the bench. */
export function storageProblem(error: unknown): Problem {
  const { name, message, inner } = (error ?? {}) as { name?: string; message?: string; inner?: { name?: string } };
  const names = [name, inner?.name];
  if (names.includes('QuotaExceededError')) {
    return problem('This device has no room left, so it could not be saved.', `${KEPT} Free some space (pictures take the most), then try again.`);
  }
  if (names.includes('VersionError')) {
    return problem('These shelves were opened by a newer Mouldkeep.', 'Nothing was changed. Close the other tabs and load this page again to get the newer one.');
  }
  if (names.includes('SecurityError') || names.includes('MissingAPIError') || names.includes('InvalidStateError') || names.includes('OpenFailedError')) {
    return problem(
      'This browser does not let Mouldkeep keep anything here. A private window or blocked site data does that.',
      'Nothing was lost, and nothing can be saved. Open Mouldkeep in an ordinary window, or allow it to keep site data.',
    );
  }
  return problem(`It could not be saved (${name ?? 'error'}: ${String(message).slice(0, 120)}).`, KEPT);
}
