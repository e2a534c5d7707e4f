import type { RangeProblem } from './field.ts';
import { sayLength, sayMass, sayNumber, sayPressure, sayTemperature } from './measure-words.ts';
import type { Problem } from './problem.ts';
import type { Units } from './units.ts';

/** What is wrong with a field; a figure out of its range and the range itself in the units given, as the end of the field's name tells. */
export function wrongInWords(field: string, found: Problem, units?: Units): string {
  if (!('range' in found)) return found.says;
  const { value, low, high, part } = (found as RangeProblem).range;
  const say = sayer(part ?? field, units);
  return `${say(value)} is outside ${say(low)} to ${say(high)}.`;
}

function sayer(field: string, units?: Units): (value: number) => string {
  if (/grams$/i.test(field)) return (value) => sayMass(value, units);
  if (field.endsWith('Mm')) return (value) => sayLength(value, units);
  if (field.endsWith('Kpa')) return (value) => sayPressure(value, units);
  if (field.endsWith('C')) return (value) => sayTemperature(value, units);
  return (value) => sayNumber(value, 3);
}

/** The name of the field a form shows it beside: “injection.waxC” for a part of a group. */
export function fieldOf(field: string, found: Problem): string {
  const part = 'range' in found ? (found as RangeProblem).range.part : undefined;
  return part === undefined ? field : `${field}.${part}`;
}
