import { describe, expect, it } from 'vitest';
import type { Grams } from '../../src/domain/brand.ts';
import { waxUse } from '../../src/domain/wax-use.ts';
import { aWax, day } from '../support/builders.ts';

const TODAY = day('2025-04-10');
const plain = (over: Parameters<typeof aWax>[0]) => {
  const { keepGrams: _, ...wax } = aWax(over);
  return over && 'keepGrams' in over ? aWax(over) : wax;
};

describe('wax used, and how long what is left lasts', () => {
  it('divides the grams of the last months by the days since the first of them', () => {
    // 1 January to 10 April is 100 days.
    const use = waxUse(plain({ grams: 500, used: { '2025-01': 300, '2025-03': 150, '2025-04': 50 }, deliveryDays: 20 }), TODAY);
    expect(use.days).toBe(100);
    expect(use.gramsADay).toBeCloseTo(5, 9);
    expect(use.daysLeft).toBe(100);
    expect(use.usedInDelivery).toBeCloseTo(100, 9);
    expect(use.needed).toBeCloseTo(150, 9);
    expect(use.isLow).toBe(false);
  });

  it('leaves months older than half a year out, and months that have not come', () => {
    const use = waxUse(plain({ grams: 500, used: { '2024-09': 9000, '2025-03': 82, '2025-05': 7000 } }), TODAY);
    expect(use.days).toBe(41);
    expect(use.gramsADay).toBeCloseTo(2, 9);
  });

  it('counts the sixth month back, over the turn of the year', () => {
    expect(waxUse(plain({ used: { '2024-10': 10 } }), TODAY).gramsADay).toBeGreaterThan(0);
    expect(waxUse(plain({ used: { '2024-07': 10 } }), day('2025-01-02')).gramsADay).toBeGreaterThan(0);
    expect(waxUse(plain({ used: { '2024-06': 10 } }), day('2025-01-02')).gramsADay).toBe(0);
  });

  it('does not take a wax’s first days for its pace', () => {
    expect(waxUse(plain({ used: { '2025-04': 140 } }), TODAY).gramsADay).toBeCloseTo(5, 9);
  });

  it('is low just below what the delivery time asks for, with its margin', () => {
    const used = { '2025-01': 500 };
    expect(waxUse(plain({ grams: 150, used, deliveryDays: 20 }), TODAY).isLow).toBe(false);
    expect(waxUse(plain({ grams: 149.9, used, deliveryDays: 20 }), TODAY).isLow).toBe(true);
  });

  it('is low below what the studio keeps, used or not', () => {
    expect(waxUse(aWax({ grams: 749, keepGrams: 750 as Grams }), TODAY).isLow).toBe(true);
    expect(waxUse(aWax({ grams: 750, keepGrams: 750 as Grams }), TODAY).isLow).toBe(false);
  });

  it('says nothing about a wax that is neither used nor to be kept', () => {
    const use = waxUse(plain({ grams: 0 }), TODAY);
    expect(use.isLow).toBe(false);
    expect(use.daysLeft).toBeUndefined();
  });

  it('assumes a delivery time where none is given', () => {
    const { deliveryDays: _, ...wax } = plain({ used: { '2025-01': 100 } });
    expect(waxUse(wax, TODAY)).toMatchObject({ deliveryDays: 14, isDeliveryAssumed: true });
  });
});
