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

/** Documents of one part that have all the words, and how well each answers: the worst of its ranks. */
interface Hits {
  readonly documents: readonly number[];
  readonly ranks: readonly number[];
}

export interface Found {
  /** Of each part. */
  readonly hits: readonly Hits[];
  readonly corrections: readonly Correction[];
}

/** Looks for documents that have all the words. A word that none has is looked for by its nearest spellings, unless `mayCorrect` is false. */
export function search(index: SearchIndex, words: readonly string[], mayCorrect = true): Found {
  let hits: readonly Hits[] | undefined;
  const corrections: Correction[] = [];
  for (const word of words) {
    let wordHits = wordsWith(index, [word]);
    if (wordHits.length === 0 && mayCorrect) {
      const spellings = nearest(spellableWords(index), word);
      corrections.push({ typed: word, instead: spellings });
      wordHits = wordsWith(index, spellings);
    }
    hits = index.parts.map((part, at) => narrow(part, hits?.[at], wordHits));
  }
  return { hits: hits ?? index.parts.map(() => NOTHING), corrections };
}

const NOTHING: Hits = { documents: [], ranks: [] };

interface WordHit {
  readonly word: number;
  readonly begins: boolean;
}

/** Words with one of these pieces. The lexicon remembers words of things changed since; only those that something has count. */
function wordsWith({ parts, lexicon }: SearchIndex, pieces: readonly string[]): WordHit[] {
  const hits: WordHit[] = [];
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
export function spellableWords(index: SearchIndex): readonly string[] {
  const known = spellable.get(index);
  if (known) return known;
  const words = index.lexicon.words.filter((each, word) => isGuessed(each) && index.parts.some((part) => isIn(part, word)));
  spellable.set(index, words);
  return words;
}

/** The best rank of each document while one word is looked for, else all RANK.none: made once, as a letter's own would be 20,000 numbers to throw away. */
let gained = new Uint8Array();

/** Of the documents found so far (all, at the first word) those that have one of these words, each with the worse of the rank it had and the best that they give it. */
function narrow(part: SearchPart, before: Hits | undefined, hits: readonly WordHit[]): Hits {
  if (gained.length < part.documents.length) gained = new Uint8Array(part.documents.length).fill(RANK.none);
  const having: number[] = [];
  const { starts, postings } = part;
  for (const { word, begins } of hits) {
    if (!isIn(part, word)) continue;
    const end = starts[word + 1] as number;
    for (let at = starts[word] as number; at < end; at++) {
      const posting = postings[at] as number;
      const rank = begins ? posting & 3 : RANK.inside;
      const document = posting >> 2;
      const known = gained[document] as number;
      if (known === RANK.none) having.push(document);
      if (rank < known) gained[document] = rank;
    }
  }
  const documents: number[] = [];
  const ranks: number[] = [];
  const among = before?.documents ?? having;
  for (let at = 0; at < among.length; at++) {
    const document = among[at] as number;
    const rank = gained[document] as number;
    if (rank === RANK.none) continue;
    documents.push(document);
    ranks.push(Math.max(rank, before?.ranks[at] ?? 0));
  }
  for (const document of having) gained[document] = RANK.none;
  return { documents, ranks };
}

export interface Best {
  readonly documents: readonly SearchDocument[];
  /** Of all that were found. */
  readonly count: number;
}

/** The best `most` of what was found of the nouns that are wanted: sound before spent, then by rank, noun and title. */
export function best(index: SearchIndex, found: Found, most: number, isWanted: (noun: Noun) => boolean = () => true): Best {
  const wanted = index.parts.flatMap((part, at) => (isWanted(part.noun) ? [standing(part, found.hits[at] as Hits)] : []));
  const documents: SearchDocument[] = [];
  for (let standard = 0; standard < 2 * RANK.none; standard++) {
    for (const each of wanted) {
      if (documents.length >= most) break;
      if (each.counts[standard]) documents.push(...firstByTitle(each, standard, most - documents.length));
    }
  }
  return { documents, count: wanted.reduce((sum, { hits }) => sum + hits.documents.length, 0) };
}

interface Standing {
  readonly part: SearchPart;
  readonly hits: Hits;
  /** How good each find is: its rank, and after all ranks the same for what is spent. */
  readonly standards: readonly number[];
  /** How many there are of each. */
  readonly counts: readonly number[];
}

function standing(part: SearchPart, hits: Hits): Standing {
  const standards: number[] = [];
  const counts: number[] = new Array(2 * RANK.none).fill(0);
  for (let at = 0; at < hits.documents.length; at++) {
    const standard = (hits.ranks[at] as number) + (part.spent[hits.documents[at] as number] as number) * RANK.none;
    standards.push(standard);
    counts[standard] = (counts[standard] as number) + 1;
  }
  return { part, hits, standards, counts };
}

/** The first `most` by title (of the same title, as they were recorded) of those of one standard, without sorting all of them. */
function firstByTitle({ part, hits, standards }: Standing, standard: number, most: number): SearchDocument[] {
  const top: number[] = [];
  const order = (document: number) => (part.documents[document] as SearchDocument).order;
  const isAfter = (a: number, b: number) => order(a) > order(b) || (a > b && order(a) === order(b));
  for (let at = 0; at < standards.length; at++) {
    if (standards[at] !== standard) continue;
    const document = hits.documents[at] as number;
    if (top.length >= most && isAfter(document, top.at(-1) as number)) continue;
    const after = top.findLastIndex((each) => isAfter(document, each));
    top.splice(after + 1, 0, document);
    if (top.length > most) top.pop();
  }
  return top.map((document) => part.documents[document] as SearchDocument);
}
