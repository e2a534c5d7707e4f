import { distance } from 'fastest-levenshtein';

export const NEAREST_MAX = 3;
const HAS_DIGIT = /\d/;

/** Whether a word may be what a slip was meant for. */
export const isGuessed = (word: string): boolean => !HAS_DIGIT.test(word);

/** Mistakes forgiven in a word: none up to three letters, one up to six, two from seven on. Codes and sizes are not guessed at. */
export function slipsForgiven(word: string): number {
  if (HAS_DIGIT.test(word)) return 0;
  return word.length < 4 ? 0 : word.length < 7 ? 1 : 2;
}

/**
 * The nearest words within the slips forgiven; a whole word before one that only begins so, for those still typing. Two neighbouring letters
 * swapped are one slip, and of six letters for seven (“dolfin”) the longer word decides.
 */
export function nearest(vocabulary: readonly string[], word: string): readonly string[] {
  if (slipsForgiven(word) === 0) return [];
  const swapped = swapsOf(word);
  const letters = lettersOf(word);
  let least = Number.POSITIVE_INFINITY;
  let found: string[] = [];
  const lettersOfEach = lettersIn(vocabulary);
  for (let at = 0; at < vocabulary.length; at++) {
    const candidate = vocabulary[at] as string;
    if (candidate.length < word.length - 2 || HAS_DIGIT.test(candidate)) continue;
    const most = word.length === 6 && candidate.length === 7 ? 2 : slipsForgiven(word);
    // Each letter that the candidate lacks is a slip of its own: most candidates are done with here, at a tenth of the cost.
    if (count(letters & ~(lettersOfEach[at] as number)) > most) continue;
    const isLonger = candidate.length > word.length + most;
    const compared = isLonger ? candidate.slice(0, word.length) : candidate;
    const slips = swapped.has(compared) ? 1 : distance(word, compared);
    const cost = slips + (isLonger ? 0.5 : 0);
    if (slips > most || cost > least) continue;
    if (cost < least) found = [];
    least = cost;
    found.push(candidate);
  }
  return found.sort().slice(0, NEAREST_MAX);
}

/** Words of three or four letters that one slip makes the word of three letters: too many to choose from unless something else does. */
export function nearShort(vocabulary: readonly string[], word: string): readonly string[] {
  const swapped = swapsOf(word);
  return vocabulary.filter((each) => (each.length === 3 || each.length === 4) && (swapped.has(each) || distance(word, each) === 1));
}

const known = new WeakMap<readonly string[], Int32Array>();

/** Told once for a vocabulary, which is asked at every letter. */
function lettersIn(vocabulary: readonly string[]): Int32Array {
  const before = known.get(vocabulary);
  if (before) return before;
  const letters = Int32Array.from(vocabulary, lettersOf);
  known.set(vocabulary, letters);
  return letters;
}

/** Which letters a word has, as bits; letters that share a bit only let more candidates through. */
function lettersOf(word: string): number {
  let bits = 0;
  for (let i = 0; i < word.length; i++) bits |= 1 << (word.charCodeAt(i) & 31);
  return bits;
}

function count(bits: number): number {
  let left = bits;
  let sum = 0;
  for (; left !== 0; left &= left - 1) sum++;
  return sum;
}

function swapsOf(word: string): ReadonlySet<string> {
  const swapped = new Set<string>();
  for (let i = 0; i + 1 < word.length; i++) swapped.add(word.slice(0, i) + word.charAt(i + 1) + word.charAt(i) + word.slice(i + 2));
  return swapped;
}
