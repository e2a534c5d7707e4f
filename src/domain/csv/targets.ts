import { dayCell } from './day-cell.ts';
import { boxCell, orderCell, yesNoCell } from './exact-cell.ts';
import { numberCell, rangeCell } from './number-cell.ts';
import type { ReadCell } from './reading.ts';
import { sizesCell } from './sizes-cell.ts';
import {
  faultsCell,
  gradeCell,
  masterKindCell,
  masterStateCell,
  metalsCell,
  placeForCell,
  placeKindCell,
  purposeCell,
  retirementCell,
  routeCell,
  rubberCell,
  waxPressureCell,
  waxUseCell,
} from './word-cell.ts';

/** What a list can be of. */
export const TARGETS = ['mould', 'master', 'design', 'wax', 'place'] as const;
export type Target = (typeof TARGETS)[number];

/** One thing a column can be. */
export interface Column {
  /** As the choice shows it. */
  readonly label: string;
  /** Headings it is guessed from, parted by commas, besides the label (common practice, no source). */
  readonly words: string;
  readonly read: ReadCell;
  /**
   * What becomes of the value: `field` of the same name; `fields`, several at once; else a part that the plan works out:
   * a name that leads to another thing, a number to know the thing by, a condition, a tally.
   */
  readonly is: 'field' | 'fields' | 'part';
}

const plain: ReadCell = (cell) => ({ value: cell.trim() });
const field = (label: string, words: string, read: ReadCell = plain): Column => ({ label, words, read, is: 'field' });
const fields = (label: string, words: string, read: ReadCell): Column => ({ label, words, read, is: 'fields' });
const part = (label: string, words: string, read: ReadCell = plain): Column => ({ label, words, read, is: 'part' });

const grams = numberCell('grams');
const mm = numberCell('mm');
const count = numberCell('count');
const celsius = numberCell('celsius');
const kpa = numberCell('kpa');

const note = field('Note', 'notes, remark, remarks, comment, comments, info, description, details, observations');
const also = field('Also called', 'aka, other names, alias, aliases, keywords, synonyms, also known as');
const period = part('Period', 'periods, topic, era, age, culture, epoch, theme, century, collection, range, date range, style');
const design = part(
  'Design',
  'piece, pattern, model, item, article, form, product, motif, title, subject, object, design name, casting, what',
);
const size = field('Size', 'sizes, ring size, dimension, scale, variant, version');
const place = part(
  'Place',
  'drawer, location, where, stored, storage, shelf, box, position, bin, tray, drawer no, stored in, kept in, standing, spot, stands in',
);
const cabinet = part('Cabinet', 'cupboard, room, unit, rack, case, cabinet no, chest');
const retired = part('Out of use', 'retired because, why out of use, retirement', retirementCell);
const retiredOn = part('Out of use since', 'retired on, out of use on', dayCell);
const labelled = field('Label put on', 'labelled, label printed on, label on since, labelled on', dayCell);
const waxName = part('Wax', 'wax colour, wax type, wax used, preferred wax, best wax, injection wax');

