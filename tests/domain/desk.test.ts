import { describe, expect, it } from 'vitest';
import type { Code } from '../../src/domain/brand.ts';
import { clockOf } from '../../src/domain/clock.ts';
import { labelCode, nounOfCode } from '../../src/domain/label.ts';
import { NOUNS } from '../../src/domain/noun.ts';
import { aDesk, DEVICE } from '../support/builders.ts';

describe('a desk', () => {
  it('gives an action’s entries rising ids, the later ones naming the first', () => {
    const desk = aDesk({ nowMs: 1_700_000_000_000, clock: { ms: 1_700_000_000_005, count: 3 }, by: 'Ines' });
    const [first, second, third] = [desk.entry(), desk.entry(), desk.entry()];
    expect(first).toEqual({ id: first.id, on: desk.today, by: 'Ines' });
    expect(second).toEqual({ id: second.id, on: desk.today, by: 'Ines', step: first.id });
    expect(third.step).toBe(first.id);
    expect([first, second, third].map(({ id }) => clockOf(id))).toEqual([4, 5, 6].map((count) => ({ ms: 1_700_000_000_005, count })));
    expect(first.id.endsWith(DEVICE)).toBe(true);
    expect(aDesk().entry()).not.toHaveProperty('by');
  });

  it('draws a good code of each noun, the same from the same desk', () => {
    const [one, other] = [aDesk(), aDesk()];
    for (const noun of NOUNS) {
      const code = one.code(noun);
      expect(labelCode(code)).toBe(code);
      expect(nounOfCode(code)).toBe(noun);
      expect(other.code(noun)).toBe(code);
    }
  });

  it('draws again when a code is on some thing already, or was given out before', () => {
    const draws = [1, 1, 1, 2, 2, 3];
    const bytes = (count: number) => Uint8Array.from({ length: count }, (_, i) => (i === 5 ? (draws[0] ?? 9) : 3));
    const counting = (count: number) => {
      const drawn = bytes(count);
      draws.shift();
      return drawn;
    };
    const taken = aDesk({ bytes: () => bytes(6) }).code('wax');
    const desk = aDesk({ bytes: counting, isTaken: (code: Code) => code === taken });
    const given = [desk.code('wax'), desk.code('wax')];
    expect(new Set([taken, ...given]).size).toBe(3);
  });
});
