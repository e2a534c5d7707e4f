import { grams } from '../entry.ts';
import type { Check, Checks } from '../field.ts';
import { FIELDS } from '../fields.ts';
import { INJECTION_FIELDS } from '../mould.ts';
import { isProblem } from '../problem.ts';
import { wrongInWords } from '../range-words.ts';
import { dayCell, dayOrderOf } from './day-cell.ts';
import { decimalMarkOf } from './number-cell.ts';
import type { Reading as ListReading } from './plan.ts';
import { isNothing, shownCell, type Ways } from './reading.ts';
import type { Row, Table } from './table.ts';
import { type Column, columnsOf, type Target } from './targets.ts';
import { unitOfHeading } from './unit-words.ts';
import { unguarded } from './write.ts';

/** A row's cells read into checked fields, and into the parts that lead to other things. */
export interface RowCells {
  readonly fields: Record<string, unknown>;
  readonly parts: Readonly<Record<string, unknown>>;
  readonly doubts: string[];
  /** Words that could not be placed, to be kept as a note. */
  readonly left: readonly string[];
  /** Why the row cannot be taken at all. */
  readonly broken: readonly string[];
}

interface MappedColumn {
  readonly index: number;
  readonly name: string;
  readonly heading: string;
  readonly column: Column;
  readonly ways: Ways;
}

/** Parts that an entry takes as they are, beside the fields of the thing itself. */
const PART_CHECKS: Checks = { ...INJECTION_FIELDS, grams };

/** The mapped columns with what their headings and cells tell about how they are written. */
export function mappedColumns(table: Table, { target, mapping, hasHeadings }: ListReading, today: Ways['today']): readonly MappedColumn[] {
  const headings = hasHeadings ? (table.rows[0]?.cells ?? []) : [];
  const rows = hasHeadings ? table.rows.slice(1) : table.rows;
  const columns: Readonly<Record<string, Column>> = columnsOf(target);
  const wanted = mapping.flatMap((name, index) => {
    const column = name !== null && Object.hasOwn(columns, name) ? columns[name] : undefined;
    return column && name !== null ? [{ name, index, column, heading: headings[index]?.trim() ?? '' }] : [];
  });
  function* cells(indexes: readonly number[]) {
    for (const row of rows) for (const index of indexes) yield row.cells[index] ?? '';
  }
  const decimal = decimalMarkOf(cells(wanted.map(({ index }) => index))) ?? (table.delimiter === ';' ? ',' : undefined);
  return wanted.map((each) => ({
    ...each,
    ways: {
      today,
      decimal,
      dayOrder: each.column.read === dayCell ? dayOrderOf(cells([each.index])) : undefined,
      unit: unitOfHeading(each.heading),
    },
  }));
}

export function readCells(row: Row, columns: readonly MappedColumn[], target: Target): RowCells {
  const fields: Record<string, unknown> = {};
  const parts: Record<string, unknown> = {};
  const notes: string[] = [];
  const doubts: string[] = row.doubt === undefined ? [] : [row.doubt];
  const left: string[] = [];
  const broken: string[] = [];
  const checks = FIELDS[target] as Readonly<Record<string, Check<unknown>>>;
  const sound = (name: string, label: string, check: Check<unknown> | undefined, raw: unknown, cell: string) => {
    const value = check?.(raw);
    if (!isProblem(value)) return value;
    const says = wrongInWords(name, value);
    broken.push(`${label}: ${'range' in value ? `${shownCell(cell)} cannot be right: ` : ''}${says}`);
    return undefined;
  };
  const checked = (name: string, label: string, raw: unknown, cell: string) => {
    const value = sound(name, label, checks[name], raw, cell);
    if (value !== undefined) fields[name] = value;
  };
  for (const { index, name, heading, column, ways } of columns) {
    const raw = row.cells[index] ?? '';
    if (isNothing(raw)) continue;
    const cell = unguarded(raw).trim();
    if (name === 'note') {
      notes.push(notes.length === 0 || heading === '' ? cell : `${heading}: ${cell}`);
      continue;
    }
    const read = column.read(cell, ways);
    if (isProblem(read)) {
      broken.push(`${column.label}: ${read.says}`);
      continue;
    }
    if (read.doubt) doubts.push(`${column.label}: ${read.doubt}`);
    if (read.value === undefined) left.push(`${column.label}: ${cell}`);
    else if (column.is === 'part')
      parts[name] = PART_CHECKS[name] ? sound(name, column.label, PART_CHECKS[name], read.value, cell) : read.value;
    else if (column.is === 'field') checked(name, column.label, read.value, cell);
    else for (const [key, value] of Object.entries(read.value as object)) checked(key, column.label, value, cell);
    // A few of several words were known; the cell as it was written is kept too.
    if (read.value !== undefined && read.doubt?.includes('known here')) left.push(`${column.label}: ${cell}`);
  }
  const note = [...notes, ...left].join('\n');
  if (note !== '') checked('note', 'Note', note, note);
  return { fields, parts, doubts, left, broken };
}
