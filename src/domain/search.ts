import { eachWordWith } from './lexicon.ts';
import { isGuessed, nearest } from './nearest.ts';
import type { Noun } from './noun.ts';
import type { SearchIndex } from './search-index.ts';
import { RANK, type SearchDocument, type SearchPart } from './search-part.ts';

/** A word of the query that nothing has, and the nearest words there are; none when nothing is near. */
export interface Correction {
  readonly typed: string;
  readonly instead: readonly string[];
}

export interface Found {
  /** For each part, how well each document answers all the words: the worst of its ranks, RANK.none when one of the words is missing. */
  readonly ranks: readonly Uint8Array[];
  readonly corrections: readonly Correction[];
}

/** Looks for documents that have all the words. A word that none has is looked for by its nearest spellings, unless `mayCorrect` is false. */
export function search(index: SearchIndex, words: readonly string[], mayCorrect = true): Found {
  const ranks = index.parts.map((part) => new Uint8Array(part.documents.length).fill(words.length === 0 ? RANK.none : 0));
  const corrections: Correction[] = [];
  for (const word of words) {
    let hits = hitsOf(index, [word]);
    if (hits.length === 0 && mayCorrect) {
      const spellings = nearest(spellableWords(index), word);
      corrections.push({ typed: word, instead: spellings });
      hits = hitsOf(index, spellings);
    }
    for (const [at, part] of index.parts.entries()) narrow(part, ranks[at] as Uint8Array, hits);
  }
  return { ranks, corrections };
}

interface Hit {
  readonly word: number;
  readonly begins: boolean;
}

/** Words with one of these pieces. The lexicon remembers words of things changed since; only those that something has count. */
function hitsOf({ parts, lexicon }: SearchIndex, pieces: readonly string[]): Hit[] {
  const hits: Hit[] = [];
  for (const piece of pieces) {
    eachWordWith(lexicon, piece, (word) => {
      if (!parts.some((part) => isIn(part, word))) return;
      hits.push({ word, begins: pieces.some((each) => lexicon.words[word]?.startsWith(each)) });
    });
  }
  return hits;
}

function isIn(part: SearchPart, word: number): boolean {
  return word + 1 < part.starts.length && part.starts[word] !== part.starts[word + 1];
}

const spellable = new WeakMap<SearchIndex, readonly string[]>();

/** Words that a slip is looked for among, gathered once for an index: those in use, without the codes and sizes that are not guessed at. */
function spellableWords(index: SearchIndex): readonly string[] {
  const known = spellable.get(index);
  if (known) return known;
  const words = index.lexicon.words.filter((each, word) => isGuessed(each) && index.parts.some((part) => isIn(part, word)));
  spellable.set(index, words);
  return words;
}

/** Leaves each document the worse of the rank it had and the best that one of these words gives it. */
function narrow(part: SearchPart, ranks: Uint8Array, hits: readonly Hit[]): void {
  const gained = new Uint8Array(ranks.length).fill(RANK.none);
  const { starts, postings } = part;
  for (const { word, begins } of hits) {
    if (!isIn(part, word)) continue;
    const end = starts[word + 1] as number;
    for (let at = starts[word] as number; at < end; at++) {
      const posting = postings[at] as number;
      const rank = begins ? posting & 3 : RANK.inside;
      const document = posting >> 2;
      if (rank < (gained[document] as number)) gained[document] = rank;
    }
  }
  for (let i = 0; i < ranks.length; i++) if ((gained[i] as number) > (ranks[i] as number)) ranks[i] = gained[i] as number;
}

export interface Best {
  readonly documents: readonly SearchDocument[];
  /** Of all that were found. */
  readonly count: number;
}

/** The best `most` of what was found of the nouns that are wanted: sound before spent, then by rank, noun and title. */
export function best(index: SearchIndex, found: Found, most: number, isWanted: (noun: Noun) => boolean = () => true): Best {
  const wanted = index.parts.flatMap((part, at) => (isWanted(part.noun) ? [standing(part, found.ranks[at] as Uint8Array)] : []));
  const documents: SearchDocument[] = [];
  for (let standard = 0; standard < 2 * RANK.none; standard++) {
    for (const { part, standards, counts } of wanted) {
      if (documents.length >= most) break;
      if (counts[standard]) documents.push(...firstByTitle(part.documents, standards, standard, most - documents.length));
    }
  }
  return { documents, count: wanted.reduce((sum, { count }) => sum + count, 0) };
}

const NOT_FOUND = 255;

/** How good each document of a part is: its rank, and after all ranks the same for what is spent; and how many there are of each. */
function standing(part: SearchPart, ranks: Uint8Array) {
  const standards = new Uint8Array(ranks.length).fill(NOT_FOUND);
  const counts = new Int32Array(2 * RANK.none);
  let count = 0;
  for (let i = 0; i < ranks.length; i++) {
    if (ranks[i] === RANK.none) continue;
    const standard = (ranks[i] as number) + (part.spent[i] as number) * RANK.none;
    standards[i] = standard;
    counts[standard] = (counts[standard] as number) + 1;
    count++;
  }
  return { part, standards, counts, count };
}

/** The first `most` by title of those of one standard, without sorting all of them. */
function firstByTitle(documents: readonly SearchDocument[], standards: Uint8Array, standard: number, most: number): SearchDocument[] {
  const top: SearchDocument[] = [];
  for (let i = standards.indexOf(standard); i !== -1; i = standards.indexOf(standard, i + 1)) {
    const document = documents[i] as SearchDocument;
    const last = top.at(-1);
    if (top.length >= most && last && last.title <= document.title) continue;
    const after = top.findLastIndex((each) => each.title <= document.title);
    top.splice(after + 1, 0, document);
    if (top.length > most) top.pop();
  }
  return top;
}
