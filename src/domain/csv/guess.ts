import { distance } from 'fastest-levenshtein';
import { fold } from '../folding.ts';
import { columnsOf, type Mapping, type Target } from './targets.ts';

/** The heading's words in one spelling, without its unit: “Mold No.” as “mould no”, “Stock (kg)” as “stock”. */
function words(heading: string): string {
  return fold(heading.replace(/[([][^)\]]*[)\]]/g, ' ').replace(/#|№/g, ' no '))
    .replace(/\bmold(s?)\b/g, 'mould$1')
    .replace(/\bcolor\b/g, 'colour')
    .replace(/\b(?:num|nbr|nos|nr)\b/g, 'no');
}

function fit(heading: string, word: string, isLabel: boolean): number {
  if (heading === word) return isLabel ? 110 : 100;
  if (heading.replaceAll(' ', '') === word.replaceAll(' ', '')) return 95;
  const limit = word.length >= 8 ? 2 : word.length >= 5 ? 1 : 0;
  if (limit > 0 && Math.abs(heading.length - word.length) <= limit && distance(heading, word) <= limit) return 80;
  if (word.length > 2 && ` ${heading} `.includes(` ${word} `)) return 40 + word.length;
  return 0;
}

/** What each heading most likely means for a list of `target`; each field once, `null` where nothing fits. */
export function guessColumns(headings: readonly string[], target: Target): Mapping {
  const fits: { column: number; field: string; score: number }[] = [];
  const columns = Object.entries(columnsOf(target));
  headings.forEach((raw, column) => {
    const heading = words(raw);
    if (heading === '') return;
    for (const [field, { label, words: also }] of columns) {
      const scores = also.split(',').map((word) => fit(heading, words(word), false));
      const score = Math.max(fit(heading, words(label), true), ...scores);
      if (score > 0) fits.push({ column, field, score });
    }
  });
  fits.sort((a, b) => b.score - a.score || a.column - b.column);
  const mapping: (string | null)[] = headings.map(() => null);
  const used = new Set<string>();
  for (const { column, field } of fits) {
    if (mapping[column] !== null || used.has(field)) continue;
    mapping[column] = field;
    used.add(field);
  }
  return mapping;
}

/** What each kind of list has to name its things by; a list with none of them is of something else. */
const NAMED_BY = ['number', 'name', 'design'];

/** Being named in a heading breaks a tie and outweighs no column: a list of moulds has one that is headed “Design”. */
const NAMED = 0.9;

/** Which kind of list the headings most look like: the one in which most of them mean something. */
export function guessTarget(headings: readonly string[], targets: readonly Target[]): Target {
  const said = new Set(headings.flatMap((heading) => words(heading).split(' ')));
  const score = (target: Target) => {
    const fields = guessColumns(headings, target).filter((field) => field !== null);
    return fields.length + (said.has(target) ? NAMED : 0) - (fields.some((field) => NAMED_BY.includes(field)) ? 0 : 3);
  };
  return [...targets].sort((a, b) => score(b) - score(a))[0] ?? 'mould';
}
