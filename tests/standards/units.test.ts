import { describe, expect, it } from 'vitest';
import {
  celsiusFrom,
  gramsFrom,
  kpaFrom,
  lengthIn,
  MASS_UNITS,
  massIn,
  mmFrom,
  PRESSURE_UNITS,
  pressureIn,
  temperatureIn,
} from '../../src/domain/units.ts';

describe('weights', () => {
  // Troy ounce 31.1034768 g exactly, 480 grains of 64.79891 mg (statemaster.com, auminer.com).
  it('has a troy ounce of 480 grains', () => {
    expect(gramsFrom(1, 'oz t')).toBeCloseTo(31.1034768, 9);
    expect(gramsFrom(1, 'oz t')).toBeCloseTo(480 * 0.06479891, 12);
  });

  // Pennyweight 24 grains = 1.55517384 g; 20 to the troy ounce; 1 g = 0.6430149 dwt = 0.0321507 ozt (auminer.com).
  it('has twenty pennyweights to the troy ounce', () => {
    expect(gramsFrom(1, 'dwt')).toBeCloseTo(1.55517384, 9);
    expect(gramsFrom(20, 'dwt')).toBeCloseTo(gramsFrom(1, 'oz t'), 12);
    expect(massIn(1, 'dwt')).toBeCloseTo(0.6430149, 7);
    expect(massIn(1, 'oz t')).toBeCloseTo(0.0321507, 7);
    expect(massIn(100, 'oz t')).toBeCloseTo(3.215075, 6);
  });

  // Avoirdupois ounce 28.349523125 g (statemaster.com).
  it('has an avoirdupois ounce lighter than the troy one', () => {
    expect(gramsFrom(1, 'oz')).toBeCloseTo(28.349523125, 9);
  });
});

describe('temperature, length and pressure', () => {
  // °C = (°F − 32) / 1.8. 1350 °F is 732.2 °C and 560 °F 293.3 °C (arithmetic on burn-out and pewter figures).
  it('turns Fahrenheit into Celsius', () => {
    expect(celsiusFrom(1350, '°F')).toBeCloseTo(732.2, 1);
    expect(celsiusFrom(560, '°F')).toBeCloseTo(293.3, 1);
    expect(temperatureIn(100, '°F')).toBeCloseTo(212, 12);
    expect(temperatureIn(-40, '°F')).toBeCloseTo(-40, 12);
  });

  // An inch is 25.4 mm: 1 in³ = 16.387064 cm³.
  it('turns inches into millimetres', () => {
    expect((mmFrom(1, 'in') / 10) ** 3).toBeCloseTo(16.387064, 6);
    expect(lengthIn(50.8, 'in')).toBeCloseTo(2, 12);
  });

  // 1 psi = 0.0689476 bar; injectors at 3, 7, 10 and 15 psi are 0.21, 0.48, 0.69 and 1.03 bar (derived from katadair.com, Orchid 12622).
  it('turns psi into kPa and bar', () => {
    expect(pressureIn(kpaFrom(1, 'psi'), 'bar')).toBeCloseTo(0.0689476, 7);
    for (const [psi, bar] of [
      [3, 0.21],
      [7, 0.48],
      [10, 0.69],
      [15, 1.03],
    ] as const) {
      expect(pressureIn(kpaFrom(psi, 'psi'), 'bar')).toBeCloseTo(bar, 2);
    }
    expect(kpaFrom(1, 'bar')).toBe(100);
  });

  it('comes back from every unit to where it started', () => {
    for (const unit of MASS_UNITS) expect(gramsFrom(massIn(73.25, unit), unit)).toBeCloseTo(73.25, 9);
    for (const unit of PRESSURE_UNITS) expect(kpaFrom(pressureIn(61.5, unit), unit)).toBeCloseTo(61.5, 9);
    expect(celsiusFrom(temperatureIn(18.5, '°F'), '°F')).toBeCloseTo(18.5, 9);
  });
});
