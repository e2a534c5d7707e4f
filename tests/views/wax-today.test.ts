import { describe, expect, it } from 'vitest';
import type { Celsius, Kilopascals } from '../../src/domain/brand.ts';
import { SI_UNITS } from '../../src/domain/units.ts';
import { waxToday } from '../../src/views/wax-today.ts';
import { anInjector, aShelf, aWax, day } from '../support/builders.ts';

const TODAY = day('2025-12-09');
const c = (value: number) => value as Celsius;
const cold = aWax({
  name: 'Cold',
  roomLowC: c(8),
  roomHighC: c(19),
  grams: 900,
  used: { '2025-10': 700 },
  pressureLowKpa: 35 as Kilopascals,
  pressureHighKpa: 80 as Kilopascals,
});
const hot = aWax({ name: 'Hot', roomLowC: c(23), roomHighC: c(33) });
const sticky = aWax({ name: 'Sticky', use: 'sticky' });
const old = aWax({ name: 'Old', retired: { on: day('2025-01-01'), reason: 'not wanted' } });
const pot = anInjector({ holds: cold.id });
const studio = { months: { '12': { lowC: c(9), highC: c(16) } } };
const shelf = aShelf([hot, sticky, cold, old, pot], { studio });

describe('wax for today', () => {
  it('judges by the month when no temperature was read, best first, without retired waxes', () => {
    const view = waxToday(shelf, TODAY, undefined, SI_UNITS);
    expect(view.cards.map(({ name, verdict }) => [name, verdict])).toEqual([
      ['Cold', 'yes'],
      ['Hot', 'no'],
      ['Sticky', 'no'],
    ]);
    expect(view).toMatchObject({ month: 'December', season: 'winter', assumedC: 12.5, room: { isOwn: true } });
  });

  it('judges by the temperature when there is one', () => {
    const view = waxToday(shelf, TODAY, 28, SI_UNITS);
    expect(view.cards[0]).toMatchObject({ name: 'Hot', verdict: 'yes' });
    expect(view.cards.find(({ name }) => name === 'Cold')?.verdict).toBe('no');
  });

  it('names the season of the south', () => {
    expect(waxToday(aShelf([], { studio: { hemisphere: 'south' } }), TODAY, undefined, SI_UNITS).season).toBe('summer');
  });

  it('says how much is left, what it rests on, how it is injected and what holds it', () => {
    // 1 October to 9 December is 70 days: 10 g a day.
    const card = waxToday(shelf, TODAY, undefined, SI_UNITS).cards[0];
    expect(card).toMatchObject({
      left: '900 g left, about 3 months’ worth',
      leftWhy: '10 g a day over the last 2 months',
      heat: '63–71 °C',
      pressure: '35–80 kPa',
      isLow: false,
      heldBy: [{ name: 'Big pot' }],
    });
  });

  it('speaks in the units of this device', () => {
    const units = { mass: 'oz t', length: 'in', temperature: '°F', pressure: 'psi' } as const;
    const card = waxToday(shelf, TODAY, 28, units).cards.find(({ name }) => name === 'Cold');
    expect(card).toMatchObject({ heat: '145–160 °F', pressure: '5.1–11.6 psi' });
    expect(card?.left).toContain('28.9 oz t left');
    expect(card?.reasons[0]?.says).toBe('Too soft above 66 °F: it bends.');
  });

  it('offers no heat or pressure for sticky wax', () => {
    const card = waxToday(shelf, TODAY, undefined, SI_UNITS).cards.find(({ name }) => name === 'Sticky');
    expect(card?.heat).toBeUndefined();
    expect(card?.heldBy).toEqual([]);
  });
});
