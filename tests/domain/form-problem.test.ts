import { expect, test } from 'vitest';
import { beside, formProblem } from '../../src/domain/form-problem.ts';

test('what is wrong with several fields alike is said once, and stands beside each of them', () => {
  const wrong = '“7x” is not a number.';
  const found = formProblem({ hold: wrong, pressure: wrong, name: 'Give it a name.' });
  expect(found.says).toBe('“7x” is not a number. Give it a name.');
  expect(['hold', 'pressure', 'name', 'size'].map((field) => beside(found, field))).toEqual([wrong, wrong, 'Give it a name.', undefined]);
});
