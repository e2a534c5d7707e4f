import { describe, expect, it } from 'vitest';
import { clearable, flag, listOf, number, oneOf, recordOf, sha256, shape, text, whole } from '../../src/domain/field.ts';
import { isProblem } from '../../src/domain/problem.ts';

const hostile: unknown[] = [
  undefined,
  null,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  -1,
  1e308,
  2 ** 53,
  '',
  [],
  {},
  { toString: 1, valueOf: 1 },
  Symbol('x'),
  () => 1,
  10n,
  true,
];
const CHECKS = {
  text: text(5),
  number: number(0, 10),
  whole: whole(0, 10),
  oneOf: oneOf(['a', 'b']),
  listOf: listOf(whole(0, 3), 2),
  recordOf: recordOf(['a', 'b'], whole(0, 3)),
  shape: shape({ a: whole(0, 3), b: text(3) }, ['a']),
  sha256,
  flag,
};

describe('a field’s check', () => {
  it.each([
    ['text', 'abcde', 'abcde'],
    ['text', '  a\u0000b\u001b\u007f \n', 'ab'],
    ['text', 'a\tb\nc', 'a\tb\nc'],
    ['text', '<b>', '<b>'],
    ['number', 0.5, 0.5],
    ['number', 10, 10],
    ['number', -0, 0],
    ['whole', 0, 0],
    ['whole', 10, 10],
    ['oneOf', 'b', 'b'],
    ['listOf', [], []],
    ['listOf', [3, 0], [3, 0]],
    ['recordOf', {}, {}],
    ['recordOf', { b: 2 }, { b: 2 }],
    ['shape', { a: 1 }, { a: 1 }],
    ['shape', { a: 1, b: ' x ' }, { a: 1, b: 'x' }],
    ['flag', false, false],
    ['sha256', 'a0'.repeat(32), 'a0'.repeat(32)],
  ] as const)('%s takes %j', (name, raw, value) => {
    expect(CHECKS[name](raw)).toStrictEqual(value);
  });

  it.each([
    ['text', 'abcdef'],
    ['text', ' \n\u0000 '],
    ['number', 10.0001],
    ['number', '5'],
    ['whole', 0.5],
    ['whole', 11],
    ['oneOf', 'c'],
    ['oneOf', 'toString'],
    ['listOf', [1, 2, 3]],
    ['listOf', [4]],
    ['listOf', { length: 1, 0: 1 }],
    ['recordOf', { c: 1 }],
    ['recordOf', { a: 4 }],
    ['recordOf', [1]],
    ['recordOf', JSON.parse('{"__proto__":1}')],
    ['shape', {}],
    ['shape', { a: 1, c: 1 }],
    ['shape', { a: 1, b: '' }],
    ['shape', [1]],
    ['shape', JSON.parse('{"a":1,"__proto__":{"b":"x"}}')],
    ['shape', { a: 1, constructor: 'x' }],
    ['flag', 'true'],
    ['sha256', 'A0'.repeat(32)],
    ['sha256', '0'.repeat(63)],
  ] as const)('%s refuses %j', (name, raw) => {
    expect(isProblem(CHECKS[name](raw))).toBe(true);
  });

  it.each(Object.entries(CHECKS))('%s answers anything at all, and never throws', (name, check) => {
    const taken = hostile.filter((raw) => !isProblem(check(raw)));
    const allowed: Record<string, unknown[]> = { listOf: [[]], recordOf: [{}], flag: [true] };
    expect(taken).toEqual(allowed[name] ?? []);
  });

  it('names the field that is wrong, and quotes no more than a line of it', () => {
    const answer = CHECKS.shape({ a: 1, b: 'x'.repeat(100_000) });
    expect(isProblem(answer) && answer.says).toBe('b: That is 100000 characters; 3 fit here.');
    const long = CHECKS.oneOf('y'.repeat(100_000));
    expect(isProblem(long) && long.says.length).toBeLessThan(100);
  });

  it('of a correction may clear a field with null', () => {
    const check = clearable({ a: whole(0, 3) });
    expect(check({ a: null })).toEqual({ a: null });
    expect(isProblem(check({ b: null }))).toBe(true);
    expect(isProblem(CHECKS.shape({ a: null }))).toBe(true);
  });
});
