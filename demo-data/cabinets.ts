/** Rooms, cabinets and what is drawn on their fronts: boxes in mm from the front’s left and top edge, tiled with rails between. */
/** A share of the height, and shares of the width. */
type Row = readonly [number, readonly number[]];

const RAIL = 12;

/** Fills a front with rows; each row has a share of the height and shares of the width for the fronts in it. */
function tile(width: number, height: number, rows: readonly Row[]) {
  const boxes: Box[] = [];
  const tall = rows.reduce((sum, [share]) => sum + share, 0);
  const free = height - RAIL * (rows.length + 1);
  let y = RAIL;
  for (const [share, columns] of rows) {
    const h = Math.floor((free * share) / tall);
    const wide = columns.reduce((sum, each) => sum + each, 0);
    const freeWidth = width - RAIL * (columns.length + 1);
    let x = RAIL;
    for (const column of columns) {
      const w = Math.floor((freeWidth * column) / wide);
      boxes.push({ x, y, w, h });
      x += w + RAIL;
    }
    y += h + RAIL;
  }
  return boxes;
}

const rows = (count: number, columns: readonly number[]): Row[] => Array.from({ length: count }, () => [1, columns]);

/** `for` and `periods` of each front in turn: a word for the period keys it holds, `-` for any. */
const list = (text: string) => text.trim().split(/\s+/);

interface Box {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

export interface Cabinet {
  readonly letter: string;
  readonly name: string;
  readonly room: string;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly kind: string;
  readonly for: string;
  readonly capacity: number;
  readonly boxes: readonly Box[];
  readonly periods: readonly string[];
  readonly castingsFrom?: number;
  readonly open?: boolean;
  readonly names?: readonly string[];
}

export const CABINETS: readonly Cabinet[] = [
  {
    letter: 'A',
    name: 'Plan chest',
    room: 'loft',
    widthMm: 1250,
    heightMm: 880,
    kind: 'drawer',
    for: 'masters',
    capacity: 30,
    boxes: tile(1250, 880, rows(8, [1])),
    periods: list('minoan+coptic hallstatt latene etruscan hellenistic carolingian+ottoman georgian nouveau+stage'),
  },
  {
    letter: 'B',
    name: 'Card index',
    room: 'workshop',
    widthMm: 920,
    heightMm: 1040,
    kind: 'drawer',
    for: 'injected waxes',
    capacity: 320,
    boxes: tile(920, 1040, rows(5, [1, 1, 1, 1])),
    periods: list(
      'minoan hallstatt etruscan latene latene hellenistic hellenistic coptic carolingian ottoman georgian nouveau georgian+stage minoan minoan hallstatt etruscan coptic carolingian ottoman',
    ),
    castingsFrom: 15,
  },
  {
    letter: 'C',
    name: 'Tall cabinet',
    room: 'workshop',
    widthMm: 620,
    heightMm: 1900,
    kind: 'drawer',
    for: 'moulds',
    capacity: 14,
    boxes: tile(620, 1900, [
      [1, [1, 1]],
      [1, [1, 1]],
      [1, [1, 1]],
      [1.6, [1]],
      [1.6, [1]],
      [2, [1]],
      [2, [1]],
      [2.6, [1]],
      [2.6, [1]],
    ]),
    periods: list('minoan minoan hallstatt hallstatt coptic coptic etruscan etruscan carolingian latene latene latene'),
  },
  {
    letter: 'D',
    name: 'Two-column chest',
    room: 'workshop',
    widthMm: 1040,
    heightMm: 1180,
    kind: 'drawer',
    for: 'moulds',
    capacity: 14,
    boxes: tile(1040, 1180, rows(6, [1, 1])),
    periods: list('hellenistic hellenistic hellenistic ottoman ottoman georgian georgian georgian nouveau nouveau carolingian stage'),
  },
  {
    letter: 'E',
    name: 'Open rack',
    room: 'loft',
    widthMm: 1600,
    heightMm: 1820,
    kind: 'shelf',
    for: 'moulds',
    capacity: 60,
    open: true,
    boxes: tile(1600, 1820, [
      [1, [1]],
      [1, [1]],
      [1.2, [1]],
      [1.2, [2, 1]],
      [1.4, [1]],
    ]),
    periods: list('- - stage+georgian+nouveau - - -'),
    names: ['Intermediate moulds', 'Intermediate moulds, long', 'Moulds for pouring', 'Out of use', 'Duds', 'Wax tubs'],
  },
  {
    letter: 'F',
    name: 'Wall rack',
    room: 'workshop',
    widthMm: 1420,
    heightMm: 560,
    kind: 'box',
    for: 'castings',
    capacity: 400,
    boxes: tile(1420, 560, [
      [1, [1, 1, 1, 1, 1]],
      [1.3, [1, 1, 1, 1, 1]],
    ]),
    periods: list('latene latene hellenistic hellenistic georgian georgian nouveau nouveau stage stage'),
  },
];

/** Room for fewer things than stand there: these come out over-full. */
const TIGHT: Readonly<Record<string, number>> = { C3: 4, D7: 6, B4: 150 };

export const AWAY = [
  { key: 'plater', name: 'At the plater', holder: 'Lanyard Lane Plating' },
  { key: 'shop', name: 'Museum shop window', holder: 'Gullhaven Museum shop' },
];

/** The fronts of a cabinet as places, in reading order. */
export function frontsOf(cabinet: Cabinet) {
  return cabinet.boxes.map((box, i) => {
    const sorted = cabinet.periods[i] ?? '-';
    const label = `${cabinet.letter}${i + 1}`;
    const isCasting = cabinet.castingsFrom !== undefined && i + 1 >= cabinet.castingsFrom;
    const isWax = cabinet.letter === 'E' && i === 5;
    return {
      label,
      name: cabinet.names?.[i] ?? `${cabinet.name}, ${cabinet.kind} ${i + 1}`,
      kind: cabinet.kind,
      for: isCasting ? 'castings' : isWax ? 'wax' : cabinet.for,
      periods: sorted === '-' ? [] : sorted.split('+'),
      capacity: TIGHT[label] ?? cabinet.capacity,
      box,
      order: i + 1,
      open: cabinet.open,
    };
  });
}
