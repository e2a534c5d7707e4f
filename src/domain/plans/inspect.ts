import type { Day, MasterId, MouldId, Sha256 } from '../brand.ts';
import { dayInWords } from '../day-words.ts';
import type { Desk } from '../desk.ts';
import type { Entry } from '../entry.ts';
import type { MouldFault } from '../fault.ts';
import { formProblem } from '../form-problem.ts';
import type { Grade } from '../grade.ts';
import { type Problem, problem } from '../problem.ts';
import { type Shelf, thingOf } from '../shelf.ts';
import { unconfirmed } from '../warning.ts';
import { allWritten, notAhead, notBefore, notPast } from './written.ts';

export interface Inspect {
  readonly of: MouldId | MasterId;
  readonly grade: Grade | undefined;
  readonly faults?: readonly MouldFault[] | undefined;
  readonly note?: string | undefined;
  readonly next?: Day | undefined;
  readonly pictures?: readonly Sha256[] | undefined;
  readonly on?: Day | undefined;
  readonly confirmed?: boolean | undefined;
}

/** A look at a mould or a master: how far it can be trusted, what is wrong with it, and when to look again. */
export function planInspect(shelf: Shelf, desk: Desk, command: Inspect): readonly Entry[] | Problem {
  const { confirmed, on, grade, faults = [], note, ...rest } = command;
  const thing = thingOf(shelf, command.of);
  if (thing?.noun !== 'mould' && thing?.noun !== 'master') {
    return problem('Only moulds and masters are inspected.', 'Nothing has been written down; what you typed is still in the form.');
  }
  if (grade === undefined) return formProblem({ grade: 'Say how far it can be trusted: choose one of the four.' });
  if (grade === 'failed' && faults.length === 0) return formProblem({ faults: 'Say what is wrong with it: choose at least one fault.' });
  const wrongDay = notAhead(on, desk.today) ?? notBefore(thing.made, on) ?? notPast(command.next, desk.today, 'next');
  if (wrongDay) return wrongDay;
  const doubts = grade === 'sound' && faults.length > 0 ? [`You call it sound, with ${faults.join(', ')} ticked.`] : [];
  if (on && thing.gradeOn && on < thing.gradeOn)
    doubts.push(`It was looked at since, on ${dayInWords(thing.gradeOn)}: this grade will stand instead of that one.`);
  const warning = unconfirmed(doubts, confirmed);
  if (warning) return warning;
  const said = { faults: faults.length > 0 ? [...new Set(faults)] : undefined, note: note?.trim() || undefined };
  return allWritten([{ ...desk.entry(), ...(on ? { on } : {}), kind: 'inspected', grade, ...rest, ...said }]);
}
