import { expect, test } from 'vitest';
import { isProblem } from '../../src/domain/problem.ts';
import { parseTypedNumber } from '../../src/domain/typed-number.ts';

test.each([
  ['12', 12],
  [' 1 234,5 ', 1234.5],
  ['.5', 0.5],
  ['7.', 7],
  ['−3', -3],
  ['', undefined],
  ['   ', undefined],
])('“%s” is read as %s', (typed, number) => {
  expect(parseTypedNumber(typed)).toBe(number);
});

test.each([
  ['2,500', '2500, or 2.500'],
  ['−12,345', '-12345, or -12.345'],
])('“%s” is asked about', (typed, ways) => {
  const read = parseTypedNumber(typed);
  expect(isProblem(read) && read.says).toBe(`“${typed}” can be read in two ways. Write ${ways}.`);
});

test.each([
  ['0,125', 0.125],
  ['2.500', 2.5],
  ['1234,500', 1234.5],
  ['2,50', 2.5],
])('“%s” is read as %s, with three decimals and without', (typed, number) => {
  expect(parseTypedNumber(typed)).toBe(number);
});

test.each(['1e9', '1,2,3', '0x10', 'Infinity', '--2', '12 g', '<b>1</b>', '9'.repeat(400)])('“%s” is no number', (typed) => {
  expect(isProblem(parseTypedNumber(typed))).toBe(true);
});
