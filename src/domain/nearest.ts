import { distance } from 'fastest-levenshtein';

const NEAREST_MAX = 3;
const HAS_DIGIT = /\d/;

/** Mistakes forgiven in a word: none up to three letters, one up to six, two from seven on. Codes and sizes are not guessed at. */
export function slipsForgiven(word: string): number {
  if (HAS_DIGIT.test(word)) return 0;
  return word.length < 4 ? 0 : word.length < 7 ? 1 : 2;
}

/** The nearest words within the slips forgiven; a whole word before one that only begins so, for those still typing. */
export function nearest(vocabulary: Iterable<string>, word: string): readonly string[] {
  const most = slipsForgiven(word);
  if (most === 0) return [];
  let least = most + 0.5;
  let found: string[] = [];
  for (const candidate of vocabulary) {
    if (candidate.length < word.length - most || HAS_DIGIT.test(candidate)) continue;
    const isLonger = candidate.length > word.length + most;
    const slips = distance(word, isLonger ? candidate.slice(0, word.length) : candidate) + (isLonger ? 0.5 : 0);
    if (slips > least) continue;
    if (slips < least) found = [];
    least = slips;
    found.push(candidate);
  }
  return found.sort().slice(0, NEAREST_MAX);
}
