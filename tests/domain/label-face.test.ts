import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LabelFace, type LabelWords, layFace, type Measure } from '../../src/domain/label-face.ts';
import { SHEET_PRESETS } from '../../src/domain/label-presets.ts';

/** Wider than any real type. */
const measure: Measure = (text) => 0.66 * [...text].length;
const MOULD: LabelWords = { code: 'M06QQ3YQ', name: 'Bull-leaper seal', lines: ['18 mm'], kind: 'intermediate', isFront: false };
const DRAWER: LabelWords = {
  code: 'P7B8JXT8',
  name: 'A1',
  lines: ['Minoan', '2000–1450 BC', 'Plan chest'],
  kind: 'drawer',
  isFront: true,
};

function assertInside({ symbol, texts, shape }: LabelFace, wide: number, tall: number): void {
  const near = 0.01;
  expect(symbol.x + symbol.side).toBeLessThanOrEqual(wide + near);
  expect(symbol.y + symbol.side).toBeLessThanOrEqual(tall + near);
  for (const { text, font, x, y, size } of texts) {
    expect(x + measure(text, font) * size, text).toBeLessThanOrEqual(wide + near);
    expect(y + size * 0.25, text).toBeLessThanOrEqual(tall + near);
    expect(y - size * 0.8, text).toBeGreaterThanOrEqual(-near);
    // The quiet zone belongs to the symbol alone.
    const isBeside = x >= symbol.x + symbol.side - near;
    const isBelow = y - size * 0.8 >= symbol.y + symbol.side - near;
    expect(isBeside || isBelow, text).toBe(true);
  }
  expect(shape.y + shape.size).toBeLessThanOrEqual(tall + near);
}

describe('a label’s face', () => {
  it.each(SHEET_PRESETS.map(({ word, grid }) => [word, grid] as const))('has the whole code, the name and the kind on %s', (_, grid) => {
    for (const words of [MOULD, DRAWER]) {
      const face = layFace(words, grid.wide, grid.tall, measure);
      assertInside(face, grid.wide, grid.tall);
      const all = face.texts.map(({ text }) => text);
      expect(all).toContain(words.code);
      expect(all.join(' ')).toContain(words.name.slice(0, 6));
      expect(face.shape.size).toBeGreaterThan(1);
    }
  });

  it('writes the drawer’s label larger than all else, with its period and span', () => {
    const { texts } = layFace(DRAWER, 90, 45, measure);
    const size = (text: string) => texts.find((each) => each.text === text)?.size ?? 0;
    expect(size('A1')).toBeGreaterThan(8);
    expect(size('A1')).toBeGreaterThan(2 * size('Minoan'));
    expect(size('2000–1450 BC')).toBeGreaterThan(2);
  });

  it('keeps 16.5 mm and more for the symbol from 35 mm of width on, and 14.5 mm on a mould’s edge', () => {
    expect(layFace(MOULD, 38.1, 21.2, measure).symbol.side).toBeGreaterThanOrEqual(16.5);
    expect(layFace(MOULD, 15, 25, measure).symbol.side).toBeGreaterThanOrEqual(14.5);
  });

  it('never runs over the label’s edge nor into the quiet zone, whatever the words and the size', () => {
    const word = fc.oneof(fc.string({ maxLength: 120, unit: 'grapheme' }), fc.lorem({ maxCount: 12 }), fc.constant('W'.repeat(90)));
    fc.assert(
      fc.property(
        fc.record({ name: word, lines: fc.array(word, { maxLength: 4 }), isFront: fc.boolean() }),
        fc.integer({ min: 12, max: 140 }),
        fc.integer({ min: 12, max: 140 }),
        (some, wide, tall) => {
          const face = layFace({ ...some, code: 'M06QQ3YQ', kind: 'injected wax' }, wide, tall, measure);
          assertInside(face, wide, tall);
          expect(face.texts.map(({ text }) => text)).toContain('M06QQ3YQ');
        },
      ),
    );
  });
});
