import { describe, expect, test } from 'vitest';
import type { EntryOf } from '../../../src/domain/entry.ts';
import { foldAll } from '../../../src/domain/fold.ts';
import type { FormProblem } from '../../../src/domain/form-problem.ts';
import { parseCode } from '../../../src/domain/label.ts';
import { type AddCabinet, planAddCabinet } from '../../../src/domain/plans/add-cabinet.ts';
import { isProblem } from '../../../src/domain/problem.ts';
import { isWarning } from '../../../src/domain/warning.ts';
import { frontsOf } from '../../../src/views/fronts.ts';
import { aDesk, aPlace, aShelf, nextId } from '../../support/builders.ts';

const command: AddCabinet = { name: 'Map chest', rows: 3, columns: 2, widthMm: 900, heightMm: 600 };

function planned(changes: Partial<AddCabinet> = {}) {
  const entries = planAddCabinet(aShelf(), aDesk(), { ...command, ...changes });
  if (isProblem(entries)) throw new Error(entries.says);
  return entries as readonly EntryOf<'recorded'>[];
}

test('one action records the cabinet and its drawers, each labelled, coded and in its place on the front', () => {
  const entries = planned();
  const [cabinet, ...drawers] = entries;
  expect(cabinet?.fields).toMatchObject({ name: 'Map chest', kind: 'cabinet', widthMm: 900, heightMm: 600 });
  expect(drawers.map(({ fields }) => (fields as { label?: string }).label)).toEqual(['A1', 'A2', 'A3', 'B1', 'B2', 'B3']);
  expect(drawers.every(({ step }) => step === cabinet?.id)).toBe(true);
  expect(new Set(entries.map(({ fields }) => parseCode(fields.code))).size).toBe(7);
  expect(drawers.at(-1)?.fields).toMatchObject({ box: { x: 453, y: 398, w: 429, h: 184 }, in: cabinet?.id });
});

test('the drawers do not cover each other and stay on the front', () => {
  const fronts = frontsOf(foldAll(planned({ rows: 7, columns: 5 })), new Map()).cabinets[0]?.fronts ?? [];
  expect(fronts).toHaveLength(35);
  for (const { rect: a, id } of fronts) {
    expect(a.x >= 0 && a.y >= 0 && a.x + a.w <= 900 && a.y + a.h <= 600).toBe(true);
    const covering = fronts.filter(
      ({ rect: b, id: other }) => id !== other && a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h,
    );
    expect(covering).toEqual([]);
  }
});

test('drawers of a single column are numbered, a 27th column goes on with AA', () => {
  expect(planned({ columns: 1 }).map(({ fields }) => (fields as { label?: string }).label)).toEqual([undefined, '1', '2', '3']);
  expect(planned({ columns: 27, rows: 1 }).at(-1)?.fields).toMatchObject({ label: 'AA1' });
});

describe('is refused, beside the field it is about,', () => {
  test.each([
    [{ name: '  ' }, 'name'],
    [{ rows: 0 }, 'rows'],
    [{ rows: 2.5 }, 'rows'],
    [{ columns: 101 }, 'columns'],
    [{ rows: 50, columns: 50 }, 'rows'],
    [{ widthMm: Number.NaN }, 'widthMm'],
    [{ widthMm: -900 }, 'widthMm'],
    [{ heightMm: 30_000 }, 'heightMm'],
    [{ heightMm: 80, rows: 10 }, 'heightMm'],
    [{ in: nextId() }, 'in'],
  ] as const)('with %j', (changes, field) => {
    const found = planAddCabinet(aShelf(), aDesk(), { ...command, ...changes } as AddCabinet);
    expect(isProblem(found) && Object.keys((found as FormProblem).fields ?? {})).toContain(field);
  });
});

test('a second cabinet of the same name is asked about first', () => {
  const shelf = aShelf([aPlace({ kind: 'cabinet', name: 'map CHEST' })]);
  expect(isWarning(planAddCabinet(shelf, aDesk(), command))).toBe(true);
  expect(isProblem(planAddCabinet(shelf, aDesk(), { ...command, confirmed: true }))).toBe(false);
});
