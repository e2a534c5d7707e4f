import type { Problem } from '../../domain/problem.ts';
import { ProblemNote } from '../parts/note.tsx';

/** When the shelves cannot be opened at all. */
export function BrokenScreen({ problem }: { problem: Problem }) {
  return (
    <main class="doors">
      <h1>Mouldkeep could not open your shelves</h1>
      <ProblemNote problem={problem} />
      <p>
        <button type="button" class="button button-main" onClick={() => window.location.reload()}>
          Try again
        </button>
      </p>
    </main>
  );
}
