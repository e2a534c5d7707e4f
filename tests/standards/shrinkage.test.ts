import { describe, expect, it } from 'vitest';
import { compound, masterFor, volumeFactor } from '../../src/domain/size/compound.ts';

const steps = (...percents: readonly number[]) => percents.map((percent) => ({ percent, spread: 0.1 }));

/** Factor = Π (1 − sᵢ), reckoned from shrinkages that are published; each row names where those stand. */
describe('compounded shrinkage', () => {
  it('of one casting house’s rubber 0 %, wax 2.5 %, metal 1.0 % is 3.475 %, where adding says 3.5 (artistryofgold.com, “Mold shrinkage”)', () => {
    const { factor, percent } = compound(steps(0, 2.5, 1));
    expect(factor).toBeCloseTo(0.96525, 6);
    expect(percent).toBeCloseTo(3.475, 3);
    expect((1 - volumeFactor(factor)) * 100).toBeCloseTo(10.067, 3);
  });

  it('over two generations of the same is 6.829 %', () => {
    const { factor, percent } = compound(steps(0, 2.5, 1, 0, 2.5, 1));
    expect(factor).toBeCloseTo(0.931708, 6);
    expect(percent).toBeCloseTo(6.829, 3);
  });

  it('of the old 8 % rule once and twice is 8 and 15.36 % (Donivan, castaldo.com: a 1 mm model gives a 0.92 mm wax)', () => {
    expect(compound(steps(8)).factor * 1).toBeCloseTo(0.92, 10);
    expect(compound(steps(8, 8)).factor).toBeCloseTo(0.8464, 10);
    expect(compound(steps(8, 8)).percent).toBeCloseTo(15.36, 10);
  });

  it('tells the master a 50 mm piece needs: 52.323 mm by 1, 2.5 and 1.0 %; 53.050 mm by 1.8, 2.5 and 1.56 %', () => {
    const modern = compound(steps(1, 2.5, 1));
    expect(modern.factor).toBeCloseTo(0.955598, 6);
    expect(modern.percent).toBeCloseTo(4.44, 3);
    expect(masterFor(50, modern.factor)).toBeCloseTo(52.323, 3);
    const bronze = compound(steps(1.8, 2.5, 1.56));
    expect(bronze.factor).toBeCloseTo(0.942514, 6);
    expect(bronze.percent).toBeCloseTo(5.749, 3);
    expect(masterFor(50, bronze.factor)).toBeCloseTo(53.05, 3);
  });

  it('of pewter poured straight into silicone leaves the wax out: 0.2 and 1.43 % are 1.627 %', () => {
    const { factor, percent } = compound(steps(0.2, 1.43));
    expect(factor).toBeCloseTo(0.983729, 6);
    expect(percent).toBeCloseTo(1.627, 3);
  });

  it('of a foot’s shrinkage in parts of an inch: 11/64 is 1.43 %, 3/16 is 1.56 % (Numismatic dictionary, nnp.library.wustl.edu)', () => {
    expect((11 / 64 / 12) * 100).toBeCloseTo(1.43, 2);
    expect((3 / 16 / 12) * 100).toBeCloseTo(1.56, 2);
  });
});
