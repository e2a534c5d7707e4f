import { nearest } from './nearest.ts';
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
    let spellings: readonly string[] = [word];
    let numbers = numbersWith(index, word);
    if (numbers.length === 0 && mayCorrect) {
      spellings = nearest(wordsInUse(index), word);
      corrections.push({ typed: word, instead: spellings });
      numbers = spellings.flatMap((spelling) => numbersWith(index, spelling));
    }
    const hits = numbers.map((number) => ({ number, begins: spellings.some((spelling) => index.words[number]?.startsWith(spelling)) }));
    for (const [at, part] of index.parts.entries()) narrow(part, ranks[at] as Uint8Array, hits);
  }
  return { ranks, corrections };
}

function isIn(part: SearchPart, word: number): boolean {
  return word + 1 < part.starts.length && part.starts[word] !== part.starts[word + 1];
}

/** The lexicon remembers words of things changed since; only those that something has count. */
function numbersWith(index: SearchIndex, piece: string): number[] {
  const numbers: number[] = [];
  for (let word = 0; word < index.words.length; word++) {
    if ((index.words[word] as string).includes(piece) && index.parts.some((part) => isIn(part, word))) numbers.push(word);
  }
  return numbers;
}

function wordsInUse(index: SearchIndex): readonly string[] {
  return index.words.filter((_, word) => index.parts.some((part) => isIn(part, word)));
}

/** Leaves each document the worse of the rank it had and the best that one of these words gives it. */
function narrow(part: SearchPart, ranks: Uint8Array, hits: readonly { readonly number: number; readonly begins: boolean }[]): void {
  const gained = new Uint8Array(ranks.length).fill(RANK.none);
  const { starts, postings } = part;
  for (const { number, begins } of hits) {
    if (!isIn(part, number)) continue;
    const end = starts[number + 1] as number;
    for (let at = starts[number] as number; at < end; at++) {
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
  const buckets: SearchDocument[][][] = Array.from({ length: 2 * RANK.none }, () => index.parts.map(() => []));
  let count = 0;
  index.parts.forEach((part, at) => {
    if (!isWanted(part.noun)) return;
    const ranks = found.ranks[at] as Uint8Array;
    for (let i = 0; i < ranks.length; i++) {
      if (ranks[i] === RANK.none) continue;
      const document = part.documents[i] as SearchDocument;
      buckets[(ranks[i] as number) + (document.isSpent ? RANK.none : 0)]?.[at]?.push(document);
      count++;
    }
  });
  const documents: SearchDocument[] = [];
  for (const bucket of buckets.flat()) {
    if (documents.length >= most) break;
    documents.push(...firstByTitle(bucket, most - documents.length));
  }
  return { documents, count };
}

/** The first `most` by title, without sorting all of them. */
function firstByTitle(documents: readonly SearchDocument[], most: number): SearchDocument[] {
  const top: SearchDocument[] = [];
  for (const document of documents) {
    const last = top.at(-1);
    if (top.length >= most && last && last.title <= document.title) continue;
    const after = top.findLastIndex((each) => each.title <= document.title);
    top.splice(after + 1, 0, document);
    if (top.length > most) top.pop();
  }
  return top;
}
