import type { Year } from './brand.ts';
import { type Problem, problem } from './problem.ts';

/** “c.”, “ca”, “circa”, “about” or “~”, a number, and the era before or behind it. */
const WRITTEN = /^(?:c\.?|ca\.?|circa|about|around|~)?\s*(ad|ce)?\s*(\d{1,6})\s*(bc|bce|b\.c\.|b\.c\.e\.|ad|ce|a\.d\.)?$/i;
/** A signed year of ISO 8601: astronomical, so −0599 is 600 BC; −0000 is not written. */
const SIGNED = /^[-−](\d{3,6})$/;
/** A bare number shorter than this is more likely a size or a drawer. */
const BARE_DIGITS = 3;
const LAST = 9999;
const FIRST_BC = 100_001;

/** A year as people write it: 1250, AD 42, 150 BC, c. 200 BCE, −0599. Given in astronomical numbering (1 BC is 0), since there is no year nought. */
export function parseYear(raw: string): Year | Problem {
  const signed = SIGNED.exec(raw.trim())?.[1];
  if (signed !== undefined) {
    const year = -Number(signed);
    return year < 0 && year > -FIRST_BC ? (year as Year) : problem(`${raw.trim()} is outside the years that can be kept.`);
  }
  const [, before, digits = '', after = ''] = WRITTEN.exec(raw.trim()) ?? [];
  const isBc = after.toLowerCase().startsWith('b');
  if (digits === '' || (before && after)) return problem(`“${raw.slice(0, 40)}” is not a year.`);
  if (!before && !after && digits.length < BARE_DIGITS)
    return problem(`“${digits}” alone is not read as a year; write AD ${digits} or ${digits} BC.`);
  const number = Number(digits);
  if (number === 0) return problem('There was no year 0: 1 BC is followed by AD 1.');
  if (number > (isBc ? FIRST_BC : LAST)) return problem(`${digits} is outside the years that can be kept.`);
  return (isBc ? 1 - number : number) as Year;
}

/** “150 BC”, “AD 42”, “1250”. */
export function yearInWords(year: Year): string {
  if (year <= 0) return `${1 - year} BC`;
  return year < 1000 ? `AD ${year}` : `${year}`;
}

/** “323–31 BC”, “800 BC – AD 42”, “from 1890”, “until 1910”; empty without a span. */
export function spanInYears(from: Year | undefined, to: Year | undefined): string {
  if (from === undefined) return to === undefined ? '' : `until ${yearInWords(to)}`;
  if (to === undefined) return `from ${yearInWords(from)}`;
  if (to <= 0) return `${1 - from}–${yearInWords(to)}`;
  return from > 0 ? `${yearInWords(from)}–${to}` : `${yearInWords(from)} – ${yearInWords(to)}`;
}
