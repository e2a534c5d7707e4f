import type { Lexicon } from './lexicon.ts';
import type { Noun } from './noun.ts';
import { ownTexts } from './search-words.ts';
import type { Shelf, Thing } from './shelf.ts';
import { isSpent } from './spent.ts';
import { titleOf } from './title.ts';

/** A thing as a search sees it. */
export interface SearchDocument {
  readonly thing: Thing;
  readonly title: string;
  /** The title with its numbers as long as one another, so that Heron 2 comes before Heron 10. */
  readonly order: string;
  /** Failed or taken out of use: listed last. */
  readonly isSpent: boolean;
  /** Words of its title and of its own record. */
  readonly titled: readonly number[];
  readonly own: readonly number[];
}

/** How well a word answers: the title begins with it, it begins a word of the title, a word of the record, or is inside a word. */
export const RANK = { start: 0, title: 1, record: 2, inside: 3, none: 4 } as const;

/** The things of one noun, and which of them have which word. */
export interface SearchPart {
  readonly noun: Noun;
  readonly documents: readonly SearchDocument[];
  /** 1 for each document that is spent. */
  readonly spent: Uint8Array;
  /** Of word w: `postings[starts[w]]` up to `postings[starts[w + 1]]`, each document × 4 + rank. Words from `starts.length - 1` on are not here. */
  readonly starts: Int32Array;
  readonly postings: Int32Array;
}

/** Numbers in pairs, written one after another; the space is kept from one part to the next. */
const pairs = { words: new Int32Array(1 << 16), values: new Int32Array(1 << 16), length: 0 };

function note(word: number, value: number): void {
  if (pairs.length === pairs.words.length) {
    for (const key of ['words', 'values'] as const) {
      const wider = new Int32Array(pairs.length * 2);
      wider.set(pairs[key]);
      pairs[key] = wider;
    }
  }
  pairs.words[pairs.length] = word;
  pairs.values[pairs.length++] = value;
}

export function makePart(
  shelf: Shelf,
  noun: Noun,
  things: Iterable<Thing>,
  lexicon: Lexicon,
  lend: (thing: Thing, take: (words: readonly number[]) => void) => void,
): SearchPart {
  const documents: SearchDocument[] = [];
  pairs.length = 0;
  let at = 0;
  const take = (words: readonly number[]) => {
    for (let i = 0; i < words.length; i++) note(words[i] as number, at + RANK.record);
  };
  for (const thing of things) {
    const document = documentFor(shelf, thing, lexicon);
    at = (documents.push(document) - 1) * 4;
    const { titled } = document;
    for (let i = 0; i < titled.length; i++) note(titled[i] as number, at + (i === 0 ? RANK.start : RANK.title));
    take(document.own);
    lend(thing, take);
  }
  const spent = Uint8Array.from(documents, ({ isSpent: is }) => (is ? 1 : 0));
  return { noun, documents, spent, ...byWord(lexicon.words.length) };
}

const ORDER_DIGITS = 6;
const documentOf = new WeakMap<Thing, SearchDocument>();

/** The words of a thing that did not change, nor its title, are not read again. */
function documentFor(shelf: Shelf, thing: Thing, lexicon: Lexicon): SearchDocument {
  const title = titleOf(shelf, thing);
  const known = documentOf.get(thing);
  if (known?.title === title) return known;
  const own: number[] = [];
  for (const text of ownTexts(thing)) own.push(...lexicon.numbersOf(text));
  const order = title.replace(/\d+/g, (digits) => digits.padStart(ORDER_DIGITS, '0'));
  const document = { thing, title, order, isSpent: isSpent(thing), titled: lexicon.numbersOf(title), own };
  documentOf.set(thing, document);
  return document;
}

/** Counting sort of the noted values by their word. */
function byWord(count: number): { starts: Int32Array; postings: Int32Array } {
  const { words, values, length } = pairs;
  const starts = new Int32Array(count + 1);
  for (let i = 0; i < length; i++) {
    const word = (words[i] as number) + 1;
    starts[word] = (starts[word] as number) + 1;
  }
  for (let word = 0; word < count; word++) starts[word + 1] = (starts[word + 1] as number) + (starts[word] as number);
  const next = starts.slice();
  const postings = new Int32Array(length);
  for (let i = 0; i < length; i++) {
    const word = words[i] as number;
    const to = next[word] as number;
    postings[to] = values[i] as number;
    next[word] = to + 1;
  }
  return { starts, postings };
}
