import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isProblem } from '../../../src/domain/problem.ts';
import { chanceBeyond, chanceOfMore, lifeOutlived, shotsLeft } from '../../../src/domain/survival/forecast.ts';
import { atRiskAt, curveOf } from '../../../src/domain/survival/kaplan-meier.ts';
import { LIFE_PRIOR, type LifePrior } from '../../../src/domain/survival/life-prior.ts';
import type { Lifetime } from '../../../src/domain/survival/lifetime.ts';
import { posteriorOf } from '../../../src/domain/survival/posterior.ts';
import { fitWeibull } from '../../../src/domain/survival/weibull-fit.ts';
import { chance } from '../../support/chance.ts';
import { percentOf, studioOutcomes, truthFromPrior } from '../../support/made-up-studio.ts';

const someLives = fc.array(fc.record({ shots: fc.integer({ min: 1, max: 400 }), isEnd: fc.boolean() }), { maxLength: 40 });
const relative = (lives: readonly Lifetime[], expected = 120) => lives.map(({ shots, isEnd }) => ({ at: shots / expected, isEnd }));
const end = (shots: number): Lifetime => ({ shots, isEnd: true });
const whole = (shots: number): Lifetime => ({ shots, isEnd: false });

describe('the curve', () => {
  it('never rises, keeps its interval around itself, and counts whom it should', () => {
    fc.assert(
      fc.property(someLives, (lives) => {
        const { steps, ends, moulds } = curveOf(lives);
        let before = 1;
        for (const { shots, share, low = 0, high = 1, atRisk } of steps) {
          expect(share).toBeLessThan(before);
          expect(low).toBeLessThanOrEqual(share);
          expect(high).toBeGreaterThanOrEqual(share);
          expect(atRisk).toBe(atRiskAt(lives, shots));
          before = share;
        }
        expect(steps.reduce((sum, step) => sum + step.ends, 0)).toBe(ends);
        expect(moulds).toBe(lives.length);
      }),
    );
  });

  it('is the plain share left when nothing is censored', () => {
    const { steps, median } = curveOf([end(30), end(10), end(20), end(40)]);
    expect(steps.map(({ share }) => share)).toEqual([0.75, 0.5, 0.25, 0]);
    expect(median).toBe(20);
  });

  it('has no steps, no median and no limit without an end', () => {
    expect(curveOf([whole(55), whole(20)])).toEqual({ moulds: 2, ends: 0, steps: [], longest: 55 });
  });
});

describe('the Weibull fit', () => {
  it.each([
    ['no mould at all', [], /No life has ended/],
    ['none ended', [whole(50), whole(90)], /No life has ended/],
    ['one ended and none outlived it', [end(50), whole(50), whole(20)], /no mould has come further/],
    ['all ended at the same shots', [end(50), end(50), end(50)], /no spread/],
  ])('says what is missing: %s', (_, lives, says) => {
    expect(fitWeibull(lives)).toMatchObject({ problem: true, says: expect.stringMatching(says) });
  });

  it('makes do with one end when another mould outlived it, and with two ends apart', () => {
    for (const lives of [
      [end(50), whole(120)],
      [end(50), end(80)],
      [end(1), end(100_000)],
    ])
      expect(fitWeibull(lives)).toMatchObject({ shape: expect.any(Number), scale: expect.any(Number) });
  });

  it('always gives finite figures, or says why not, and scales with the unit', () => {
    fc.assert(
      fc.property(someLives, (lives) => {
        const fit = fitWeibull(lives);
        if (isProblem(fit)) return;
        for (const value of Object.values(fit)) expect(Number.isFinite(value)).toBe(true);
        const tenfold = fitWeibull(lives.map(({ shots, isEnd }) => ({ shots: shots * 10, isEnd })));
        if (isProblem(tenfold)) throw new Error(tenfold.says);
        expect(tenfold.shape / fit.shape).toBeCloseTo(1, 6);
        expect(tenfold.scale / fit.scale / 10).toBeCloseTo(1, 6);
      }),
    );
  });
});

