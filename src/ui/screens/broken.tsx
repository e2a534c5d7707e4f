import type { CopyPlace } from '../../actions/save-second-copy.ts';
import type { Problem } from '../../domain/problem.ts';
import { lazy } from '../parts/lazy.tsx';
import { ProblemNote } from '../parts/note.tsx';

const SecondCopy = lazy(async () => (await import('../parts/second-copy.tsx')).SecondCopy, null);

/** When the shelves cannot be opened at all: why, and what can still be saved of them. */
export function BrokenScreen({ problem, copy }: { problem: Problem; copy?: CopyPlace }) {
  return (
    <main class="doors">
      <h1>Mouldkeep could not open your shelves</h1>
      <ProblemNote problem={problem} />
      <p>
        <button type="button" class="button button-main" onClick={() => window.location.reload()}>
          Try again
        </button>
      </p>
      {copy && <SecondCopy place={copy} />}
    </main>
  );
}
