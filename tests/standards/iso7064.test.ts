import { mod37_2 } from 'cdigit';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mod37Check } from '../../src/domain/label.ts';

const ALPHANUMERIC = [...'0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ'];
const body = (min: number, max: number) =>
  fc.array(fc.constantFrom(...ALPHANUMERIC), { minLength: min, maxLength: max }).map((characters) => characters.join(''));

describe('ISO 7064 MOD 37-2', () => {
  // Guidelines for the Blood Transfusion Services in the UK, Annex 2 (donation numbers, ISBT 128): G1234 98 654321 has sum
  // 148354, remainder 21, 38 − 21 = 17, so the check character is H.
  it('gives the published check character of a donation number', () => {
    expect(mod37Check('G123498654321')).toBe('H');
  });

  // Computed with cdigit 5.0.1 (registry package, its own tests hold the standard's examples), written down here.
  it.each([
    ['A999914123456', 'N'],
    ['A999522123456', '*'],
    ['MOULD0042', 'O'],
    ['A1', 'X'],
    ['M0059', '*'],
  ])('checks %s with %s', (text, check) => {
    expect(mod37Check(text)).toBe(check);
  });

  it('agrees with an independent implementation on 2,000 random bodies', () => {
    fc.assert(
      fc.property(body(1, 24), (text) => mod37Check(text) === mod37_2.compute(text)),
      { numRuns: 2000, seed: 7064 },
    );
  });

  it('fulfils the congruence of the standard: Σ aᵢ·2^(n−i) ≡ 1 (mod 37), check character included', () => {
    const values = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ*';
    fc.assert(
      fc.property(body(1, 24), (text) => {
        const characters = [...text, mod37Check(text)];
        let sum = 0n;
        characters.forEach((character, i) => {
          sum += BigInt(values.indexOf(character)) << BigInt(characters.length - 1 - i);
        });
        return sum % 37n === 1n;
      }),
      { numRuns: 500, seed: 37 },
    );
  });

  it('refuses what is not in its alphabet', () => {
    for (const text of ['m0059', 'A-1', 'A 1', 'A*1', 'É']) expect(() => mod37Check(text), text).toThrow(RangeError);
  });
});
