import { describe, expect, it } from 'vitest';
import {
  CHARTS_DISAGREE_MM,
  japanDiameter,
  japanIndex,
  parseRingLabel,
  ringFromCircumference,
  ringFromDiameter,
  ukCircumference,
  ukIndex,
  usDiameter,
  usIndex,
} from '../../src/domain/size/ring.ts';

/** ISO 8653:2016: the size is the inside circumference in mm. Circumference → inside diameter as Wikipedia's “Ring size” prints it. */
const ISO = [
  [49, 15.6],
  [50, 15.9],
  [51, 16.2],
  [52, 16.6],
  [53, 16.9],
  [54, 17.2],
  [55, 17.5],
  [56, 17.8],
  [57, 18.1],
  [58, 18.5],
  [59, 18.8],
  [60, 19.1],
  [61, 19.4],
  [62, 19.7],
  [63, 20.1],
  [64, 20.4],
  [65, 20.7],
  [66, 21.0],
  [67, 21.3],
  [68, 21.6],
  [69, 22.0],
  [70, 22.3],
  [71, 22.6],
  [72, 22.9],
] as const;

/**
 * US size, inside diameter and circumference, nearest ISO, nearest half letter, exact letter index, exact Japanese size. The US rule, 0.458 in +
 * 0.032 in a size, is printed by liquisearch.com and Wikipedia; letters by 1.25 mm of circumference (measurement.enacademic.com, BS 6820);
 * Japan by a third of a millimetre of diameter (enacademic.com).
 */
const TABLE = [
  [0, 11.63, 36.54, '37', undefined, 0.23, undefined],
  [3, 14.068, 44.2, '44', 'F½', 6.36, 4.21],
  [4, 14.881, 46.75, '47', 'H½', 8.4, 6.64],
  [5, 15.694, 49.3, '49', 'J½', 10.44, 9.08],
  [6, 16.507, 51.86, '52', 'L½', 12.49, 11.52],
  [7, 17.32, 54.41, '54', 'N½', 14.53, 13.96],
  [8, 18.132, 56.96, '57', 'P½', 16.57, 16.4],
  [9, 18.945, 59.52, '60', 'R½', 18.61, 18.84],
  [10, 19.758, 62.07, '62', 'T½', 20.66, 21.27],
  [11, 20.571, 64.63, '65', 'V½', 22.7, 23.71],
  [12, 21.384, 67.18, '67', 'X½', 24.74, 26.15],
  [13, 22.196, 69.73, '70', 'Z+1', 26.79, 28.59],
] as const;

const LETTERS = { A: [37.5, 11.937], F: [43.75, 13.926], H: [46.25, 14.722], J: [48.75, 15.518], L: [51.25, 16.313], N: [53.75, 17.109] };
const MORE_LETTERS = { P: [56.25, 17.905], R: [58.75, 18.701], T: [61.25, 19.496], V: [63.75, 20.292], Z: [68.75, 21.884] };
const JAPAN = [
  [1, 13, 40.84],
  [7, 15, 47.12],
  [10, 16, 50.27],
  [13, 17, 53.41],
  [16, 18, 56.55],
] as const;
const US_OF_ISO = [
  [44, 2.92],
  [48, 4.49],
  [50, 5.27],
  [52, 6.06],
  [54, 6.84],
  [56, 7.62],
  [58, 8.41],
  [60, 9.19],
  [62, 9.97],
  [64, 10.76],
  [66, 11.54],
  [68, 12.32],
] as const;

describe('ring sizes', () => {
  it('ISO circumferences have the inside diameters that are printed, to 0.1 mm', () => {
    for (const [circumference, diameter] of ISO) {
      expect(ringFromCircumference(circumference).diameterMm, `ISO ${circumference}`).toBeCloseTo(diameter, 1);
      expect(parseRingLabel(`ISO ${circumference}`)?.iso).toBe(String(circumference));
    }
  });

  it('US sizes have the diameters of their rule, and the sizes beside them', () => {
    for (const [us, diameter, circumference, iso, uk, index, japan] of TABLE) {
      const ring = ringFromDiameter(usDiameter(us));
      expect(Math.abs(ring.diameterMm - diameter), `US ${us}`).toBeLessThan(0.00101);
      expect(ring.circumferenceMm).toBeCloseTo(circumference, 2);
      expect(ring).toMatchObject({ us: String(us), iso });
      expect(ring.uk, `US ${us}`).toBe(uk);
      expect(ukIndex(ring.circumferenceMm)).toBeCloseTo(index, 2);
      if (japan !== undefined) expect(Math.abs(japanIndex(ring.diameterMm) - japan)).toBeLessThan(0.0101);
    }
  });

  it('UK letters go up by 1.25 mm of circumference from 37.5 mm', () => {
    for (const [letter, [circumference = 0, diameter = 0]] of Object.entries({ ...LETTERS, ...MORE_LETTERS })) {
      const ring = parseRingLabel(`UK ${letter}`);
      expect(ring?.circumferenceMm, letter).toBeCloseTo(circumference, 10);
      expect(ring?.diameterMm).toBeCloseTo(diameter, 3);
      expect(ring?.uk).toBe(letter);
    }
  });

  it('Japanese sizes go up by a third of a millimetre from 13 mm', () => {
    for (const [size, diameter, circumference] of JAPAN) {
      expect(japanDiameter(size)).toBeCloseTo(diameter, 3);
      expect(parseRingLabel(`Japan ${size}`)?.circumferenceMm).toBeCloseTo(circumference, 2);
    }
  });

  it('ISO sizes fall between the US sizes that are printed beside them', () => {
    for (const [iso, us] of US_OF_ISO) expect(usIndex(iso / Math.PI), `ISO ${iso}`).toBeCloseTo(us, 2);
  });

  it('a chart that snaps letters to US halves lies half a millimetre off, which is what the caution says (Wikipedia: H 46.8 mm, I 48.0 mm)', () => {
    for (const [index, printed] of [
      [8, 46.8],
      [9, 48],
    ] as const) {
      const off = Math.abs(ukCircumference(index) - printed);
      expect(Number(off.toFixed(1))).toBeGreaterThan(CHARTS_DISAGREE_MM - 0.1);
      expect(Number(off.toFixed(1))).toBeLessThanOrEqual(CHARTS_DISAGREE_MM + 0.1);
    }
  });

  it('are read as they are written, half and quarter sizes too, and not beyond any finger', () => {
    const around = (label: string) => parseRingLabel(label)?.circumferenceMm;
    expect(around('UK N½')).toBeCloseTo(54.375, 10);
    expect(around('uk n 1/2')).toBeCloseTo(54.375, 10);
    expect(around('US 7¼')).toBeCloseTo((11.63 + 0.8128 * 7.25) * Math.PI, 10);
    expect(around('us 7 1/4')).toBeCloseTo((11.63 + 0.8128 * 7.25) * Math.PI, 10);
    expect(around('JIS 14½')).toBeCloseTo((52.5 / 3) * Math.PI, 10);
    expect(around('UK Z+4½')).toBeCloseTo(36.25 + 1.25 * 30.5, 10);
    for (const label of ['UK Z+99', 'US 99½', 'JIS 90', 'ISO 29', 'ISO 101', 'US -1', 'UK NN', 'UK N¼', 'N½', '7', 'ISO', 'US 1e9'])
      expect(around(label), label).toBeUndefined();
    expect(ringFromCircumference(34)).toEqual({ circumferenceMm: 34, diameterMm: 34 / Math.PI, iso: '34' });
  });
});
