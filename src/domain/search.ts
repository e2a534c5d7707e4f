import { eachWordWith } from './lexicon.ts';
import { isGuessed, NEAREST_MAX, nearest, nearShort } from './nearest.ts';
import type { Noun } from './noun.ts';
import type { SearchIndex } from './search-index.ts';
import { RANK, type SearchDocument, type SearchPart } from './search-part.ts';

/** A word of the query that nothing has, and the nearest words there are; none when nothing is near. */
export interface Correction {
  readonly typed: string;
  readonly instead: readonly string[];
}

/** Documents of one part that have all the words, each × 4 + the worst of its ranks. */
type Hits = Int32Array;

export interface Found {
  /** Of each part. */
  readonly hits: readonly Hits[];
  readonly corrections: readonly Correction[];
}

/** What was found after each word of the query before: with each letter of the next, the first are not looked for again. */
interface Asked {
  readonly words: readonly string[];
  readonly mayCorrect: boolean;
  readonly after: readonly Found[];
}
const lastAsked = new WeakMap<SearchIndex, Asked>();

/** Looks for documents that have all the words. A word that none has is looked for by its nearest spellings, unless `mayCorrect` is false. */
export function search(index: SearchIndex, words: readonly string[], mayCorrect = true): Found {
  const last = lastAsked.get(index);
  const after: Found[] = [];
  for (const word of words) {
    const at = after.length;
    const isKnown = last?.mayCorrect === mayCorrect && last.words[at] === word && (at === 0 || after[at - 1] === last.after[at - 1]);
    after.push((isKnown && last.after[at]) || searchOn(index, after.at(-1), word, mayCorrect));
  }
  lastAsked.set(index, { words, mayCorrect, after });
  const found = after.at(-1) ?? { hits: index.parts.map(() => NOTHING), corrections: [] };
  return (mayCorrect && words.length > 1 && forgiveShort(index, words, found)) || found;
}

/** A slip in one word of three letters, told by the other words: of the words near it those that something has beside them. */
function forgiveShort(index: SearchIndex, words: readonly string[], { corrections }: Found): Found | undefined {
  const [unknown, ...others] = corrections.filter(({ instead }) => instead.length === 0);
  if (unknown?.typed.length !== 3 || !isGuessed(unknown.typed) || others.length > 0) return undefined;
  const { typed } = unknown;
  const kept = words
    .filter((word) => word !== typed)
    .reduce<Found | undefined>((before, word) => searchOn(index, before, word, true), undefined);
  if (!kept?.hits.some(({ length }) => length > 0)) return undefined;
  const besides = (pieces: readonly string[]) => {
    const wordHits = wordsWith(index, pieces);
    return index.parts.map((part, at) => narrow(part, kept.hits[at], wordHits));
  };
  const instead = nearShort(spellableWords(index), typed)
    .filter((word) => besides([word]).some(({ length }) => length > 0))
    .sort()
    .slice(0, NEAREST_MAX);
  if (instead.length === 0) return undefined;
  return { hits: besides(instead), corrections: corrections.map((each) => (each === unknown ? { typed, instead } : each)) };
}

const NOTHING: Hits = new Int32Array();

/** Of what was found so far (all, at the first word) what has one word more. */
function searchOn(index: SearchIndex, before: Found | undefined, word: string, mayCorrect: boolean): Found {
  let wordHits = wordsWith(index, [word]);
  let corrections = before?.corrections ?? [];
  if (wordHits.length === 0 && mayCorrect) {
    const instead = nearest(spellableWords(index), word);
    corrections = [...corrections, { typed: word, instead }];
    wordHits = wordsWith(index, instead);
  }
  return { hits: index.parts.map((part, at) => narrow(part, before?.hits[at], wordHits)), corrections };
}

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

/** While one word is looked for: the best rank of each document, else RANK.none, and the documents that have it. Made once, as a letter's own would be 20,000 numbers to throw away. */
let gained = new Uint8Array();
let having = new Int32Array();

/** Of the documents found so far (all, at the first word) those that have one of these words, each with the worse of the rank it had and the best that they give it. */
function narrow({ documents, starts, postings }: SearchPart, before: Hits | undefined, wordHits: readonly WordHit[]): Hits {
  if (gained.length < documents.length) {
    gained = new Uint8Array(documents.length).fill(RANK.none);
    having = new Int32Array(documents.length);
  }
  let count = 0;
  for (const { word, begins } of wordHits) {
    if (word + 1 >= starts.length) continue;
    const end = starts[word + 1] as number;
    for (let at = starts[word] as number; at < end; at++) {
      const posting = postings[at] as number;
      const document = posting >> 2;
      const rank = begins ? posting & 3 : RANK.inside;
      const known = gained[document] as number;
      if (known === RANK.none) having[count++] = document;
      if (rank < known) gained[document] = rank;
    }
  }
  const hits = before ? amongThose(before) : having.slice(0, count).map((document) => document * 4 + (gained[document] as number));
  for (let at = 0; at < count; at++) gained[having[at] as number] = RANK.none;
  return hits;
}

function amongThose(before: Hits): Hits {
  const kept = new Int32Array(before.length);
  let count = 0;
  for (const hit of before) {
    const rank = gained[hit >> 2] as number;
    if (rank !== RANK.none) kept[count++] = (hit & ~3) + Math.max(rank, hit & 3);
  }
  return kept.subarray(0, count);
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
  return { documents, count: wanted.reduce((sum, { hits }) => sum + hits.length, 0) };
}

interface Standing {
  readonly part: SearchPart;
  readonly hits: Hits;
  /** How good each find is: its rank, and after all ranks the same for what is spent. */
  readonly standards: Uint8Array;
  /** How many there are of each. */
  readonly counts: readonly number[];
}

function standing(part: SearchPart, hits: Hits): Standing {
  const standards = new Uint8Array(hits.length);
  const counts: number[] = new Array(2 * RANK.none).fill(0);
  for (let at = 0; at < hits.length; at++) {
    const hit = hits[at] as number;
    const standard = (hit & 3) + (part.spent[hit >> 2] as number) * RANK.none;
    standards[at] = standard;
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
    const document = (hits[at] as number) >> 2;
    if (top.length >= most && isAfter(document, top.at(-1) as number)) continue;
    const after = top.findLastIndex((each) => isAfter(document, each));
    top.splice(after + 1, 0, document);
    if (top.length > most) top.pop();
  }
  return top.map((document) => part.documents[document] as SearchDocument);
}
