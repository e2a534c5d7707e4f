import jstat from 'jstat';
import { describe, expect, it } from 'vitest';
import { incompleteBeta, logGamma } from '../../src/domain/gamma.ts';
import { exactInterval, wilsonInterval } from '../../src/domain/proportion.ts';

const Z90 = 1.644853626951472;
const Z95 = 1.959963984540054;

describe('the share of a few in many, against NIST/SEMATECH 7.2.4.1', () => {
  it('has Wilson’s lower end for 26 of 200 at .09577', () => {
    expect(Math.abs(wilsonInterval(26, 200, 1.645).low - 0.09577)).toBeLessThan(1e-5);
  });

  it('has the exact 90 % interval for 4 of 20 at .071354 and .401029 (the page’s closing line prints .400, a slip)', () => {
    const { low, high } = exactInterval(4, 20, 0.9);
    expect(Math.abs(low - 0.071354)).toBeLessThan(1e-5);
    expect(Math.abs(high - 0.401029)).toBeLessThan(1e-5);
  });
});

// Wilson and Clopper-Pearson (binom.test) by R 4.2.2; 15/148 and 81/263 are the examples of Newcombe 1998.
it.each([
  [4, 20, 90, 0.09311802, 0.37837669, 0.07135388, 0.40102812],
  [26, 200, 95, 0.09028202, 0.18366352, 0.08670835, 0.18465233],
  [0, 10, 95, 0, 0.2775328, 0, 0.30849711],
  [1, 10, 95, 0.01787621, 0.40415003, 0.00252858, 0.44501612],
  [0, 20, 95, 0, 0.16112516, 0, 0.16843347],
  [2, 20, 95, 0.02786648, 0.30103365, 0.01234853, 0.31698271],
  [7, 50, 95, 0.06950833, 0.26186194, 0.0581917, 0.267396],
  [12, 30, 95, 0.24590628, 0.5767964, 0.22655765, 0.59396507],
  [1, 29, 95, 0.00611321, 0.17175522, 0.00087265, 0.1776443],
  [15, 148, 95, 0.0623864, 0.16048724, 0.05784401, 0.16165049],
  [81, 263, 95, 0.25528852, 0.36620958, 0.25273675, 0.36762192],
  [3, 3, 95, 0.43850297, 1, 0.29240177, 1],
])('%d of %d at %d %%', (hits, tries, level, wilsonLow, wilsonHigh, exactLow, exactHigh) => {
  const wilson = wilsonInterval(hits, tries, level === 90 ? Z90 : Z95);
  const exact = exactInterval(hits, tries, level / 100);
  expect(Math.abs(wilson.low - wilsonLow)).toBeLessThan(1e-8);
  expect(Math.abs(wilson.high - wilsonHigh)).toBeLessThan(1e-8);
  expect(Math.abs(exact.low - exactLow)).toBeLessThan(1e-8);
  expect(Math.abs(exact.high - exactHigh)).toBeLessThan(1e-8);
});

describe('our own functions against jstat’s', () => {
  it('ln Γ', () => {
    for (const x of [0.3, 1, 2.5, 7, 11.9, 40, 1234.5])
      expect(Math.abs(logGamma(x) - jstat.gammaln(x))).toBeLessThan(1e-8 * Math.max(1, x));
  });

  it('the incomplete beta function, as far as jstat goes: it stops at 3e-7', () => {
    const cases = [
      [0.1, 2, 3],
      [0.5, 0.5, 0.5],
      [0.93, 19, 3],
      [0.02, 1, 60],
      [0.31, 81.5, 182.5],
    ] as const;
    for (const [x, a, b] of cases) expect(Math.abs(incompleteBeta(x, a, b) - jstat.ibeta(x, a, b))).toBeLessThan(3e-7);
  });

  it('the incomplete beta function against the binomial tail it is', () => {
    // P(2 or more of 4) at 1 in 10: 6 · .01 · .81 + 4 · .001 · .9 + .0001.
    expect(Math.abs(incompleteBeta(0.1, 2, 3) - 0.0523)).toBeLessThan(1e-12);
  });
});
