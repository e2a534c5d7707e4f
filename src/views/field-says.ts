import type { Day } from '../domain/brand.ts';
import { parseEntryId } from '../domain/clock.ts';
import { dayInWords } from '../domain/day-words.ts';
import { sayLength, sayMass, sayNumber, sayPressure, sayTemperature } from '../domain/measure-words.ts';
import { isProblem } from '../domain/problem.ts';
import type { Shelf } from '../domain/shelf.ts';
import { titleOfId } from '../domain/title.ts';
import type { Units } from '../domain/units.ts';

const IS_DAY = /^\d{4}-\d{2}-\d{2}$/;

/** A field's value as it is read: figures in the studio's units, days as days, ids as what they name. */
export function fieldInWords(shelf: Shelf, key: string, value: unknown, units: Units): string {
  if (typeof value === 'number') return numberInWords(key, value, units);
  if (typeof value === 'string') return textInWords(shelf, value);
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (Array.isArray(value)) return value.map((each) => fieldInWords(shelf, key, each, units)).join(', ');
  if (typeof value === 'object' && value !== null) {
    const { label, mm } = value as { label?: string; mm?: number };
    return [label, mm === undefined || label?.includes('mm') ? undefined : sayLength(mm, units)].filter(Boolean).join(', ');
  }
  return '';
}

function numberInWords(key: string, value: number, units: Units): string {
  if (key.endsWith('Grams')) return sayMass(value, units);
  if (key.endsWith('Mm')) return sayLength(value, units);
  if (key.endsWith('Kpa')) return sayPressure(value, units);
  if (key.endsWith('C')) return sayTemperature(value, units);
  return sayNumber(value, 1);
}

function textInWords(shelf: Shelf, value: string): string {
  if (IS_DAY.test(value)) return dayInWords(value as Day);
  return isProblem(parseEntryId(value)) ? value : titleOfId(shelf, value);
}
