import { fold, wordsOf } from '../domain/folding.ts';
import { nearest } from '../domain/nearest.ts';
import { pathText } from '../domain/nesting.ts';
import type { Noun } from '../domain/noun.ts';
import type { Shelf, Thing } from '../domain/shelf.ts';
import { designBeside, NOUN_WORD, titleOf } from '../domain/title.ts';
import { compareTitles } from '../domain/title-order.ts';

/** A thing that can be chosen in a form. */
export interface Choice {
  readonly id: string;
  readonly title: string;
  readonly detail?: string;
}

/** `isOfMany` where things of several kinds are offered beside each other: it then says which it is. */
export function choiceOf(shelf: Shelf, thing: Thing, isOfMany = false): Choice {
  if (thing.noun === 'place') {
    const detail = [thing.name !== thing.label ? thing.name : undefined, thing.kind].filter(Boolean).join(' · ');
    return { id: thing.id, title: pathText(shelf, thing.id), ...(detail ? { detail } : {}) };
  }
  const detail = [isOfMany ? NOUN_WORD[thing.noun] : undefined, designBeside(shelf, thing), thing.code, pathText(shelf, thing.at)]
    .filter(Boolean)
    .join(' · ');
  return { id: thing.id, title: titleOf(shelf, thing), ...(detail ? { detail } : {}) };
}

interface Candidate {
  readonly choice: Choice;
  readonly text: string;
}

/** Things of these kinds, with the words they are found by. Retired ones are left out. */
function candidates(shelf: Shelf, nouns: readonly Noun[]): readonly Candidate[] {
  return nouns.flatMap((noun) =>
    [...(shelf.things[noun] as ReadonlyMap<string, Thing>).values()]
      .filter(({ retired }) => !retired)
      .map((thing) => {
        const choice = choiceOf(shelf, thing, nouns.length > 1);
        return { choice, text: fold(`${choice.title} ${thing.name ?? ''} ${thing.code ?? ''} ${choice.detail ?? ''}`) };
      }),
  );
}

/** Those that hold one of the spellings of every word; those that begin with the first word first. */
function holding(all: readonly Candidate[], words: readonly (readonly string[])[], most: number): readonly Choice[] {
  const first = words[0] ?? [''];
  const rank = (text: string) =>
    first.some((word) => text.startsWith(word)) ? 0 : first.some((word) => text.includes(` ${word}`)) ? 1 : 2;
  return all
    .filter(({ text }) => words.every((spellings) => spellings.some((word) => text.includes(word))))
    .map(({ choice, text }) => ({ choice, rank: rank(text) }))
    .sort((a, b) => a.rank - b.rank || compareTitles(a.choice.title, b.choice.title))
    .slice(0, most)
    .map(({ choice }) => choice);
}

/** Things of these kinds whose name, code or place holds every word typed; those that begin with it first. */
export function choicesFor(shelf: Shelf, nouns: readonly Noun[], typed: string, most: number): readonly Choice[] {
  return holding(
    candidates(shelf, nouns),
    wordsOf(typed).map((word) => [word]),
    most,
  );
}

/** Where nothing is called that: what is called nearly so. A word that nothing has stands for its nearest spellings, as in the search. */
export function nearChoices(shelf: Shelf, nouns: readonly Noun[], typed: string, most: number): readonly Choice[] {
  const all = candidates(shelf, nouns);
  const vocabulary = [...new Set(all.flatMap(({ text }) => text.split(' ')))];
  const meant = wordsOf(typed).map((word) => (all.some(({ text }) => text.includes(word)) ? [word] : nearest(vocabulary, word)));
  return holding(all, meant, most);
}
