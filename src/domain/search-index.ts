import { type JoinedWords, Lexicon } from './lexicon.ts';
import { NOUNS, type Noun } from './noun.ts';
import { makePart, type SearchPart } from './search-part.ts';
import { lenderOf } from './search-words.ts';
import type { Shelf, Thing } from './shelf.ts';

/**
 * Which things have which word. With 20,000 things a letter typed is looked for in some thousand different words instead of in three
 * million characters, which measured ten times faster than scanning every record; and the same words serve those who misspell.
 */
export interface SearchIndex {
  /** Moulds first, then places: the order in which equally good finds are listed. */
  readonly parts: readonly SearchPart[];
  readonly lexicon: JoinedWords;
}

const ORDER: readonly Noun[] = ['mould', 'place', ...NOUNS.filter((noun) => noun !== 'mould' && noun !== 'place')];

/** What a part rests on besides its own things. */
interface Made {
  readonly part: SearchPart;
  readonly lenders: readonly unknown[];
}

const lexicon = new Lexicon();
const indexes = new WeakMap<Shelf['things'], SearchIndex>();
const partOf = new WeakMap<object, Made>();

/** The index of a shelf. Only nouns of which a thing changed, or what they borrow words from, are gone through again. */
export function searchIndexOf(shelf: Shelf): SearchIndex {
  for (const _ of indexInSlices(shelf));
  return indexes.get(shelf.things) as SearchIndex;
}

/** Makes the index a noun at a time, so that taps get their turn in between. */
export function* indexInSlices(shelf: Shelf): Generator<void, void> {
  if (indexes.has(shelf.things)) return;
  const { place, period, design, wax } = shelf.things;
  const waxes = [...wax.values()].map(({ id, name, colour }) => `${id} ${name} ${colour}`).join();
  const lenders = [place, period, design, waxes];
  const lend = lenderOf(shelf, (text) => lexicon.numbersOf(text));
  const parts: SearchPart[] = [];
  for (const noun of ORDER) {
    const things = shelf.things[noun] as ReadonlyMap<string, Thing>;
    const made = partOf.get(things);
    if (made?.lenders.every((lender, at) => lender === lenders[at])) parts.push(made.part);
    else {
      const part = makePart(shelf, noun, things.values(), lexicon, lend);
      partOf.set(things, { part, lenders });
      parts.push(part);
      yield;
    }
  }
  indexes.set(shelf.things, { parts, lexicon: lexicon.inOneText() });
}
