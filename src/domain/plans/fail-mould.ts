import type { Day, MouldId, Sha256 } from '../brand.ts';
import type { Desk } from '../desk.ts';
import type { Entry } from '../entry.ts';
import type { MouldFault } from '../fault.ts';
import { formProblem } from '../form-problem.ts';
import { type Problem, problem } from '../problem.ts';
import type { Shelf } from '../shelf.ts';
import { allWritten, notAhead, notBefore } from './written.ts';

export interface FailMould {
  readonly mould: MouldId;
  readonly faults: readonly MouldFault[];
  readonly note?: string | undefined;
  readonly pictures?: readonly Sha256[] | undefined;
  readonly on?: Day | undefined;
}

/** A mould that must not be used any more. It keeps its place until somebody moves it. */
export function planFailMould(shelf: Shelf, desk: Desk, { mould, faults, note, pictures, on }: FailMould): readonly Entry[] | Problem {
  const thing = shelf.things.mould.get(mould);
  if (!thing) return problem('This mould is no longer recorded.', 'Nothing has been written down; what you typed is still in the form.');
  if (faults.length === 0) return formProblem({ faults: 'Say what is wrong with it: choose at least one fault.' });
  const wrongDay = notAhead(on, desk.today) ?? notBefore(thing.made, on);
  if (wrongDay) return wrongDay;
  return allWritten([
    {
      ...desk.entry(),
      ...(on ? { on } : {}),
      kind: 'failed',
      of: mould,
      faults: [...new Set(faults)],
      note: note?.trim() || undefined,
      pictures,
    },
  ]);
}
