import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { endsInNumber, numberOn } from '../../src/domain/numbering.ts';

describe('numbering on', () => {
  it.each([
    ['Toggle 7', 3, ['Toggle 8', 'Toggle 9', 'Toggle 10']],
    ['Toggle 07', 3, ['Toggle 08', 'Toggle 09', 'Toggle 10']],
    ['A099', 2, ['A100', 'A101']],
    ['Toggle', 2, ['Toggle 2', 'Toggle 3']],
    ['Seal 4 of 1850, worn', 1, ['Seal 4 of 1850, worn 2']],
    ['99999999999999999999', 1, ['100000000000000000000']],
  ])('%s is followed by %i more', (name, count, names) => {
    expect(numberOn(name, count)).toEqual(names);
  });

  it('passes over what is taken', () => {
    expect(numberOn('Toggle 7', 2, (name) => name === 'Toggle 8' || name === 'Toggle 10')).toEqual(['Toggle 9', 'Toggle 11']);
  });

  it('gives different names that count up one by one from the one before, whatever the words in front', () => {
    const number = fc.bigInt({ min: 0n, max: 10n ** 20n });
    fc.assert(
      fc.property(
        fc.string().filter((stem) => !/\d$/.test(stem)),
        number,
        fc.nat({ max: 4 }),
        fc.integer({ min: 1, max: 200 }),
        (stem, first, noughts, count) => {
          const digits = '0'.repeat(noughts) + String(first);
          const names = numberOn(stem + digits, count);
          expect(names).toHaveLength(count);
          expect(new Set(names).size).toBe(count);
          names.forEach((name, index) => {
            expect(name.startsWith(stem)).toBe(true);
            const tail = name.slice(stem.length);
            expect(BigInt(tail)).toBe(first + BigInt(index) + 1n);
            expect(tail.length).toBe(Math.max(digits.length, String(first + BigInt(index) + 1n).length));
          });
        },
      ),
    );
  });

  it('goes on where it stopped: three and then two are five', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 20 }), fc.integer({ min: 1, max: 30 }), fc.integer({ min: 1, max: 30 }), (name, some, more) => {
        const first = numberOn(name, some);
        expect([...first, ...numberOn(first.at(-1) ?? '', more)]).toEqual(numberOn(name, some + more));
      }),
    );
  });

  it('knows what can be counted on from', () => {
    expect([endsInNumber('No. 7'), endsInNumber('small'), endsInNumber(undefined)]).toEqual([true, false, false]);
  });
});
