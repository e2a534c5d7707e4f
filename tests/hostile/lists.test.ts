import { describe, expect, test } from 'vitest';
import { guessColumns, guessTarget } from '../../src/domain/csv/guess.ts';
import { knownOf } from '../../src/domain/csv/known.ts';
import { isNothing, type Ways } from '../../src/domain/csv/reading.ts';
import { readTable } from '../../src/domain/csv/table.ts';
import { columnsOf, TARGETS } from '../../src/domain/csv/targets.ts';
import { writeTable } from '../../src/domain/csv/write.ts';
import { foldAll } from '../../src/domain/fold.ts';
import { parseEntry } from '../../src/domain/parse-entry.ts';
import { isProblem } from '../../src/domain/problem.ts';
import { LONG_MS, SLOW_DRAWS } from '../support/amount.ts';
import { codeOf } from '../support/builders.ts';
import { forDraws } from '../support/draws.ts';
import { aJournal } from '../support/entry-builders.ts';
import { entriesOfPlan, IMPORT_DAY, planImport } from '../support/import.ts';

const LISTS = [
  'Name,Place,Made on,Shots,Note\r\nOwl,A1,2024-02-29,12,"torn, ""once"""\r\nRam,A2,1.3.2023,"1,200",\r\n',
  'sep=;\nMould no;Design;Size;Rubber;Wax a shot\nM1;Dolphin;S;silicone;4,2 g\nM2;Dolphin;L;natural;0,5 oz\n',
  'Wax\tStock\tRoom range\tPressure\nGreen\t1,5 kg\t18–26 °C\thigh\nRed\t900\t64-79 F\tlow\n',
  'Mould no,Design,Wax temp,Pressure (bar),Hold\nM3,Hare,72,"0,6",8\nM4,Hare,160 F,12 psi,2 min\n',
  '\ufeffPeriod,Drawer,Sizes\n"480–50 BC","Cabinet A › A3","S 18 mm; M; L 24mm"\n',
];

test(
  'a list of anything is read as rows as wide as the first, or refused; and its cells, written down, are read the same',
  () => {
    const look = (raw: string) => {
      const table = readTable(raw);
      if (isProblem(table)) return expect(table.says).not.toBe('');
      const width = table.rows[0]?.cells.length;
      const sound = table.rows.filter((row) => row.broken === undefined);
      for (const row of sound) expect(row.cells.length).toBe(width);
      // Line ends other than the rows' own, and a mark at the very start, are what a list cannot tell.
      const rows = sound
        .map((row) => row.cells.map((cell) => cell.replace(/[\r\ufeff]/g, '')))
        .filter((cells) => cells.some((cell) => cell.trim() !== ''));
      if (rows.length === 0) return;
      const again = readTable(writeTable(rows), ',');
      if (isProblem(again)) throw new Error(again.says);
      expect(again.rows.map((row) => row.cells)).toEqual(rows);
    };
    LISTS.forEach(look);
    forDraws((mutator) => mutator.text(LISTS), look);
  },
  LONG_MS,
);

const CELLS = [
  '2024-02-29',
  '3/4/23',
  'Mar 2021',
  '45231',
  '1.234,5 g',
  '12 dwt',
  '18–26 °C',
  '−4 °F',
  'S 18 mm; M; L',
  'silicone, tin',
  'good',
  'high',
  codeOf('mould', 3),
];
const WAYS: readonly Ways[] = [
  { today: IMPORT_DAY },
  { today: IMPORT_DAY, decimal: ',', dayOrder: 'month first', unit: 'oz' },
  { today: IMPORT_DAY, decimal: '.', dayOrder: 'day first', unit: 'f' },
];

describe.each(TARGETS)('a list of %ss', (target) => {
  test(
    'reads any cell of any column, or says what is odd about it',
    () => {
      const columns = Object.values(columnsOf(target));
      forDraws(
        (mutator) => ({ cell: mutator.text(CELLS), column: mutator.one(columns).label, ways: mutator.one(WAYS) }),
        ({ cell, column, ways }) => {
          if (isNothing(cell)) return;
          const read = columns.find(({ label }) => label === column)?.read(cell, ways);
          if (read === undefined) throw new Error(`no column ${column}`);
          if (isProblem(read)) expect(read.says).not.toBe('');
          // Marks alone say nothing that could be lost.
          else if (read.value === undefined) expect(read.doubt ?? '').toMatch(/[\p{L}\p{N}]/u.test(cell) ? /\S/ : /^/);
          else expect(JSON.parse(JSON.stringify(read.value))).toStrictEqual(read.value);
        },
      );
    },
    LONG_MS,
  );
});

test(
  'a list of anything, brought in as anything, makes only entries that would be taken anywhere, and that sum to a shelf',
  () => {
    const known = knownOf(foldAll(aJournal()));
    forDraws(
      (mutator) => ({ text: mutator.text(LISTS), target: mutator.one([undefined, ...TARGETS]), hasHeadings: mutator.below(4) > 0 }),
      ({ text, target: chosen, hasHeadings }) => {
        const table = readTable(text);
        if (isProblem(table)) return;
        const headings = table.rows[0]?.cells ?? [];
        const target = chosen ?? guessTarget(headings, TARGETS);
        const plan = planImport(known, table, { target, mapping: guessColumns(headings, target), hasHeadings }, IMPORT_DAY);
        expect(plan.rows.length).toBe(table.rows.length - (hasHeadings ? 1 : 0));
        const entries = entriesOfPlan(plan).map((entry) => parseEntry(JSON.parse(JSON.stringify(entry))));
        for (const entry of entries) if (isProblem(entry)) throw new Error(entry.says);
        foldAll(entries.flatMap((entry) => (isProblem(entry) ? [] : [entry])));
      },
      SLOW_DRAWS,
    );
  },
  LONG_MS,
);
