import { expect, test } from 'vitest';
import { beside, formProblem, stillWrong } from '../../src/domain/form-problem.ts';
import { type Problem, problem } from '../../src/domain/problem.ts';
import { unconfirmed } from '../../src/domain/warning.ts';

test('what is wrong with several fields alike is said once, and stands beside each of them', () => {
  const wrong = '“7x” is not a number.';
  const found = formProblem({ hold: wrong, pressure: wrong, name: 'Give it a name.' });
  expect(found.says).toBe('“7x” is not a number. Give it a name.');
  expect(['hold', 'pressure', 'name', 'size'].map((field) => beside(found, field))).toEqual([wrong, wrong, 'Give it a name.', undefined]);
});

test('what is said of a field goes when the field, or a part of it, is changed; what is said of others stays', () => {
  const found = formProblem({ shots: 'A run has at least one shot.', injection: 'That is too hot.', on: 'That day has not come yet.' });
  const held = { shots: 0, 'injection.waxC': '900', on: '2030-01-01', note: '' };
  expect(stillWrong(found, held, { ...held })).toBe(found);
  expect(stillWrong(found, held, { ...held, note: 'pot low' })).toBe(found);
  expect(stillWrong(found, held, { ...held, shots: 5 })).toMatchObject({
    says: 'That is too hot. That day has not come yet.',
    kept: found.kept,
    fields: { injection: 'That is too hot.', on: 'That day has not come yet.' },
  });
  expect(stillWrong(found, held, { shots: 5, 'injection.waxC': '90', on: '', note: '' })).toBeUndefined();
});

test('a warning was of the form as it was; what is about no field stays', () => {
  const warning = unconfirmed(['This mould was marked failed.'], false) as Problem;
  expect(stillWrong(warning, { shots: 1 }, { shots: 1 })).toBe(warning);
  expect(stillWrong(warning, { shots: 1 }, { shots: 2 })).toBeUndefined();
  const gone = problem('This mould is no longer recorded.');
  expect(stillWrong(gone, { shots: 1 }, { shots: 2 })).toBe(gone);
});
