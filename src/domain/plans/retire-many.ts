import type { ThingId } from '../brand.ts';
import type { Desk } from '../desk.ts';
import type { Entry } from '../entry.ts';
import { formProblem } from '../form-problem.ts';
import { isProblem, type Problem } from '../problem.ts';
import { REASONS, type Retirement } from '../retirement.ts';
import { type Shelf, thingOf } from '../shelf.ts';
import { isWarning, unconfirmed } from '../warning.ts';
import { planRetire } from './retire.ts';

export interface RetireMany {
  readonly things: readonly ThingId[];
  readonly reason: Retirement;
  readonly confirmed?: boolean | undefined;
}

/** Takes several things out of use for one reason, in one action: all of them or none. */
export function planRetireMany(shelf: Shelf, desk: Desk, { things, reason, confirmed }: RetireMany): readonly Entry[] | Problem {
  if (things.length === 0) return formProblem({ things: 'Choose what is to be retired.' });
  const entries: Entry[] = [];
  const warnings: string[] = [];
  for (const of of new Set(things)) {
    const planned = planRetire(shelf, desk, { of, reason, confirmed });
    if (isWarning(planned)) warnings.push(...planned.warnings);
    else if (isProblem(planned)) return planned;
    else entries.push(...planned);
  }
  return unconfirmed(warnings, confirmed) ?? entries;
}

/** The reasons that fit every one of them. */
export function reasonsFor(shelf: Shelf, things: readonly string[]): readonly Retirement[] {
  const [first = [], ...others] = [...new Set(things.flatMap((id) => thingOf(shelf, id)?.noun ?? []))].map((noun) => REASONS[noun]);
  return first.filter((reason) => others.every((each) => each.includes(reason)));
}
