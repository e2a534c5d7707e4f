import type { Day } from '../brand.ts';
import { addDays, parseDay } from '../day.ts';
import { isProblem, problem } from '../problem.ts';
import { type Reading, shownCell, type Ways } from './reading.ts';

const MONTH_NAMES = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
const NUMBERS = /^(\d{1,2})\s*[./-]\s*(\d{1,2})\s*[./-]\s*(\d{4}|\d{2})\.?(?:[ T]+[\d:.]+\w*)?$/;
const ISO = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:[ T][\d:.+Zz-]*)?$/;
/** Day 0 of spreadsheets' serial days; it is the 30th because they count a 29 February 1900 (widely documented, from memory). */
const SERIAL_ZERO = '1899-12-30' as Day;

const LIKELY_FROM = '1900';
/** A master may be some hundred years old and its day known. */
const YEAR_LEAST = 1000;

/** A day in ISO form, d.m.y or d/m/y, with a month's name, or a spreadsheet's serial number. What was assumed is said. */
export function dayCell(raw: string, ways: Ways): Reading {
  const cell = raw.trim();
  const iso = ISO.exec(cell);
  if (iso) return dayOf(cell, ways, iso[1], iso[2], iso[3]);
  const numbers = NUMBERS.exec(cell);
  if (numbers) return numbersDay(cell, ways, Number(numbers[1]), Number(numbers[2]), fullYear(numbers[3] ?? '', ways.today));
  const named = /^(?:(\d{1,2})(?:st|nd|rd|th)?[\s.-]+)?([a-z]{3,9})\.?[\s,-]+(?:(\d{1,2})(?:st|nd|rd|th)?,?\s+)?'?(\d{4}|\d{2})$/i.exec(
    cell,
  );
  if (named) {
    const month = MONTH_NAMES.indexOf((named[2] ?? '').slice(0, 3).toLowerCase()) + 1;
    if (month === 0) return { doubt: `${shownCell(raw)} is not a day.` };
    const day = named[1] ?? named[3];
    return dayOf(cell, ways, fullYear(named[4] ?? '', ways.today), month, day ?? 1, day === undefined);
  }
  if (/^(?:1[6-9]|20)\d\d$/.test(cell)) return dayOf(cell, ways, cell, 1, 1, true);
  if (/^\d{5}(?:[.,]\d+)?$/.test(cell))
    return {
      value: addDays(SERIAL_ZERO, Math.floor(Number(cell.replace(',', '.')))),
      doubt: `${shownCell(raw)} is read as a spreadsheet’s day number.`,
    };
  return { doubt: `${shownCell(raw)} is not a day.` };
}

function numbersDay(cell: string, ways: Ways, a: number, b: number, year: number): Reading {
  if (a > 12 || b > 12 || a === b || ways.dayOrder) {
    const monthFirst = b > 12 || (a <= 12 && ways.dayOrder === 'month first');
    return dayOf(cell, ways, year, monthFirst ? a : b, monthFirst ? b : a);
  }
  // Points are written between day, month and year only.
  if (cell.includes('.')) return dayOf(cell, ways, year, b, a);
  const read = dayOf(cell, ways, year, b, a);
  return isProblem(read) ? read : { ...read, doubt: `${shownCell(cell)} is read with the day first.` };
}

function dayOf(cell: string, ways: Ways, year: unknown, month: unknown, day: unknown, isPart = false): Reading {
  const pad = (value: unknown, width: number) => String(Number(value)).padStart(width, '0');
  const value = parseDay(`${pad(year, 4)}-${pad(month, 2)}-${pad(day, 2)}`);
  if (isProblem(value)) return problem(`${shownCell(cell)} is a day that does not exist.`);
  if (value < LIKELY_FROM) return longAgo(cell, value);
  if (value > ways.today) return { value, doubt: `${shownCell(cell)} has not come yet.` };
  return isPart ? { value, doubt: `${shownCell(cell)} is taken as ${value}.` } : { value };
}

/** Nobody at work now did it; a year without its century or with a slip of a digit is left out. */
function longAgo(cell: string, value: Day): Reading {
  const year = Number(value.slice(0, 4));
  if (year < YEAR_LEAST) return { doubt: `${shownCell(cell)} would be in the year ${year}; it is left out.` };
  return { value, doubt: `${shownCell(cell)} is more than a hundred years ago.` };
}

function fullYear(text: string, today: Day): number {
  const year = Number(text);
  if (text.length > 2) return year;
  const century = Math.floor(Number(today.slice(0, 4)) / 100) * 100;
  return century + year > Number(today.slice(0, 4)) ? century - 100 + year : century + year;
}

/** Whether days written in numbers have the day or the month first, where one of the cells shows it and none denies it. */
export function dayOrderOf(cells: Iterable<string>): Ways['dayOrder'] {
  let dayFirst = false;
  let monthFirst = false;
  for (const cell of cells) {
    const numbers = NUMBERS.exec(cell.trim());
    if (!numbers) continue;
    const [a, b] = [Number(numbers[1]), Number(numbers[2])];
    if (a > 12 && b <= 12) dayFirst = true;
    if (b > 12 && a <= 12) monthFirst = true;
  }
  if (dayFirst === monthFirst) return undefined;
  return dayFirst ? 'day first' : 'month first';
}
