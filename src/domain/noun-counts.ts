import { sayCount } from './measure-words.ts';
import { NOUNS, type Noun } from './noun.ts';
import { NOUN_WORD, NOUNS_WORD } from './title.ts';

/** How many of each kind, in the kinds' own order: “1 place, 2 moulds”. */
export function sayNouns(nouns: readonly Noun[]): string {
  return NOUNS.flatMap((noun) => {
    const count = nouns.filter((each) => each === noun).length;
    return count > 0 ? [sayCount(count, NOUN_WORD[noun], NOUNS_WORD[noun])] : [];
  }).join(', ');
}
