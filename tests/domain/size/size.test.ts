import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { kinOf } from '../../../src/domain/lineage/kin.ts';
import type { Mould } from '../../../src/domain/shelf.ts';
import { ALLOWANCE_KEYS, allowanceFor, DEFAULT_ALLOWANCE } from '../../../src/domain/size/allowance.ts';
import { compound } from '../../../src/domain/size/compound.ts';
import { expectedCastings, smallerThanLabel } from '../../../src/domain/size/expected.ts';
import { ladderOf, nearestRung } from '../../../src/domain/size/ladder.ts';
import { Learned, learnedFrom, PIECE_SPREAD, pairsOf } from '../../../src/domain/size/learn.ts';
import { withReadings } from '../../../src/domain/size/reading.ts';
import { idOf, type Made, shelfOf } from '../../support/shelf-of.ts';

const allowance = fc.record({
  percent: fc.double({ min: -2, max: 15, noNaN: true }),
  spread: fc.double({ min: 0.01, max: 3, noNaN: true }),
});

describe('steps one after another', () => {
  it('give the same however they are grouped, and in whatever order', () => {
    fc.assert(
      fc.property(fc.array(allowance, { minLength: 1, maxLength: 8 }), fc.nat(), (steps, cut) => {
        const at = cut % (steps.length + 1);
        const whole = compound(steps);
        const [first, second] = [compound(steps.slice(0, at)), compound(steps.slice(at))];
        expect(first.factor * second.factor).toBeCloseTo(whole.factor, 10);
        expect(Math.hypot(first.relative, second.relative)).toBeCloseTo(whole.relative, 10);
        const back = compound([...steps].reverse());
        expect(back.factor).toBeCloseTo(whole.factor, 10);
        expect(back.relative).toBeCloseTo(whole.relative, 10);
      }),
    );
  });

  it('add their spreads in quadrature', () => {
    const { factor, relative } = compound([
      { percent: 3, spread: 0.97 * 3 },
      { percent: 2, spread: 0.98 * 4 },
    ]);
    expect(factor).toBeCloseTo(0.9506, 10);
    expect(relative).toBeCloseTo(0.05, 10);
  });
});

const step = (key: string, percent: number, spread: number) => ({ key, says: key, prior: { percent, spread } });

describe('what readings teach', () => {
  it('is the allowance in hand until somebody measures, with the spread of single pieces added', () => {
    const steps = [step('wax', 4, 1), step('metal', 1.5, 0.3)];
    const { factor, relative, readings } = new Learned().over(steps);
    const plain = compound(steps.map(({ prior }) => prior));
    expect(factor).toBeCloseTo(plain.factor, 12);
    expect(relative).toBeCloseTo(Math.hypot(plain.relative, PIECE_SPREAD * Math.SQRT2), 12);
    expect(readings).toBe(0);
  });

  it('of one step is the normal–normal update: weights are the inverse variances', () => {
    const learned = new Learned();
    const wax = step('wax', 4, 1);
    const prior = { mean: Math.log(0.96), variance: (0.01 / 0.96) ** 2 };
    const readings = [Math.log(0.97), Math.log(0.972), Math.log(0.969)];
    const noise = 0.003 ** 2;
    for (const reading of readings) learned.take([wax], reading, noise);
    const precision = 1 / prior.variance + readings.length / noise;
    const mean = (prior.mean / prior.variance + readings.reduce((sum, each) => sum + each, 0) / noise) / precision;
    const told = learned.over([wax]);
    expect(Math.log(told.factor)).toBeCloseTo(mean, 12);
    expect(told.relative).toBeCloseTo(Math.sqrt(1 / precision + PIECE_SPREAD ** 2), 12);
    expect(told.readings).toBe(3);
  });

  it('of a sum is known better than of its parts, and the wider part moves more', () => {
    const [wax, metal] = [step('wax', 4, 1), step('metal', 1.5, 0.3)];
    const learned = new Learned();
    for (let i = 0; i < 12; i++) learned.take([wax, metal], Math.log(0.93), 0.003 ** 2);
    const sum = learned.over([wax, metal]);
    expect(sum.factor).toBeCloseTo(0.93, 3);
    expect(sum.relative).toBeLessThan(0.004);
    expect(learned.over([wax]).relative).toBeGreaterThan(0.002);
    const moved = (key: typeof wax) => Math.abs(Math.log(learned.over([key]).factor) - Math.log(1 - key.prior.percent / 100));
    expect(moved(wax)).toBeGreaterThan(5 * moved(metal));
  });

  it('does not depend on the order of the readings', () => {
    const [wax, metal] = [step('wax', 4, 1), step('metal', 1.5, 0.3)];
    const readings = [
      { steps: [wax], log: -0.03 },
      { steps: [wax, metal], log: -0.05 },
      { steps: [wax, metal, wax], log: -0.09 },
      { steps: [metal], log: -0.012 },
    ];
    const taught = (order: typeof readings) => {
      const learned = new Learned();
      for (const { steps, log } of order) learned.take(steps, log, 1e-5);
      return learned.over([wax, metal]);
    };
    const one = taught(readings);
    const other = taught([...readings].reverse());
    expect(other.factor).toBeCloseTo(one.factor, 10);
    expect(other.relative).toBeCloseTo(one.relative, 10);
  });
});

