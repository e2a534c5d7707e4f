/** Waxes, injectors, flasks and the workshop’s months. Ranges are this invented studio’s own figures; colours mean nothing by themselves. */
export interface WaxRow {
  readonly key: string;
  readonly name: string;
  readonly colour: string;
  readonly behaviour: string;
  readonly use: string;
  readonly pressure?: string;
  readonly roomLowC: number;
  readonly roomHighC: number;
  readonly injectLowC: number;
  readonly injectHighC: number;
  readonly pressureLowKpa?: number;
  readonly pressureHighKpa?: number;
  readonly deliveryDays: number;
  readonly keepGrams: number;
  readonly start: number;
}

export const WAXES: readonly WaxRow[] = [
  {
    key: 'amber',
    name: 'Amber',
    colour: 'amber',
    behaviour: 'All-round: bends a little, takes detail, easy to dress.',
    use: 'injecting',
    pressure: 'any',
    roomLowC: 16,
    roomHighC: 26,
    injectLowC: 66,
    injectHighC: 72,
    pressureLowKpa: 40,
    pressureHighKpa: 90,
    deliveryDays: 12,
    keepGrams: 2000,
    start: 9200,
  },
  {
    key: 'green',
    name: 'Green',
    colour: 'green',
    behaviour: 'For the high-pressure injector: runs into thin work, short when pushed by hand.',
    use: 'injecting',
    pressure: 'needs high',
    roomLowC: 14,
    roomHighC: 25,
    injectLowC: 68,
    injectHighC: 75,
    pressureLowKpa: 140,
    pressureHighKpa: 260,
    deliveryDays: 18,
    keepGrams: 1500,
    start: 6400,
  },
  {
    key: 'violet',
    name: 'Violet',
    colour: 'violet',
    behaviour: 'Tolerates cold: stays tough in winter, grows too flexible in great heat.',
    use: 'injecting',
    pressure: 'any',
    roomLowC: 8,
    roomHighC: 20,
    injectLowC: 62,
    injectHighC: 68,
    pressureLowKpa: 35,
    pressureHighKpa: 80,
    deliveryDays: 21,
    keepGrams: 2500,
    start: 7800,
  },
  {
    key: 'grey',
    name: 'Grey',
    colour: 'grey',
    behaviour: 'For hot rooms: holds its shape in summer, brittle below 22 °C.',
    use: 'injecting',
    pressure: 'any',
    roomLowC: 22,
    roomHighC: 32,
    injectLowC: 70,
    injectHighC: 76,
    pressureLowKpa: 45,
    pressureHighKpa: 95,
    deliveryDays: 21,
    keepGrams: 1200,
    start: 3900,
  },
  {
    key: 'white',
    name: 'White sticky',
    colour: 'white',
    behaviour: 'Sticky wax: holds a piece on its tree, melts lower than injection wax.',
    use: 'sticky',
    roomLowC: 10,
    roomHighC: 30,
    injectLowC: 60,
    injectHighC: 75,
    deliveryDays: 10,
    keepGrams: 200,
    start: 850,
  },
];

export const INJECTORS = [
  { key: 'hand', name: 'Hand pump', pressure: 'hand', maxKpa: 70, holds: 'amber' },
  { key: 'low', name: 'Bench pot', pressure: 'low', maxKpa: 110, holds: 'violet' },
  { key: 'high', name: 'Tall press', pressure: 'high', maxKpa: 300, holds: 'green' },
];

/** The wax the two small injectors are filled with from the first work day of a month, where it changes. */
export const REFILLS: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  '2025-04': { low: 'amber' },
  '2025-07': { low: 'grey', hand: 'grey' },
  '2025-09': { low: 'amber', hand: 'amber' },
  '2025-11': { low: 'violet' },
  '2026-04': { low: 'amber' },
  '2026-07': { low: 'grey', hand: 'grey' },
  '2026-09': { low: 'amber' },
  '2026-11': { low: 'violet' },
};

export const FLASKS = [
  { name: 'Flask 1', metal: 'bronze', diameterMm: 89, heightMm: 127 },
  { name: 'Flask 2', metal: 'bronze', diameterMm: 89, heightMm: 127 },
  { name: 'Flask 3', metal: 'bronze', diameterMm: 102, heightMm: 152 },
  { name: 'Flask 4', metal: 'silver', diameterMm: 64, heightMm: 102 },
  { name: 'Flask 5', metal: 'silver', diameterMm: 64, heightMm: 102 },
  { name: 'Flask 6', metal: 'brass', diameterMm: 89, heightMm: 102 },
  { name: 'Flask 7', metal: 'pewter', diameterMm: 76, heightMm: 102 },
  { name: 'Flask 8', metal: 'pewter', diameterMm: 102, heightMm: 127 },
];

const LOWS = [11, 11, 12, 13, 15, 17, 19, 19, 17, 15, 13, 12];
const HIGHS = [16, 16, 17, 19, 21, 24, 27, 28, 24, 20, 18, 16];

/** A workshop by the sea, northern hemisphere, heated a little in winter. Shot lives are from memory; each studio sets its own. */
export const STUDIO = {
  name: 'Tern Quay Foundry',
  hemisphere: 'north',
  months: Object.fromEntries(LOWS.map((lowC, i) => [String(i + 1), { lowC, highC: HIGHS[i] }])),
  life: {
    natural: { shots: 2000, years: 20 },
    'vulcanised silicone': { shots: 1000, years: 15 },
    'platinum silicone': { shots: 250, years: 20 },
    'tin silicone': { shots: 80, years: 5 },
  },
  lookDays: 365,
};

export function roomRange(day: string) {
  const month = Number(day.slice(5, 7)) - 1;
  return { low: LOWS[month] as number, high: HIGHS[month] as number };
}

/** Grams of metal for a gram of wax, at wax 0.95 g/ml. */
export const METAL_FOR_WAX = { pewter: 7.66, bronze: 9.26, brass: 8.94, silver: 10.91, gold: 16.4 };
