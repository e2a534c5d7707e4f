import type { Grams, PlaceId, Sha256 } from '../domain/brand.ts';
import { isStanding } from '../domain/filling.ts';
import { formProblem } from '../domain/form-problem.ts';
import type { Noun } from '../domain/noun.ts';
import type { RecordThing } from '../domain/plans/record.ts';
import { isProblem, type Problem } from '../domain/problem.ts';
import { parseTypedNumber } from '../domain/typed-number.ts';
import { gramsFrom, type Units } from '../domain/units.ts';
import { changedFields, type Typed } from './form-values.ts';
import { FORMS } from './forms.ts';

/** The form for something new, as typed. */
export interface NewDraft {
  readonly typed: Typed;
  readonly at: string;
  /** Pieces of a pile, or wax in a tub. */
  readonly amount: string;
  readonly count: number;
  readonly pictures: readonly Sha256[];
}

export function newCommand(noun: Noun, draft: NewDraft, units: Units): RecordThing | Problem {
  const { main, more } = FORMS[noun];
  const fields = changedFields([...main, ...more], draft.typed, {}, units);
  if (isProblem(fields)) return fields;
  const amount = parseTypedNumber(draft.amount);
  const isWax = noun === 'wax';
  if (isProblem(amount)) return formProblem({ [isWax ? 'grams' : 'pieces']: amount.says });
  return {
    noun,
    fields,
    units,
    at: isStanding(noun) ? ((draft.at || undefined) as PlaceId | undefined) : undefined,
    pieces: isWax ? undefined : amount,
    grams: isWax && amount !== undefined ? (gramsFrom(amount, units.mass) as Grams) : undefined,
    count: draft.count,
    pictures: draft.pictures.length > 0 ? draft.pictures : undefined,
  };
}
