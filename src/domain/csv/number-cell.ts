import { problem } from '../problem.ts';
import { type ReadCell, type Reading, shownCell, type Ways } from './reading.ts';
import { asIs, conversion, ozt, type Quantity } from './unit-words.ts';

const FIGURE = /^([+\-−]?)\s*(\d[\d.,'’\s\u00a0\u202f]*)\s*([a-z°"]*)\.?$/i;
const ABOUT = /^(?:~|≈|ca\.?|circa|c\.|about|approx\.?|around)\s*/i;

/** No injector works with less: a smaller figure without a unit is in another one (common practice, no source). */
const UNNAMED_KPA_LEAST = 20;

/** A figure with or without its unit, in the list's way of writing decimals. Doubt is said; below nothing is a Problem unless °C or an order. */
export function numberCell(quantity: Quantity): ReadCell {
  return (cell, ways) => {
    const about = ABOUT.test(cell.trim());
    const found = FIGURE.exec(ozt(cell).trim().replace(ABOUT, ''));
    if (!found) return { doubt: `${shownCell(cell)} is not a number.` };
    const [, sign = '', digits = '', unit = ''] = found;
    const figure = figureOf(digits, ways.decimal, quantity === 'count');
    if (figure === undefined) return { doubt: `${shownCell(cell)} is not a number.` };
    const written = unit === '' && ways.unit !== undefined && conversion(quantity, ways.unit) ? ways.unit : unit;
    const convert = conversion(quantity, written);
    if (!convert) return { doubt: `The unit in ${shownCell(cell)} is not known here.` };
    const signed = sign === '' || sign === '+' ? figure.value : -figure.value;
    // “-0” is nought: minus nought would come back from the journal as another figure.
    const value = (convert === asIs ? signed : round(convert(signed))) + 0;
    if (value < 0 && quantity !== 'celsius' && quantity !== 'order') return problem(`${shownCell(cell)} is less than nothing.`);
    if (quantity === 'count' && !Number.isInteger(value)) return problem(`${shownCell(cell)} is not a whole number.`);
    if (quantity === 'kpa' && written === '' && value > 0 && value < UNNAMED_KPA_LEAST)
      return {
        doubt: `${shownCell(cell)} has no unit and is too little for kPa: perhaps bar or psi. Write the unit in the heading; it is left out.`,
      };
    const doubt = about
      ? `${shownCell(cell)} is taken as ${value}.`
      : figure.isDoubtful
        ? `${shownCell(cell)} is read as ${value}.`
        : undefined;
    return doubt ? { value, doubt } : { value };
  };
}

/** Two figures, “18–26 °C”, into the two fields named. */
export function rangeCell(quantity: Quantity, low: string, high: string): ReadCell {
  const one = numberCell(quantity);
  return (cell, ways): Reading => {
    const parts = /^\s*([+−-]?\s*[\d.,]+)\s*[a-z°]*\s*(?:-|–|—|\.\.+|…|to|bis|\/)\s*([+−-]?\s*[\d.,]+\s*[a-z°]*)\s*$/i.exec(cell);
    if (!parts) return { doubt: `${shownCell(cell)} is not a range like 18–26.` };
    const unit = /[a-z°]+$/i.exec(parts[2]?.trim() ?? '')?.[0] ?? '';
    const from = one(`${parts[1]} ${unit}`, ways) as { value?: number; says?: string };
    const to = one(parts[2] ?? '', ways) as { value?: number; says?: string };
    if (from.value === undefined || to.value === undefined) return { doubt: `${shownCell(cell)} is not a range like 18–26.` };
    if (from.value > to.value) return problem(`${shownCell(cell)} runs from more to less.`);
    return { value: { [low]: from.value, [high]: to.value } };
  };
}

function round(value: number): number {
  return Math.round(value * 1e4) / 1e4;
}

function figureOf(raw: string, decimal: Ways['decimal'], isCount: boolean): { value: number; isDoubtful?: boolean } | undefined {
  const digits = raw.replace(/['’\s\u00a0\u202f]/g, '');
  const lastComma = digits.lastIndexOf(',');
  const lastPoint = digits.lastIndexOf('.');
  if (lastComma < 0 && lastPoint < 0) return finite(digits);
  if (lastComma >= 0 && lastPoint >= 0) {
    const [mark, group] = lastComma > lastPoint ? [',', '.'] : ['.', ','];
    return finite(digits.replaceAll(group, '').replace(mark, '.'));
  }
  const mark = lastComma >= 0 ? ',' : '.';
  const parts = digits.split(mark);
  if (parts.length > 2) return parts.slice(1).every((part) => part.length === 3) ? finite(parts.join('')) : undefined;
  const [before = '', after = ''] = parts;
  // “1,234”: a thousand or one and a bit. The rest of the list tells, or the reader is asked to look.
  if (after.length === 3 && before.length <= 3 && !before.startsWith('0')) {
    const isGroup = decimal === undefined ? isCount : decimal !== mark;
    const value = finite(isGroup ? before + after : `${before}.${after}`);
    return value && decimal === undefined && !isCount ? { ...value, isDoubtful: true } : value;
  }
  return finite(`${before}.${after}`);
}

function finite(text: string): { value: number } | undefined {
  const value = Number(text);
  return Number.isFinite(value) ? { value } : undefined;
}

/** The decimal mark that the clear figures among the cells show; undefined when they show none, or both. */
export function decimalMarkOf(cells: Iterable<string>): ',' | '.' | undefined {
  let commas = 0;
  let points = 0;
  for (const cell of cells) {
    if (!/\d[.,]\d/.test(cell)) continue;
    if (/^\s*[+−-]?(?:\d{1,3}(?:\.\d{3})+|\d+),(?:\d{1,2}|\d{4,})\s*[a-z°"]*\s*$/i.test(cell) || /^\s*0,\d+/.test(cell)) commas += 1;
    else if (/^\s*[+−-]?(?:\d{1,3}(?:,\d{3})+|\d+)\.(?:\d{1,2}|\d{4,})\s*[a-z°"]*\s*$/i.test(cell) || /^\s*0\.\d+/.test(cell)) points += 1;
  }
  if (commas > 0 && points === 0) return ',';
  return points > 0 && commas === 0 ? '.' : undefined;
}