const things = (over: readonly Made[] = []): readonly Made[] => [
  { noun: 'wax', is: 'green', name: 'Green' },
  {
    noun: 'design',
    is: 'owl',
    name: 'Owl',
    metals: ['bronze', 'pewter'],
    sizes: [
      { label: 'small', mm: 20 },
      { label: 'large', mm: 21 },
    ],
  },
  { noun: 'master', is: 'original', kind: 'original', design: idOf('owl'), lengthMm: 21.6 },
  { noun: 'mould', is: 'first', master: idOf('original'), rubber: 'vulcanised silicone', wax: idOf('green'), purpose: 'intermediate' },
  { noun: 'master', is: 'dressed', kind: 'dressed wax', from: [idOf('first')], design: idOf('owl') },
  {
    noun: 'mould',
    is: 'second',
    master: idOf('dressed'),
    rubber: 'vulcanised silicone',
    wax: idOf('green'),
    design: idOf('owl'),
    size: 'large',
  },
  ...over,
];

describe('the size to expect', () => {
  const shelf = shelfOf(things());
  const second = shelf.things.mould.get(idOf('second')) as Mould;

  it('compounds every step since the nearest reading, in each metal of the design', () => {
    const [bronze, pewter] = expectedCastings(shelf, second);
    const of = (...keys: readonly (typeof ALLOWANCE_KEYS)[number][]) => compound(keys.map((key) => DEFAULT_ALLOWANCE[key])).factor;
    const rubberAndWax = of('vulcanised silicone', 'wax');
    expect(bronze?.metal).toBe('bronze');
    expect(bronze?.percent).toBeCloseTo((1 - rubberAndWax * of('bronze')) * 100, 8);
    expect(bronze?.size?.mm).toBeCloseTo(21.6 * rubberAndWax * of('dressing') * rubberAndWax * of('bronze'), 8);
    expect(bronze?.sinceOriginal).toBeCloseTo((1 - rubberAndWax ** 2 * of('dressing', 'bronze')) * 100, 8);
    expect(bronze?.masterMm).toBeCloseTo(21 / (rubberAndWax * of('bronze')), 8);
    expect(pewter?.size?.mm).toBeGreaterThan(bronze?.size?.mm ?? 0);
  });

  it('warns where castings come out nearer to a smaller size than to their label, and not of an intermediate mould', () => {
    expect(smallerThanLabel(shelf, second)).toMatchObject({ metal: 'bronze', label: { label: 'large' }, nearest: { label: 'small' } });
    expect(smallerThanLabel(shelf, { ...second, size: 'small' })).toBeUndefined();
    expect(smallerThanLabel(shelf, { ...second, purpose: 'intermediate' })).toBeUndefined();
    const big = shelfOf(
      things([{ noun: 'casting', is: 'none' }]).map((made) => (made.is === 'original' ? { ...made, lengthMm: 24 } : made)),
    );
    expect(smallerThanLabel(big, big.things.mould.get(idOf('second')) as Mould)).toBeUndefined();
  });

  it('leaves the wax out where a design is poured straight into the mould', () => {
    const poured = shelfOf(things().map((made) => (made.is === 'owl' ? { ...made, route: 'poured in the mould' } : made)));
    const [bronze] = expectedCastings(poured, poured.things.mould.get(idOf('second')) as Mould);
    expect(bronze?.percent).toBeCloseTo(compound([DEFAULT_ALLOWANCE['vulcanised silicone'], DEFAULT_ALLOWANCE.bronze]).percent, 8);
  });

  it('learns from a master and a wax measured at the same place, and says from how many readings', () => {
    const measured = shelfOf(
      things([
        {
          noun: 'injectedWax',
          is: 'pile',
          mould: idOf('first'),
          wax: idOf('green'),
          state: 'raw',
          measured: {
            on: '2024-03-07',
            sizes: [
              { name: 'Length', mm: 21.6 * 0.99 },
              { name: 'wing', mm: 4 },
            ],
          },
        },
      ]),
    );
    const [pair, ...others] = pairsOf(measured, kinOf(measured, idOf('pile')) as never);
    expect(others).toEqual([]);
    expect(pair).toMatchObject({ parentMm: 21.6, steps: [{ key: `vulcanised silicone+${idOf('green')}` }] });
    const [before, after] = [shelf, measured].map((each) => expectedCastings(each, each.things.mould.get(idOf('second')) as Mould)[0]);
    expect(before?.readings).toBe(0);
    expect(after?.readings).toBe(1);
    expect(after?.percent).toBeLessThan(before?.percent ?? 0);
    expect(after?.percentSpread).toBeLessThan(before?.percentSpread ?? 0);
  });

  it('learns nothing from a slip of the caliper', () => {
    const slip = (mm: number) =>
      shelfOf(
        things([
          {
            noun: 'injectedWax',
            is: 'pile',
            mould: idOf('first'),
            wax: idOf('green'),
            measured: { on: '2024-03-07', sizes: [{ name: 'length', mm }] },
          },
        ]),
      );
    const readings = (mm: number) => learnedFrom(slip(mm)).readingsFor(`vulcanised silicone+${idOf('green')}`);
    expect([21.5, 216, 2.15].map(readings)).toEqual([1, 0, 0]);
  });
});

