import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { base32FromBytes, CROCKFORD, fromBase32, normaliseBase32, toBase32 } from '../../src/domain/crockford.ts';

describe('Crockford base 32', () => {
  // Values published with other implementations of Douglas Crockford's base 32 (their README files and tests):
  // 1234 → 16J, 42 → 1A, 32 → 10, 10⁹ → XSNJG0; the bytes "abc", padded with one zero bit, → C5H66.
  it.each([
    [1234, '16J'],
    [42, '1A'],
    [32, '10'],
    [1_000_000_000, 'XSNJG0'],
    [0x616263 * 2, 'C5H66'],
    [0, '0'],
    [31, 'Z'],
    [32768, '1000'],
    [123456789, '3NQK8N'],
  ])('writes %d as %s and reads it back', (value, text) => {
    expect(toBase32(value, text.length)).toBe(text);
    expect(fromBase32(text)).toBe(value);
  });

  it('has 32 characters in ASCII order and none of I, L, O, U', () => {
    expect(CROCKFORD).toHaveLength(32);
    expect([...CROCKFORD].sort().join('')).toBe(CROCKFORD);
    expect(CROCKFORD).not.toMatch(/[ILOU]/);
  });

  it('round-trips every whole number it can hold, padded, in sorting order', () => {
    const number = fc.integer({ min: 0, max: Number.MAX_SAFE_INTEGER });
    fc.assert(fc.property(number, (value) => fromBase32(toBase32(value, 11)) === value));
    fc.assert(fc.property(number, number, (a, b) => toBase32(a, 11) < toBase32(b, 11) === a < b));
  });

  it('refuses numbers it cannot write', () => {
    for (const value of [-1, 0.5, Number.NaN, 2 ** 53]) expect(() => toBase32(value, 11)).toThrow(RangeError);
    expect(() => toBase32(32, 1)).toThrow(RangeError);
    expect(fromBase32('1U')).toBeNaN();
    expect(fromBase32('1a')).toBeNaN();
  });

  it('draws every character equally often from all bytes', () => {
    const counts = new Map<string, number>();
    for (const character of base32FromBytes(Uint8Array.from({ length: 256 }, (_, i) => i))) {
      counts.set(character, (counts.get(character) ?? 0) + 1);
    }
    expect([...counts.keys()].sort().join('')).toBe(CROCKFORD);
    expect(new Set(counts.values())).toEqual(new Set([8]));
  });

  it('reads typing kindly: any case, O as 0, I and L as 1, gaps dropped', () => {
    expect(normaliseBase32(' m-o1 iL–x_y.z\t')).toBe('M0111XYZ');
  });
});
