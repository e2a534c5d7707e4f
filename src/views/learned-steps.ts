import { sayNumber } from '../domain/measure-words.ts';
import type { Shelf } from '../domain/shelf.ts';
import { learnedFrom } from '../domain/size/learn.ts';

/** What the studio's own readings taught about a step. */
export interface LearnedStep {
  readonly says: string;
  /** “3.2 % ± 0.3”. */
  readonly percent: string;
  readonly readings: number;
}

/** Every step that some reading told about, those with most readings first. */
export function learnedSteps(shelf: Shelf): readonly LearnedStep[] {
  const learned = learnedFrom(shelf);
  return learned
    .steps()
    .map((step) => {
      const { factor, relative } = learned.over([step]);
      const percent = `${sayNumber((1 - factor) * 100, 1)} % ± ${sayNumber(factor * relative * 100, 1)}`;
      return { says: step.says, percent, readings: learned.readingsFor(step.key) };
    })
    .sort((a, b) => b.readings - a.readings);
}
