const PLAIN = /^[\x20-\x7e]*$/;
const MARKS = /\p{M}+/gu;
const APART = /[^\p{L}\p{N}]+/gu;
const APOSTROPHES = /['’]/g;
/** Letters that do not come apart into a letter and a mark. */
const LETTERS: Readonly<Record<string, string>> = { ß: 'ss', æ: 'ae', œ: 'oe', ø: 'o', ð: 'd', þ: 'th', ł: 'l', ı: 'i' };
const WHOLE_LETTERS = /[ßæœøðþłı]/g;

/** Text as it is compared in a search: lower case, without accents, its words set apart by single blanks. “La Tène (B)” is “la tene b”. */
export function fold(text: string): string {
  const lower = text.toLowerCase().replace(APOSTROPHES, '');
  if (PLAIN.test(lower)) return lower.replace(/[^a-z0-9]+/g, ' ').trim();
  return lower
    .normalize('NFD')
    .replace(MARKS, '')
    .replace(WHOLE_LETTERS, (letter) => LETTERS[letter] ?? letter)
    .replace(APART, ' ')
    .trim();
}

/** The words of a query, folded. */
export function wordsOf(query: string): readonly string[] {
  const folded = fold(query);
  return folded === '' ? [] : folded.split(' ');
}
