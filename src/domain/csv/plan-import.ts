import type { Day } from '../brand.ts';
import { PlaceFinder } from './find-place.ts';
import type { Known } from './known.ts';
import { Matcher } from './matcher.ts';
import type { ImportPlan, Reading, RowPlan } from './plan.ts';
import { planRow } from './plan-row.ts';
import type { Planning } from './planning.ts';
import { Register } from './register.ts';
import { mappedColumns, readCells } from './row-cells.ts';
import type { Table } from './table.ts';

/** Rows planned between two words about how far it is. */
const STRIDE = 100;

/** Plans a list row by row, yielding how many rows are done; the last value is the plan. */
export function* planSteps(known: Known, table: Table, reading: Reading, today: Day): Generator<number, ImportPlan> {
  const register = new Register(known);
  const planning: Planning = {
    target: reading.target,
    register,
    places: new PlaceFinder(register),
    matcher: new Matcher(known, reading.target),
    codes: new Map(),
    byId: new Map(Object.values(known.things).flatMap((things) => things.map((thing) => [thing.id, thing]))),
  };
  const columns = mappedColumns(table, reading, today);
  const headings = reading.hasHeadings ? (table.rows[0]?.cells ?? []) : [];
  const rows: RowPlan[] = [];
  for (const row of reading.hasHeadings ? table.rows.slice(1) : table.rows) {
    rows.push(planRow(planning, row, readCells(row, columns, reading.target)));
    if (rows.length % STRIDE === 0) yield rows.length;
  }
  return { last: known.last, target: reading.target, headings, rows, drafts: register.drafts };
}
