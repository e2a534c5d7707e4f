import { expect, test } from 'vitest';
import { beside } from '../../src/domain/form-problem.ts';
import { planCorrect } from '../../src/domain/plans/correct.ts';
import { planLogRun } from '../../src/domain/plans/log-run.ts';
import type { Problem } from '../../src/domain/problem.ts';
import { aDesk, aMould, aShelf, aWax } from '../support/builders.ts';

const units = { mass: 'oz t', length: 'in', temperature: '°F', pressure: 'bar' } as const;
const wax = aWax();
const mould = aMould();
const shelf = aShelf([wax, mould]);
const wrong = (of: typeof wax.id | typeof mould.id, fields: object) =>
  planCorrect(shelf, aDesk(), { of, fields: { ...fields }, units }) as Problem;

test('a figure out of its range is told in the units it was typed in, beside its field', () => {
  expect(beside(wrong(wax.id, { injectHighC: 400 }), 'injectHighC')).toBe('752 °F is outside 68 °F to 302 °F.');
  expect(beside(wrong(wax.id, { pressureLowKpa: 2500 }), 'pressureLowKpa')).toBe('25 bar is outside 0 bar to 10 bar.');
  expect(beside(wrong(mould.id, { shotGrams: 311_034.768 }), 'shotGrams')).toMatch(/^10\u202f000 oz t is outside 0 oz t to /);
  expect(beside(wrong(mould.id, { injection: { waxC: 200 } }), 'injection.waxC')).toBe('392 °F is outside 68 °F to 302 °F.');
  expect(beside(wrong(mould.id, { cavities: 0 }), 'cavities')).toBe('0 is outside 1 to 500.');
});

test('so is one of a run', () => {
  const run = planLogRun(shelf, aDesk(), { mould: mould.id, shots: 3, waxC: 10 as never, units }) as Problem;
  expect(beside(run, 'waxC')).toBe('50 °F is outside 68 °F to 302 °F.');
});
