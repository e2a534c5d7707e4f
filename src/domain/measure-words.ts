import { lengthIn, massIn, pressureIn, SI_UNITS, temperatureIn, type Units } from './units.ts';

const MINUS = '\u2212';
/** Decimals that a number can be written with. */
const PLACES_MOST = 6;

/** A figure to at most `places` decimals, without trailing zeros, thousands set apart by a thin space, with a true minus sign. */
export function sayNumber(value: number, places = 0): string {
  const fixed = Math.abs(value).toFixed(places);
  const [whole = '', part = ''] = fixed.split('.');
  const decimals = part.replace(/0+$/, '');
  const spaced = whole.replace(/\B(?=(\d{3})+$)/g, '\u202f');
  const isNegative = value < 0 && Number(fixed) !== 0;
  return (isNegative ? MINUS : '') + spaced + (decimals ? `.${decimals}` : '');
}

/** `low` to `high` with the unit once: “60–65 °C”; negative figures are kept apart by the word “to”. */
function sayRange(low: number, high: number, places: number, unit: string): string {
  const [from, to] = [sayNumber(low, places), sayNumber(high, places)];
  if (from === to) return `${from} ${unit}`;
  return `${from}${low < 0 || high < 0 ? ' to ' : '–'}${to} ${unit}`;
}

export function sayMass(grams: number, { mass }: Units = SI_UNITS): string {
  const value = massIn(grams, mass);
  const places = mass === 'g' ? (Math.abs(value) < 20 ? 1 : 0) : Math.abs(value) < 20 ? 2 : 1;
  return `${sayNumber(value, places)} ${mass}`;
}

export function sayLength(mm: number, { length }: Units = SI_UNITS): string {
  return `${sayNumber(lengthIn(mm, length), length === 'mm' ? 1 : 2)} ${length}`;
}

const TEMPERATURE_PLACES = { '°C': 1, '°F': 0 } as const;

/** The figure as it is shown, for comparing what somebody reads on the screen with what they type. */
export function shownTemperature(celsius: number, { temperature }: Units = SI_UNITS): number {
  return Number(temperatureIn(celsius, temperature).toFixed(TEMPERATURE_PLACES[temperature]));
}

export function sayTemperature(celsius: number, { temperature }: Units = SI_UNITS): string {
  return `${sayNumber(temperatureIn(celsius, temperature), TEMPERATURE_PLACES[temperature])} ${temperature}`;
}

export function sayTemperatures(lowC: number, highC: number, { temperature }: Units = SI_UNITS): string {
  return sayRange(temperatureIn(lowC, temperature), temperatureIn(highC, temperature), TEMPERATURE_PLACES[temperature], temperature);
}

const PRESSURE_PLACES = { kPa: 0, bar: 2, psi: 1 } as const;

/** A small pressure keeps two figures that count: 0.6 kPa is not 1 kPa. */
function pressurePlaces(value: number, { pressure }: Units): number {
  const least = value > 0 ? 1 - Math.floor(Math.log10(value)) : 0;
  return Math.min(Math.max(PRESSURE_PLACES[pressure], least), PLACES_MOST);
}

export function sayPressure(kpa: number, units: Units = SI_UNITS): string {
  const value = pressureIn(kpa, units.pressure);
  return `${sayNumber(value, pressurePlaces(value, units))} ${units.pressure}`;
}

export function sayPressures(lowKpa: number, highKpa: number, units: Units = SI_UNITS): string {
  const [low, high] = [pressureIn(lowKpa, units.pressure), pressureIn(highKpa, units.pressure)];
  return sayRange(low, high, Math.max(pressurePlaces(low, units), pressurePlaces(high, units)), units.pressure);
}

/** “1 shot”, “2 shots”. */
export function sayCount(count: number, one: string, many = `${one}s`): string {
  return `${sayNumber(count)} ${count === 1 ? one : many}`;
}
