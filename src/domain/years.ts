import type { Year } from './brand.ts';
import { isProblem, type Problem, problem } from './problem.ts';
import { parseYear, spanInYears, yearInWords } from './year.ts';

/** First and last year of a stretch of time, both included, astronomical. */
export interface Years {
  readonly from: Year;
  readonly to: Year;
}

const ORDINALS = [
  'first',
  'second',
  'third',
  'fourth',
  'fifth',
  'sixth',
  'seventh',
  'eighth',
  'ninth',
  'tenth',
  'eleventh',
  'twelfth',
  'thirteenth',
  'fourteenth',
  'fifteenth',
  'sixteenth',
  'seventeenth',
  'eighteenth',
  'nineteenth',
  'twentieth',
  'twenty-first',
];
const CENTURY = /^(?:c\.?\s+|ca\.?\s+|about\s+)?(?:the\s+)?([a-z-]+|\d{1,3}(?:st|nd|rd|th))\s+(?:c\.?|cent\.?|century)\s*(bce?|ad|ce)?$/i;
const DECADE = /^(?:the\s+)?(\d{3}0)s$/i;
const SPAN = /^(.+?)\s*(?:–|—|-|\bto\b)\s*(.+)$/;
const SIGNED = /^[-−]/;
const BC = /\bb\.?c/i;
const AD = /\b(?:ad|ce|a\.d\.)/i;

/**
 * A stretch of years as people write it: one year, a century (the eighth century BC is −799 to −700, PeriodO’s reading), a decade, or from
 * one year to another with the era named once: 480–50 BC.
 */
export function parseYears(raw: string): Years | Problem {
  const text = raw.trim();
  const one = parseYear(text);
  if (!isProblem(one)) return { from: one, to: one };
  const stretch = century(text) ?? decade(text) ?? span(text);
  return stretch ?? problem(`“${text.slice(0, 40)}” is not a year or a span of years.`);
}

function century(text: string): Years | undefined {
  const [, word = '', era = ''] = CENTURY.exec(text) ?? [];
  const count = /^\d/.test(word) ? Number.parseInt(word, 10) : ORDINALS.indexOf(word.toLowerCase()) + 1;
  if (count < 1 || count > 100) return undefined;
  const last = era.toLowerCase().startsWith('b') ? 100 * (1 - count) : 100 * count;
  return { from: (last - 99) as Year, to: last as Year };
}

function decade(text: string): Years | undefined {
  const first = DECADE.exec(text)?.[1];
  return first === undefined ? undefined : { from: Number(first) as Year, to: (Number(first) + 9) as Year };
}

function span(text: string): Years | undefined {
  const [, first = '', second = ''] = SPAN.exec(text) ?? [];
  const [firstEra, secondEra] = [eraIn(first), eraIn(second)];
  // “480–50 BC”, “AD 50–59”: an era named once holds for both years; but what follows “480 BC” may lie after it.
  const from = parseYear(firstEra || SIGNED.test(first) ? first : `${first} ${secondEra}`);
  const to = parseYear(secondEra || firstEra === 'BC' ? second : `${second} ${firstEra}`);
  return isProblem(from) || isProblem(to) || from > to ? undefined : { from, to };
}

function eraIn(text: string): 'BC' | 'AD' | '' {
  if (BC.test(text)) return 'BC';
  return AD.test(text) ? 'AD' : '';
}

/** “150 BC”, “the 8th century BC”, “the 1250s”, “480–50 BC”. */
export function yearsInWords({ from, to }: Years): string {
  if (from === to) return yearInWords(from);
  const count = to <= 0 ? 1 - to / 100 : to / 100;
  if (to - from === 99 && Number.isInteger(count)) return `the ${ordinal(count)} century${to <= 0 ? ' BC' : ''}`;
  if (to - from === 9 && from % 10 === 0 && from >= 1000) return `the ${from}s`;
  return spanInYears(from, to);
}

function ordinal(count: number): string {
  const last = count % 100 > 10 && count % 100 < 14 ? 0 : count % 10;
  return `${count}${['th', 'st', 'nd', 'rd'][last] ?? 'th'}`;
}
