import type { Day } from '../../src/domain/brand.ts';
import { CLOCK_ZERO, clockOf } from '../../src/domain/clock.ts';
import { guessColumns } from '../../src/domain/csv/guess.ts';
import { type Known, knownOf } from '../../src/domain/csv/known.ts';
import type { ImportPlan, Reading } from '../../src/domain/csv/plan.ts';
import { planEntries } from '../../src/domain/csv/plan-entries.ts';
import { planSteps } from '../../src/domain/csv/plan-import.ts';
import { readTable, type Table } from '../../src/domain/csv/table.ts';
import type { Target } from '../../src/domain/csv/targets.ts';
import { type Desk, makeDesk } from '../../src/domain/desk.ts';
import type { Entry } from '../../src/domain/entry.ts';
import { isProblem } from '../../src/domain/problem.ts';
import { EMPTY_SHELF, type Shelf } from '../../src/domain/shelf.ts';
import { chance } from './chance.ts';

export const IMPORT_DAY = '2026-11-25' as Day;

export function importDesk(shelf: Shelf, seed = 7): Desk {
  const random = chance(seed);
  return makeDesk({
    today: IMPORT_DAY,
    nowMs: 1_795_000_000_000,
    clock: shelf.last === '' ? CLOCK_ZERO : clockOf(shelf.last),
    device: 'QWERTY',
    bytes: (count) => Uint8Array.from({ length: count }, () => random() * 256),
    isTaken: () => false,
  });
}

/** The table of a list that can be read. */
export function tableOf(text: string): Table {
  const table = readTable(text);
  if (isProblem(table)) throw new Error(table.says);
  return table;
}

/** The plan of a list, worked through in one go. */
export function planImport(known: Known, table: Table, reading: Reading, today: Day): ImportPlan {
  const steps = planSteps(known, table, reading, today);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** The plan of a list whose columns are as guessed. */
export function planOf(text: string, target: Target, shelf: Shelf = EMPTY_SHELF): ImportPlan {
  const table = tableOf(text);
  const mapping = guessColumns(table.rows[0]?.cells ?? [], target);
  return planImport(knownOf(shelf), table, { target, mapping, hasHeadings: true }, IMPORT_DAY);
}

export function entriesOfPlan(plan: ImportPlan, shelf: Shelf = EMPTY_SHELF, flipped: readonly number[] = []): readonly Entry[] {
  return planEntries(importDesk(shelf), plan, new Set(flipped));
}