describe('allowances', () => {
  it('are the studio’s own where it has some, else a default with its source', () => {
    expect(allowanceFor({}, 'wax')).toMatchObject({ percent: 2.5, isOwn: false, from: DEFAULT_ALLOWANCE.wax.source });
    expect(allowanceFor({ allowance: { wax: { percent: 1.9 } } }, 'wax')).toEqual({
      percent: 1.9,
      spread: 0.8,
      from: 'the studio’s figure',
      isOwn: true,
    });
    for (const key of ALLOWANCE_KEYS) expect(DEFAULT_ALLOWANCE[key].source.length).toBeGreaterThan(8);
  });
});

describe('readings and ladders', () => {
  it('keep the last reading of each dimension, whatever its letters’ case', () => {
    expect(
      withReadings(
        [
          { name: 'Length', mm: 20 },
          { name: 'band', mm: 3 },
        ],
        [{ name: 'length', mm: 19.9 }],
      ),
    ).toEqual([
      { name: 'band', mm: 3 },
      { name: 'length', mm: 19.9 },
    ]);
  });

  it('find the nearest size, of two as near the smaller, and read a ring’s label as its inside', () => {
    const design = { sizes: [{ label: 'L', mm: 24 }, { label: 'M', mm: 20 }, { label: 'bare' }, { label: 'US 7' }] };
    const ladder = ladderOf(design as never);
    expect(ladder.map(({ label }) => label)).toEqual(['US 7', 'M', 'L']);
    expect(nearestRung(ladder, 22)?.label).toBe('M');
    expect(ladder[0]?.mm).toBeCloseTo(17.32, 2);
  });
});