describe('the forecast', () => {
  it('says about the expected life when nothing is known', () => {
    const { low, middle, high } = shotsLeft(posteriorOf([]), 0, 200);
    expect(middle).toBeGreaterThan(180);
    expect(middle).toBeLessThan(210);
    expect(low).toBeLessThan(70);
    expect(high).toBeGreaterThan(400);
  });

  it('has weights that add up to 1, however much or little it rests on', () => {
    const many = Array.from({ length: 900 }, (_, i) => end(90 + (i % 40)));
    for (const lives of [[], [end(1)], [whole(5000)], many, [end(1), end(40_000)]]) {
      const weights = posteriorOf(relative(lives)).flatMap((row) => row.weights);
      expect(weights.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 8);
    }
  });

  it('comes to what the moulds say when there are many of them', () => {
    const many = Array.from({ length: 400 }, (_, i) => end(Math.ceil(60 * Math.sqrt(-Math.log((i + 0.5) / 400) / Math.LN2))));
    const { middle } = shotsLeft(posteriorOf(relative(many)), 0, 120);
    expect(Math.abs(middle - 60)).toBeLessThan(3);
  });

  it('falls with every shot asked for, and the life it names has the chance it names', () => {
    fc.assert(
      fc.property(someLives, fc.integer({ min: 0, max: 300 }), (lives, shots) => {
        const posterior = posteriorOf(relative([...lives, ...(shots > 0 ? [whole(shots)] : [])]));
        const chances = [0, 1, 5, 20, 80, 320].map((more) => chanceOfMore(posterior, shots, 120, more));
        expect(chances[0]).toBe(1);
        for (let i = 1; i < chances.length; i++) expect(chances[i]).toBeLessThanOrEqual(chances[i - 1] as number);
        for (const share of [0.9, 0.5, 0.1])
          expect(chanceBeyond(posterior, shots / 120, lifeOutlived(posterior, shots / 120, share))).toBeCloseTo(share, 4);
        const { low, middle, high } = shotsLeft(posterior, shots, 120);
        expect(low).toBeLessThanOrEqual(middle);
        expect(middle).toBeLessThanOrEqual(high);
      }),
      { numRuns: 40 },
    );
  });

  // Failures among the shots still asked for, an eighth of the way or later: one at once says more about accidents than about wear.
  it('never improves for any mould with more failures among the shots asked of it', () => {
    const further = fc.array(fc.double({ min: 0.125, max: 1, noNaN: true }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(someLives, fc.integer({ min: 0, max: 300 }), fc.integer({ min: 8, max: 300 }), further, (lives, shots, more, parts) => {
        const ages = parts.map((part) => shots + Math.ceil(part * more));
        const own = shots > 0 ? [whole(shots)] : [];
        const stood = posteriorOf(relative([...lives, ...own, ...ages.map(whole)]));
        const failed = posteriorOf(relative([...lives, ...own, ...ages.map(end)]));
        expect(chanceOfMore(failed, shots, 120, more)).toBeLessThanOrEqual(chanceOfMore(stood, shots, 120, more) + 1e-9);
      }),
      { numRuns: 80 },
    );
  });

  // With H the wear of the shots asked for, the chance is E e^−H, and after a like mould gave out somewhere among them E e^−H (1 − e^−H) ÷ E (1 − e^−H):
  // never more, since the variance of e^−H is never less than nothing. No shape and no prior can break it.
  it('never improves when a mould as old gave out before it made those shots, whatever is believed', () => {
    fc.assert(
      fc.property(someLives, fc.integer({ min: 0, max: 300 }), fc.integer({ min: 1, max: 300 }), (lives, shots, more) => {
        const [from, until] = [shots / 120, (shots + more) / 120];
        const belief = posteriorOf(relative([...lives, ...(shots > 0 ? [whole(shots), whole(shots)] : [])]));
        const before = chanceBeyond(belief, from, until);
        // Each Weibull life of the belief counts as much more as it is likelier to have given out by then.
        const after = belief.map(({ shape, rates, weights }) => {
          const gave = rates.map((rate, i) => (weights[i] as number) * -Math.expm1(-rate * (until ** shape - from ** shape)));
          return { shape, rates, weights: gave };
        });
        const total = after.flatMap(({ weights }) => weights).reduce((sum, weight) => sum + weight, 0);
        expect(chanceBeyond(after, from, until) / total).toBeLessThanOrEqual(before + 1e-9);
      }),
      { numRuns: 60 },
    );
  });

  it('may improve for a mould that is well past the failures: they speak for accident rather than wear', () => {
    // Nothing else is known; this mould stands at 240 shots of 120 expected, and is asked for 60 more. Another is at 3 shots: whole, or torn.
    const chanceWith = (other: Lifetime) => chanceOfMore(posteriorOf(relative([whole(240), other])), 240, 120, 60);
    expect(Math.round(100 * chanceWith(whole(3)))).toBe(78);
    expect(Math.round(100 * chanceWith(end(3)))).toBe(80);
    // The same at shots that this one has still to make is bad news.
    expect(Math.round(100 * chanceWith(end(260)))).toBeLessThan(Math.round(100 * chanceWith(whole(260))));
  });

  it('never improves for any mould with more failures, or earlier ones, when the shape is known', () => {
    const known: LifePrior = { ...LIFE_PRIOR, shapes: [Math.log(2), Math.log(2)] };
    fc.assert(
      fc.property(
        someLives,
        fc.integer({ min: 2, max: 300 }),
        fc.integer({ min: 1, max: 200 }),
        fc.integer({ min: 1, max: 300 }),
        (lives, shots, more, at) => {
          const chanceWith = (...added: Lifetime[]) =>
            chanceOfMore(posteriorOf(relative([...lives, whole(shots), ...added]), known), shots, 120, more);
          expect(chanceWith(end(at))).toBeLessThanOrEqual(chanceWith(whole(at)) + 1e-9);
          expect(chanceWith(end(at))).toBeLessThanOrEqual(chanceWith(end(at + 9)) + 1e-9);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('holds what it says in studios made up from its own belief (the bench takes more of them)', () => {
    const next = chance(4);
    const outcomes = Array.from({ length: 300 }, (_, i) =>
      studioOutcomes(truthFromPrior(next), [80, 200, 1000][i % 3] as number, 3 + Math.floor(next() * 15), next),
    ).flat();
    expect(outcomes.length).toBeGreaterThan(500);
    expect(Math.abs(percentOf(outcomes, ({ inHalf }) => inHalf) - 50)).toBeLessThan(6);
    expect(Math.abs(percentOf(outcomes, ({ inEighty }) => inEighty) - 80)).toBeLessThan(6);
    expect(Math.abs(percentOf(outcomes, ({ keptPromise }) => keptPromise) - 90)).toBeLessThan(4);
  });
});
