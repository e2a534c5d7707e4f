import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clockOf, makeEntryId, parseEntryId, tick } from '../../src/domain/clock.ts';
import { CROCKFORD } from '../../src/domain/crockford.ts';
import { isProblem } from '../../src/domain/problem.ts';

const clocks = fc.record({ ms: fc.integer({ min: 0, max: 17_000_000_000_000 }), count: fc.integer({ min: 0, max: 32_767 }) });
const devices = fc.string({ unit: fc.constantFrom(...CROCKFORD), minLength: 6, maxLength: 6 });

describe('an entry’s id', () => {
  it('gives back the reading it was made from, and ends in the device', () => {
    fc.assert(
      fc.property(clocks, devices, (clock, device) => {
        const id = makeEntryId(clock, device);
        expect(parseEntryId(id)).toBe(id);
        expect(clockOf(id)).toEqual(clock);
        expect(id.endsWith(device)).toBe(true);
      }),
    );
  });

  it('sorts as text as the readings do', () => {
    fc.assert(
      fc.property(clocks, clocks, devices, devices, (a, b, x, y) => {
        const isBefore = a.ms < b.ms || (a.ms === b.ms && a.count < b.count);
        if (isBefore) expect(makeEntryId(a, x) < makeEntryId(b, y)).toBe(true);
      }),
    );
  });

  it.each([
    '',
    '1HR6T0T00000AAAAA',
    '1HR6T0T00000AAAAAAA',
    '1hr6t0t00000aaaaaa',
    '1HR6T0T0000OAAAAAA',
    'ZZZZZZZZZZZZAAAAAA',
    'G00000000000AAAAAA',
    17,
    null,
    undefined,
    ['1HR6T0T00000AAAAAA'],
    { toString: 1, valueOf: 1 },
  ])('is not %j', (raw) => {
    expect(isProblem(parseEntryId(raw))).toBe(true);
  });
});

describe('the clock', () => {
  it('carries into the next millisecond when its count is full', () => {
    expect(tick({ ms: 41, count: 32_767 }, 7)).toEqual({ ms: 42, count: 0 });
    expect(tick({ ms: 41, count: 32_766 }, 41)).toEqual({ ms: 41, count: 32_767 });
  });
});
