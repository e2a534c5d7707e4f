import type { Year } from '../domain/brand.ts';
import { formProblem } from '../domain/form-problem.ts';
import { isProblem, type Problem } from '../domain/problem.ts';
import { parseTypedNumber } from '../domain/typed-number.ts';
import { celsiusFrom, gramsFrom, kpaFrom, lengthIn, massIn, mmFrom, pressureIn, temperatureIn, type Units } from '../domain/units.ts';
import { parseYear, yearInWords } from '../domain/year.ts';
import type { Editor, Quantity } from './form-editor.ts';

/** A form as typed: every field as text; lists hold one choice to a line. */
export type Typed = Readonly<Record<string, string>>;
type Read = string | number | boolean | readonly unknown[] | undefined | Problem;

export function unitOf(quantity: Quantity, units: Units): string | undefined {
  if (quantity === 'plain') return undefined;
  return quantity === 'seconds' ? 's' : quantity === 'days' ? 'days' : units[quantity];
}

function shown(value: number, quantity: Quantity, units: Units): number {
  switch (quantity) {
    case 'mass':
      return massIn(value, units.mass);
    case 'length':
      return lengthIn(value, units.length);
    case 'temperature':
      return temperatureIn(value, units.temperature);
    case 'pressure':
      return pressureIn(value, units.pressure);
    default:
      return value;
  }
}

function kept(value: number, quantity: Quantity, units: Units): number {
  switch (quantity) {
    case 'mass':
      return gramsFrom(value, units.mass);
    case 'length':
      return mmFrom(value, units.length);
    case 'temperature':
      return celsiusFrom(value, units.temperature);
    case 'pressure':
      return kpaFrom(value, units.pressure);
    default:
      return value;
  }
}

const rounded = (value: number) => Math.round(value * 1000) / 1000;

/** What a field holds, as text for the form. */
function typedOf(editor: Editor, value: unknown, units: Units): string {
  if (value === undefined || value === null) return '';
  switch (editor.as) {
    case 'figure':
      return String(rounded(shown(Number(value), editor.quantity, units)));
    case 'year':
      return yearInWords(value as Year);
    case 'yes':
      return value === true ? 'yes' : '';
    case 'many':
    case 'refs':
      return (value as readonly string[]).join('\n');
    case 'sizes':
      return (value as readonly { label: string; mm?: number }[])
        .map(({ label, mm }) => (mm === undefined ? label : `${label}; ${rounded(shown(mm, 'length', units))}`))
        .join('\n');
    default:
      return String(value);
  }
}

/** What was typed, as the field's check expects it; undefined when it is empty. */
function readTyped(editor: Editor, typed: string, units: Units): Read {
  const clean = typed.trim();
  if (clean === '') return undefined;
  switch (editor.as) {
    case 'figure': {
      const number = parseTypedNumber(clean);
      return typeof number === 'number' ? rounded(kept(number, editor.quantity, units)) : number;
    }
    case 'year':
      return parseYear(clean);
    case 'yes':
      return clean === 'yes';
    case 'many':
    case 'refs':
      return clean.split('\n');
    case 'sizes':
      return readSizes(clean, units);
    default:
      return clean;
  }
}

/** One size to a line: its label, and perhaps its length behind a semicolon. */
function readSizes(clean: string, units: Units): readonly unknown[] | Problem {
  const read: unknown[] = [];
  for (const line of clean.split('\n').filter((each) => each.trim() !== '')) {
    const [label = '', length = ''] = line.split(';').map((part) => part.trim());
    const mm = parseTypedNumber(length);
    if (isProblem(mm)) return mm;
    read.push(mm === undefined ? { label } : { label, mm: rounded(mmFrom(mm, units.length)) });
  }
  return read;
}

/** A thing's fields as a form. */
export function typedFields(editors: readonly Editor[], fields: Readonly<Record<string, unknown>>, units: Units): Typed {
  return Object.fromEntries(editors.map((editor) => [editor.field, typedOf(editor, partOf(fields, editor.field), units)]));
}

function partOf(fields: Readonly<Record<string, unknown>>, name: string): unknown {
  const [group = '', part] = name.split('.');
  return part === undefined ? fields[group] : (fields[group] as Readonly<Record<string, unknown>> | undefined)?.[part];
}

/**
 * The fields that differ from how the form began, as a record or a correction takes them; emptied ones are `null`. Untouched figures are
 * left alone, so that showing them in other units changes nothing.
 */
export function changedFields(
  editors: readonly Editor[],
  typed: Typed,
  begun: Typed,
  units: Units,
): Readonly<Record<string, unknown>> | Problem {
  const wrong: Record<string, string> = {};
  const fields: Record<string, unknown> = {};
  const groups = new Set<string>();
  for (const editor of editors) {
    const [group = '', part] = editor.field.split('.');
    const now = typed[editor.field] ?? '';
    if (now.trim() === (begun[editor.field] ?? '').trim()) continue;
    if (part !== undefined) {
      groups.add(group);
      continue;
    }
    const read = readTyped(editor, now, units);
    if (isProblem(read)) wrong[editor.field] = read.says;
    else fields[editor.field] = read ?? null;
  }
  for (const group of groups) {
    const whole: Record<string, unknown> = {};
    for (const editor of editors.filter((each) => each.field.startsWith(`${group}.`))) {
      const read = readTyped(editor, typed[editor.field] ?? '', units);
      if (isProblem(read)) wrong[editor.field] = read.says;
      else if (read !== undefined) whole[editor.field.slice(group.length + 1)] = read;
    }
    fields[group] = Object.keys(whole).length > 0 ? whole : null;
  }
  return Object.keys(wrong).length > 0 ? formProblem(wrong) : fields;
}
