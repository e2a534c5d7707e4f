import { celsiusFrom, gramsFrom, kpaFrom, mmFrom } from '../units.ts';

type Convert = (value: number) => number;

const times = (factor: number) => (value: number) => value * factor;
export const asIs: Convert = (value) => value;

/** To g, mm, °C, kPa, s and days, by the words for each unit. 1 lb = 0.45359237 kg and 1 atm = 101.325 kPa by definition. */
const WORDS = {
  grams: [
    ['g gr gm gms gram grams gramme grammes', asIs],
    ['kg kilo kilos', times(1000)],
    ['mg', times(0.001)],
    ['dwt', (dwt) => gramsFrom(dwt, 'dwt')],
    ['ozt', (ozt) => gramsFrom(ozt, 'oz t')],
    ['oz', (oz) => gramsFrom(oz, 'oz')],
    ['lb lbs', times(453.59237)],
  ],
  mm: [
    ['mm', asIs],
    ['cm', times(10)],
    ['m', times(1000)],
    ['in inch inches "', (inches) => mmFrom(inches, 'in')],
  ],
  celsius: [
    ['c °c ° deg degc', asIs],
    ['f °f degf', (fahrenheit) => celsiusFrom(fahrenheit, '°F')],
  ],
  kpa: [
    ['kpa', asIs],
    ['bar bars', times(100)],
    ['psi', (psi) => kpaFrom(psi, 'psi')],
    ['mbar', times(0.1)],
    ['mpa', times(1000)],
    ['atm', times(101.325)],
  ],
  seconds: [
    ['s sec secs second seconds', asIs],
    ['min mins', times(60)],
  ],
  days: [
    ['d day days', asIs],
    ['week weeks wk wks', times(7)],
    ['month months', times(30)],
  ],
  order: [['no', asIs]],
  count: [['pc pcs piece pieces shot shots x off st no waxes pulls cavities', asIs]],
} as const satisfies Record<string, readonly (readonly [string, Convert])[]>;
export type Quantity = keyof typeof WORDS;

const BY_QUANTITY = new Map(
  Object.entries(WORDS).map(([quantity, lines]) => [
    quantity,
    new Map(
      lines.flatMap(([words, convert]: readonly [string, Convert]) => words.split(' ').map((word): [string, Convert] => [word, convert])),
    ),
  ]),
);
const ALL_UNITS = new Set([...BY_QUANTITY.values()].flatMap((units) => [...units.keys()]));

/** How a figure in the unit so called becomes g, mm, °C, kPa, s or days; undefined when it is no unit of that quantity. */
export function conversion(quantity: Quantity, unit: string): Convert | undefined {
  return unit === '' ? asIs : BY_QUANTITY.get(quantity)?.get(unit.toLowerCase());
}

/** The unit a heading ends in, or is: “Stock (kg)”, “Length mm”, “bar”. */
export function unitOfHeading(heading: string): string | undefined {
  const unit = /(?:^|[([/,]|\s)\s*(?:in\s+)?([a-z°"]+)\.?\s*[)\]]?\s*$/i.exec(ozt(heading).trim())?.[1]?.toLowerCase();
  return unit !== undefined && ALL_UNITS.has(unit) && unit !== 'no' && unit !== 'in' ? unit : undefined;
}

/** “oz t” and “troy oz” as one word. */
export function ozt(text: string): string {
  return text.replace(/\boz\.?\s*t\b\.?|\btroy\s+oz\b\.?/i, 'ozt');
}
