import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CROCKFORD } from '../../src/domain/crockford.ts';
import { makeCode } from '../../src/domain/label.ts';
import { NOUNS } from '../../src/domain/noun.ts';
import { type Burst, heard, labelIn, type Stroke } from '../../src/domain/wedge.ts';
import { codeOf } from '../support/builders.ts';

const boardKey = (character: string) =>
  /\d/.test(character) ? `Digit${character}` : /[a-z]/i.test(character) ? `Key${character.toUpperCase()}` : 'Slash';

/** Keys pressed one after another, so many ms apart; `write` is what the layout makes of each. */
function typed(text: string, gaps: readonly number[], write = (character: string) => character, end = 'Enter'): Stroke[] {
  let atMs = 1000;
  return [...text, end].map((character, index) => {
    atMs += index === 0 ? 0 : (gaps[(index - 1) % gaps.length] ?? 0);
    const isEnd = character === end;
    return { key: isEnd ? end : write(character), code: isEnd ? end : boardKey(character), atMs };
  });
}

const read = (strokes: readonly Stroke[]) => labelIn(strokes.reduce<Burst>(heard, []));

const code = fc
  .tuple(fc.constantFrom(...NOUNS), fc.array(fc.constantFrom(...CROCKFORD), { minLength: 6, maxLength: 6 }))
  .map(([noun, characters]) => makeCode(noun, characters.join('')))
  .filter((made) => made !== null);
const quick = fc.array(fc.integer({ min: 0, max: 30 }), { minLength: 1, maxLength: 12 });
const byHand = fc.array(fc.integer({ min: 61, max: 400 }), { minLength: 1, maxLength: 12 });

describe('a scanner that types', () => {
  it('is read at any of its speeds, whatever was typed before', () => {
    fc.assert(
      fc.property(code, quick, fc.constantFrom('Enter', 'Tab'), fc.string({ maxLength: 9 }), (label, gaps, end, before) => {
        const hand = typed(before, [150]).map((stroke) => ({ ...stroke, atMs: stroke.atMs - 100_000 }));
        expect(read([...hand.slice(0, -1), ...typed(label, gaps, undefined, end)])).toBe(label);
      }),
    );
  });

  it('is read in the form of a link too', () => {
    fc.assert(
      fc.property(code, quick, (label, gaps) => {
        expect(read(typed(`https://shelves.example/keep/#/c/${label}`, gaps))).toBe(label);
      }),
    );
  });

  it('is read with the capitals locked, or under another layout', () => {
    const french = new Map([...'1234567890AQZWMaqzwm'].map((character, index) => [character, [...'&é"\'(-è_çàQAWZ,qawz,'][index] ?? '']));
    fc.assert(
      fc.property(code, quick, (label, gaps) => {
        expect(read(typed(label, gaps, (character) => character.toLowerCase()))).toBe(label);
        const foreign = (character: string) => french.get(character) ?? character;
        expect(read(typed(label, gaps, foreign))).toBe(label);
        expect(read(typed(`https://shelves.example/#/c/${label}`, gaps, foreign))).toBe(label);
      }),
    );
  });

  it('is told from hands, however well they type a code', () => {
    fc.assert(
      fc.property(code, byHand, (label, gaps) => {
        expect(read(typed(label, gaps))).toBeUndefined();
      }),
    );
    expect(read(typed(codeOf('mould', 4), [36]))).toBeUndefined();
    expect(read(typed(codeOf('mould', 4), [34]))).toBe(codeOf('mould', 4));
  });

  it('is told from a key held down, and from what is no label, has a slip or does not end', () => {
    const label = codeOf('mould', 4);
    expect(read(typed(label, [30]).map((stroke) => ({ ...stroke, isRepeat: true })))).toBeUndefined();
    expect(read(typed('4006381333931', [5]))).toBeUndefined();
    const slip = label.replace(/.$/, (last) => (last === '0' ? '1' : '0'));
    expect(read(typed(slip, [5]))).toBeUndefined();
    expect(read(typed(label, [5]).slice(0, -1))).toBeUndefined();
    expect(read(typed(label.slice(1), [5]))).toBeUndefined();
    expect(labelIn([])).toBeUndefined();
  });

  it('answers anything at all, and never reads a label from keys a hand’s pace apart', () => {
    const stroke = fc.record({
      key: fc.oneof(fc.string({ maxLength: 3 }), fc.constantFrom('Enter', 'Shift', 'm')),
      code: fc.string({ maxLength: 6 }),
      gap: fc.integer({ min: 61, max: 900 }),
    });
    fc.assert(
      fc.property(fc.array(stroke, { maxLength: 60 }), (strokes) => {
        let atMs = 0;
        let burst: Burst = [];
        for (const { gap, ...rest } of strokes) {
          atMs += gap;
          burst = heard(burst, { ...rest, atMs });
          expect(labelIn(burst)).toBeUndefined();
        }
      }),
    );
  });
});
