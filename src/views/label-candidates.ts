import type { Code } from '../domain/brand.ts';
import { fold } from '../domain/folding.ts';
import { nounOfCode } from '../domain/label.ts';
import type { Shelf, Thing } from '../domain/shelf.ts';
import { designBeside, titleOf } from '../domain/title.ts';
import { compareTitles } from '../domain/title-order.ts';
import { asBearer, type Bearer } from './find-code.ts';

const SHOWN = 20;

export interface LabelCandidates {
  readonly shown: readonly Bearer[];
  /** How many more there are. */
  readonly more: number;
}

/** The things a label of this kind could be put on, by their title; those without a label first. */
export function labelCandidates(shelf: Shelf, code: Code, typed: string): LabelCandidates {
  const words = fold(typed).split(' ');
  const things = [...(shelf.things[nounOfCode(code)] as ReadonlyMap<string, Thing>).values()];
  const found = things
    .filter((thing) => !thing.retired)
    .map((thing) => ({ thing, title: titleOf(shelf, thing) }))
    .filter(({ thing, title }) => {
      const text = fold(`${title} ${designBeside(shelf, thing) ?? ''} ${thing.code ?? ''}`);
      return words.every((word) => text.includes(word));
    })
    .sort((a, b) => Number(a.thing.code !== undefined) - Number(b.thing.code !== undefined) || compareTitles(a.title, b.title));
  return { shown: found.slice(0, SHOWN).map(({ thing }) => asBearer(shelf, thing)), more: Math.max(0, found.length - SHOWN) };
}
