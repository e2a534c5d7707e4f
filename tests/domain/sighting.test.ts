import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { eachOnce, inBox, tapTarget, turnedBack } from '../../src/domain/sighting.ts';

const picture = { wide: 640, tall: 480 };

describe('where a symbol lies on the glass', () => {
  it('follows how the picture fills its box', () => {
    const box = { wide: 300, tall: 300 };
    // Filling, the picture is 400 px wide and 50 px of it are cut off on either side.
    expect(inBox({ x: 0, y: 0 }, picture, box, 'cover')).toEqual({ x: -50, y: 0 });
    expect(inBox({ x: 0.5, y: 1 }, picture, box, 'cover')).toEqual({ x: 150, y: 300 });
    // Fitted in whole, it is 225 px high.
    expect(inBox({ x: 1, y: 0 }, picture, box, 'contain')).toEqual({ x: 300, y: 37.5 });
  });

  it('can be tapped with a thumb, inside the box, about the symbol’s middle', () => {
    const point = fc.record({ x: fc.double({ min: -50, max: 450, noNaN: true }), y: fc.double({ min: -50, max: 350, noNaN: true }) });
    const box = { wide: 400, tall: 300 };
    fc.assert(
      fc.property(fc.array(point, { minLength: 4, maxLength: 4 }), (corners) => {
        const { left, top, wide, tall } = tapTarget(corners, box, 48);
        expect(wide).toBeGreaterThanOrEqual(48);
        expect(tall).toBeGreaterThanOrEqual(48);
        expect(left).toBeGreaterThanOrEqual(0);
        expect(top).toBeGreaterThanOrEqual(0);
        expect(left + wide).toBeLessThanOrEqual(400.001);
        expect(top + tall).toBeLessThanOrEqual(300.001);
      }),
    );
    const small = [
      { x: 100, y: 100 },
      { x: 120, y: 100 },
      { x: 120, y: 120 },
      { x: 100, y: 120 },
    ];
    expect(tapTarget(small, box, 48)).toEqual({ left: 86, top: 86, wide: 48, tall: 48 });
  });

  it('is brought back from a turned look', () => {
    // A quarter turn: what was right of the middle is below it in the turned picture.
    const [back] = turnedBack([{ x: 240, y: 420 }], { wide: 480, tall: 640 }, picture, 90);
    expect(back?.x).toBeCloseTo(420, 9);
    expect(back?.y).toBeCloseTo(240, 9);
  });

  it('is told once for each text', () => {
    const at = (text: string, x: number) => ({ text, corners: [{ x, y: 0 }] });
    expect(eachOnce([at('A', 1), at('B', 2), at('A', 3)])).toEqual([at('A', 1), at('B', 2)]);
  });
});
