import { distance } from 'fastest-levenshtein';
import type { SearchDocument, SearchIndex } from './search-index.ts';

/** A word of the query that nothing has, and the nearest words there are; none when nothing is near. */
export interface Correction {
  readonly typed: string;
  readonly instead: readonly string[];
}

export interface Found {
  /** All matches, best first. */
  readonly documents: readonly SearchDocument[];
  readonly corrections: readonly Correction[];
}

/** How well a document answers: 0 its name starts so, 1 a word of its name, 2 a word of its record, 3 somewhere inside a word. */
const RANKS = 4;
const INSTEAD_MAX = 3;

/** Mistakes forgiven in a word: none up to three letters, one up to six, two from seven on. */
export function slipsForgiven(word: string): number {
  if (/\d/.test(word)) return 0;
  return word.length < 4 ? 0 : word.length < 7 ? 1 : 2;
}

/**
 * Documents that have all the words. `among` may be an earlier answer to a query that these words only narrow down. A word that no document
 * has is looked for by its nearest spellings.
 */
export function search(index: SearchIndex, words: readonly string[], among: readonly SearchDocument[] = index.documents): Found {
  if (words.length === 0) return { documents: [], corrections: [] };
  const plain = ranked(
    among,
    words.map((word) => [word]),
  );
  if (plain.length > 0) return { documents: plain, corrections: [] };
  const corrections: Correction[] = [];
  const wanted = words.map((word) => {
    if (index.documents.some((document) => document.text.includes(word))) return [word];
    const instead = nearest(index.vocabulary(), word);
    corrections.push({ typed: word, instead });
    return instead;
  });
  if (corrections.length === 0 || wanted.some((spellings) => spellings.length === 0)) return { documents: [], corrections };
  return { documents: ranked(index.documents, wanted), corrections };
}

/** The nearest words within the slips forgiven: whole words first, else beginnings of words, for those still typing. */
export function nearest(vocabulary: Iterable<string>, word: string): readonly string[] {
  const most = slipsForgiven(word);
  if (most === 0) return [];
  let best = most + 0.5;
  let found: string[] = [];
  for (const candidate of vocabulary) {
    if (candidate.length < word.length - most) continue;
    const isLong = candidate.length > word.length + most;
    const slips = distance(word, isLong ? candidate.slice(0, word.length) : candidate) + (isLong ? 0.5 : 0);
    if (slips > best || slips > most + 0.5) continue;
    if (slips < best) found = [];
    best = slips;
    found.push(candidate);
  }
  return found.sort().slice(0, INSTEAD_MAX);
}

function ranked(documents: readonly SearchDocument[], words: readonly (readonly string[])[]): SearchDocument[] {
  const buckets: SearchDocument[][] = Array.from({ length: 2 * RANKS }, () => []);
  for (const document of documents) {
    let worst = 0;
    for (const spellings of words) {
      const rank = rankOf(document, spellings);
      if (rank > worst) worst = rank;
      if (rank === RANKS) break;
    }
    if (worst < RANKS) buckets[worst + (document.isSpent ? RANKS : 0)]?.push(document);
  }
  return buckets.flat();
}

function rankOf(document: SearchDocument, spellings: readonly string[]): number {
  let best = RANKS;
  for (const word of spellings) {
    const found = document.text.indexOf(word);
    if (found < 0) continue;
    if (found === 1) return 0;
    const { length } = document.name;
    if (document.text.includes(` ${word}`)) best = Math.min(best, found < length && document.name.includes(` ${word}`) ? 1 : 2);
    else best = Math.min(best, 3);
  }
  return best;
}
