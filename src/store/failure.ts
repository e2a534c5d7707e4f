import { type Problem, problem } from '../domain/problem.ts';

const KEPT = 'What you typed is still in the form, and everything saved before is untouched.';

/** What Dexie rejects with: a failed commit and a failed bulk write carry the browser's own error inside. */
interface Failure {
  readonly name?: string;
  readonly message?: string;
  readonly inner?: { readonly name?: string };
  readonly failures?: readonly { readonly name?: string }[];
}

// Below its own words Dexie repeats the browser's.
const wordsOf = ({ name, message }: Failure) => `${name ?? 'error'}: ${String(message).split('\n')[0]?.slice(0, 120)}`;

/** What it means for the person at the bench that the database could not be opened, or what is in it not be read. */
export function openingProblem(error: unknown): Problem {
  return (
    knownProblem(error, 'the shelves could not be opened', 'Nothing was changed.') ??
    problem(
      `The browser could not open what it keeps here (${wordsOf((error ?? {}) as Failure)}).`,
      'Nothing was changed. Close every other tab with Mouldkeep, then close the browser, open it again and try once more.',
    )
  );
}

/** What a failed read or write means for the person at the bench. */
export function storageProblem(error: unknown): Problem {
  return (
    knownProblem(error, 'it could not be saved', KEPT) ?? problem(`It could not be saved (${wordsOf((error ?? {}) as Failure)}).`, KEPT)
  );
}

function knownProblem(error: unknown, undone: string, kept: string): Problem | undefined {
  const { name, inner, failures } = (error ?? {}) as Failure;
  const names = [name, inner?.name, failures?.[0]?.name];
  if (names.includes('QuotaExceededError')) {
    return problem(
      `This device has no room left, so ${undone}.`,
      `${kept} Free some room on the device (photos, films or apps you no longer need, or what other sites keep in this browser), then try again.`,
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
      `${kept} Copy it if it is long, and load this page again.`,
    );
  }
  if (names.includes('SyntaxError')) {
    return problem(
      'Part of what is kept on this device is damaged and cannot be read.',
      'Nothing was changed. Bring the studio back from its last backup.',
    );
  }
  return undefined;
}
