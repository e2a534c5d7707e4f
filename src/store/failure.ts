import { type Problem, problem } from '../domain/problem.ts';

const KEPT = 'What you typed is still in the form, and everything saved before is untouched.';

/** What Dexie rejects with: a failed commit and a failed bulk write carry the browser's own error inside. */
interface Failure {
  readonly name?: string;
  readonly message?: string;
  readonly inner?: { readonly name?: string };
  readonly failures?: readonly { readonly name?: string }[];
}

/** What a failed read or write means for the person at the bench. */
export function storageProblem(error: unknown): Problem {
  const { name, message, inner, failures } = (error ?? {}) as Failure;
  const names = [name, inner?.name, failures?.[0]?.name];
  if (names.includes('QuotaExceededError')) {
    return problem(
      'This device has no room left, so it could not be saved.',
      `${KEPT} Free some room on the device (photos, films or apps you no longer need, or what other sites keep in this browser), then try again.`,
    );
  }
  if (names.includes('VersionError')) {
    return problem(
      'These shelves were opened by a newer Mouldkeep.',
      'Nothing was changed. Close the other tabs and load this page again to get the newer one.',
    );
  }
  if (
    names.includes('SecurityError') ||
    names.includes('MissingAPIError') ||
    names.includes('InvalidStateError') ||
    names.includes('OpenFailedError')
  ) {
    return problem(
      'This browser does not let Mouldkeep keep anything here. A private window or blocked site data does that.',
      'Nothing was lost, and nothing can be saved. Open Mouldkeep in an ordinary window, or allow it to keep site data.',
    );
  }
  if (names.includes('DatabaseClosedError')) {
    return problem(
      'These shelves were closed, because Mouldkeep was brought up to date in another tab.',
      `${KEPT} Copy it if it is long, and load this page again.`,
    );
  }
  if (names.includes('SyntaxError')) {
    return problem(
      'Part of what is kept on this device is damaged and cannot be read.',
      'Nothing was changed. Bring the studio back from its last backup.',
    );
  }
  return problem(`It could not be saved (${name ?? 'error'}: ${String(message).slice(0, 120)}).`, KEPT);
}
