import type { Celsius, Grams, Kilopascals, Millimetres } from './brand.ts';

export const MASS_UNITS = ['g', 'dwt', 'oz t', 'oz'] as const;
export const LENGTH_UNITS = ['mm', 'in'] as const;
export const TEMPERATURE_UNITS = ['°C', '°F'] as const;
export const PRESSURE_UNITS = ['kPa', 'bar', 'psi'] as const;
export type MassUnit = (typeof MASS_UNITS)[number];
export type LengthUnit = (typeof LENGTH_UNITS)[number];
export type TemperatureUnit = (typeof TEMPERATURE_UNITS)[number];
export type PressureUnit = (typeof PRESSURE_UNITS)[number];

/** What figures are shown in; inside they are always g, mm, °C and kPa. */
export interface Units {
  readonly mass: MassUnit;
  readonly length: LengthUnit;
  readonly temperature: TemperatureUnit;
  readonly pressure: PressureUnit;
}
export const SI_UNITS: Units = { mass: 'g', length: 'mm', temperature: '°C', pressure: 'kPa' };

/** A grain is 64.79891 mg; a pennyweight 24 of them, a troy ounce 480, an avoirdupois ounce 437.5. */
const GRAIN = 0.06479891;
const GRAMS_IN: Readonly<Record<MassUnit, number>> = { g: 1, dwt: 24 * GRAIN, 'oz t': 480 * GRAIN, oz: 437.5 * GRAIN };
const MM_IN: Readonly<Record<LengthUnit, number>> = { mm: 1, in: 25.4 };
/** 1 psi = 0.45359237 kg × 9.80665 m/s² over (0.0254 m)². */
const KPA_IN: Readonly<Record<PressureUnit, number>> = { kPa: 1, bar: 100, psi: (0.45359237 * 9.80665) / 0.0254 ** 2 / 1000 };

export function massIn(grams: number, unit: MassUnit): number {
  return grams / GRAMS_IN[unit];
}
export function gramsFrom(mass: number, unit: MassUnit): Grams {
  return (mass * GRAMS_IN[unit]) as Grams;
}
export function lengthIn(mm: number, unit: LengthUnit): number {
  return mm / MM_IN[unit];
}
export function mmFrom(length: number, unit: LengthUnit): Millimetres {
  return (length * MM_IN[unit]) as Millimetres;
}
/** °F = °C × 1.8 + 32. */
export function temperatureIn(celsius: number, unit: TemperatureUnit): number {
  return unit === '°F' ? celsius * 1.8 + 32 : celsius;
}
export function celsiusFrom(temperature: number, unit: TemperatureUnit): Celsius {
  return (unit === '°F' ? (temperature - 32) / 1.8 : temperature) as Celsius;
}
export function pressureIn(kpa: number, unit: PressureUnit): number {
  return kpa / KPA_IN[unit];
}
export function kpaFrom(pressure: number, unit: PressureUnit): Kilopascals {
  return (pressure * KPA_IN[unit]) as Kilopascals;
}