export const COLUMNS = {
  mould: {
    number: part(
      'Code or number',
      'mould no, mould number, mould id, mould code, no, nr, number, code, id, ref, reference, rubber no, mould ref, label, inventory no, sku',
    ),
    name: part('Name', 'mould name, mould, rubber name, called'),
    design,
    size,
    period,
    place,
    cabinet,
    master: part('Master', 'master no, made from, original, master number, from master, master name, master code, model no'),
    purpose: field('Purpose', 'kind of mould, mould kind, stage, production or intermediate, use', purposeCell),
    rubber: field('Rubber', 'rubber type, material, mould material, type of rubber, compound, mould type, rubber kind, type', rubberCell),
    cavities: field('Cavities', 'cavity, impressions, pieces per mould, up, no of cavities, pieces per shot, per shot, multi', count),
    made: field('Made on', 'made, date made, date, mould date, cut on, date cut, vulcanised, year, created, year made, age from', dayCell),
    shots: part(
      'Shots so far',
      'shots, qty shots, shot count, pulls, injections, waxes pulled, times used, uses, used, qty, no of shots, total shots, waxes made, count',
      count,
    ),
    lastUsed: part('Last used on', 'last used, last shot, last run, last pulled, last injected', dayCell),
    grade: part('Condition', 'grade, state, status, quality, cond, shape, mould condition, rating', gradeCell),
    faults: part('Faults', 'fault, defects, defect, problems, damage, issues', faultsCell),
    inspected: part('Looked at on', 'inspected, inspected on, checked, last checked, last inspected, last look', dayCell),
    shotGrams: field('Wax a shot', 'shot weight, wax weight, grams per shot, g per shot, shot g, weight, wax g, shot grams', grams),
    wax: waxName,
    waxC: part('Wax temperature', 'wax temp, temperature, temp, injection temp, injection temperature, deg c', celsius),
    pressureKpa: part('Pressure', 'injection pressure, press, air pressure, psi, bar, kpa', kpa),
    holdS: part('Hold time', 'hold, hold s, hold seconds, dwell, seconds', numberCell('seconds')),
    expectedShots: field('Shots expected', 'expected shots, life, expected life, max shots, shot limit', count),
    masters: part('Further masters', 'more masters, other masters'),
    labelled,
    retired,
    retiredOn,
    note,
  },
  master: {
    number: part(
      'Code or number',
      'master no, master number, master id, master code, no, nr, number, code, id, ref, reference, inventory no, label',
    ),
    name: part('Name', 'master, master name, called'),
    design,
    size,
    period,
    place,
    cabinet,
    kind: field('Kind', 'type, kind of master, what it is, master type, sort', masterKindCell),
    state: field('State', 'condition, status, quality, grade', masterStateCell),
    material: field('Material', 'metal, made of, medium, substance'),
    made: field('Made on', 'made, date made, date, year, created, acquired', dayCell),
    lengthMm: field('Length', 'length mm, long, mm, measure, height, width, diameter', mm),
    labelled,
    retired,
    retiredOn,
    note,
  },
  design: {
    number: part(
      'Code or number',
      'design no, design number, design code, no, nr, number, code, id, ref, reference, article no, item no, sku, catalogue no, cat no',
    ),
    name: part('Name', 'design, design name, piece, title, item, article, product, form, model, pattern, motif'),
    sort: field('Sort', 'type, kind, category, class, group, sort of piece, what'),
    period,
    sizes: field('Sizes', 'size, ring sizes, variants, dimensions, sizes made', sizesCell),
    metals: field('Metals', 'metal, alloy, alloys, offered in, cast in, material', metalsCell),
    route: field('Route', 'method, process, how made, casting method', routeCell),
    waxGrams: field('Wax weight', 'weight, wax g, wax grams, grams, g, weight g', grams),
    keep: field('Keep on hand', 'stock level, minimum, min stock, keep, level, minimum stock, min, target stock', count),
    also,
    labelled,
    retired,
    retiredOn,
    note,
  },
  wax: {
    number: part('Code or number', 'wax no, code, number, no, nr, ref, reference, id, label, article no'),
    name: part('Name', 'wax, wax name, type, product, called'),
    colour: field('Colour', 'color, shade, hue'),
    behaviour: field('Behaviour', 'properties, feel, character, kind, description, flexibility, hardness'),
    use: field('Use', 'purpose, used for, for', waxUseCell),
    pressure: field('Pressure', 'injector, needs pressure, high pressure, which injector', waxPressureCell),
    grams: part(
      'Stock',
      'stock g, stock kg, in stock, grams, grams left, left, weight, quantity, qty, on hand, amount, stock grams',
      grams,
    ),
    room: fields(
      'Room range',
      'room, room temperature, room temp, working range, room temp range, works in',
      rangeCell('celsius', 'roomLowC', 'roomHighC'),
    ),
    roomLowC: field('Room from', 'room low, room min, brittle below, lowest room temp, min room', celsius),
    roomHighC: field('Room to', 'room high, room max, soft above, highest room temp, max room, too soft above', celsius),
    inject: fields(
      'Injection range',
      'injection temperature, injection temp, inject at, injection, temperature, temp, melt range',
      rangeCell('celsius', 'injectLowC', 'injectHighC'),
    ),
    injectLowC: field('Inject from', 'injection low, injection min, min injection temp, inject low', celsius),
    injectHighC: field('Inject to', 'injection high, injection max, max injection temp, inject high', celsius),
    pressureLowKpa: field('Pressure from', 'min pressure, pressure min, lowest pressure', kpa),
    pressureHighKpa: field('Pressure to', 'max pressure, pressure max, highest pressure', kpa),
    deliveryDays: field('Delivery time', 'delivery, lead time, delivery days, days to deliver', numberCell('days')),
    keepGrams: field('Order below', 'reorder, minimum, min stock, reorder level, order at, keep', grams),
    place,
    cabinet,
    labelled,
    retired,
    retiredOn,
    note,
  },
  place: {
    number: part('Code', 'label code, id, code, place code'),
    name: part('Name', 'place, drawer, location, drawer name, place name, shelf, box, drawer no, no, number'),
    in: part('Stands in', 'cabinet, cupboard, room, in, inside, parent, part of, belongs to, unit, rack'),
    kind: field('Kind', 'type, kind of place, sort', placeKindCell),
    label: field('Front label', 'label, front, sign, short name'),
    period: part('Periods', 'period, topic, era, contents, content, holds, theme, culture, what is in it'),
    for: field('For', 'meant for, use, used for, purpose', placeForCell),
    capacity: field('Pieces that fit', 'capacity, fits, max, max pieces, room for, spaces', count),
    widthMm: field('Width', 'wide, width mm, w', mm),
    heightMm: field('Height', 'high, height mm, h', mm),
    box: field('Where its front is', 'front position, position of its front', boxCell),
    order: field('Order on the list', 'order, sequence', orderCell),
    open: field('Open shelf', 'open, open front', yesNoCell),
    holder: field('Who has it', 'holder, lent to, person, with'),
    labelled,
    retired,
    retiredOn,
    note,
  },
} as const satisfies Record<Target, Readonly<Record<string, Column>>>;

/** What the columns of a list are, in the list's order; `null` is left out. Only notes may come from several columns. */
export type Mapping = readonly (string | null)[];

export function columnsOf(target: Target): Readonly<Record<string, Column>> {
  return COLUMNS[target];
}
