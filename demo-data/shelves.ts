import { AWAY, CABINETS, frontsOf } from './cabinets.ts';
import { designAt } from './designs.ts';
import type { Book, Ids, Seen } from './kinds.ts';
import { PERIODS } from './periods.ts';
import { FLASKS, INJECTORS, STUDIO, WAXES } from './waxes.ts';

const ROOMS = [
  { key: 'workshop', name: 'Workshop', note: 'Ground floor, facing the quay.' },
  { key: 'loft', name: 'Store loft', note: 'Up the ladder; dry and dark.' },
];

/** Records rooms, cabinets, fronts and away places; gives their ids by key or label. */
export function recordPlaces(book: Book, ids: Ids) {
  for (const { key, ...fields } of ROOMS) ids.place.set(key, book.record('Maren', 'place', { kind: 'room', ...fields }));
  for (const { key, ...fields } of AWAY) ids.place.set(key, book.record('Maren', 'place', { kind: 'away', ...fields }));
  for (const [i, cabinet] of CABINETS.entries()) {
    book.act('Maren', (add, code) => {
      const { letter, name, room, widthMm, heightMm } = cabinet;
      const outside = {
        code: code('place'),
        name,
        kind: 'cabinet',
        in: ids.place.of(room),
        label: letter,
        widthMm,
        heightMm,
        order: i + 1,
      };
      ids.place.set(letter, add('recorded', { noun: 'place', fields: outside }));
      for (const { periods, open, ...front } of frontsOf(cabinet)) {
        const sorted = periods.length > 0 ? { periods: periods.map((key) => ids.period.of(key)) } : {};
        const fields = { code: code('place'), in: ids.place.of(letter), ...front, ...sorted, ...(open ? { open } : {}) };
        ids.place.set(front.label, add('recorded', { noun: 'place', fields }));
      }
    });
  }
}

export function recordPeriods(book: Book, ids: Ids) {
  book.act('Maren', (add, code) => {
    for (const [i, { key, ...fields }] of PERIODS.entries()) {
      ids.period.set(key, add('recorded', { noun: 'period', fields: { code: code('period'), ...fields, order: i + 1 } }));
    }
  });
}

export function recordStudio(book: Book) {
  book.note('Maren', 'corrected', { noun: 'studio', fields: STUDIO });
}

export function recordWaxes(book: Book, ids: Ids) {
  for (const { key, start, ...fields } of WAXES) {
    ids.wax.set(key, book.record('Jory', 'wax', fields, { at: ids.place.of('E6'), grams: start }));
  }
  for (const { key, holds, ...fields } of INJECTORS) {
    ids.injector.set(key, book.record('Jory', 'injector', { ...fields, holds: ids.wax.of(holds) }, { at: ids.place.of('workshop') }));
  }
  ids.flasks = FLASKS.map((fields) => book.record('Jory', 'flask', fields, { at: ids.place.of('workshop') }));
}

/** Records one design with its drawing; `ids.design` runs alongside DESIGNS. */
export function recordDesign(book: Book, ids: Ids, index: number, picture: string | undefined) {
  const design = designAt(index);
  const { name, sort, sizes, metals, waxGrams, keep, periods, isPoured } = design;
  const route = isPoured ? 'poured in the mould' : 'lost wax';
  const fields = {
    name,
    sort,
    periods: periods.map((key) => ids.period.of(key)),
    sizes,
    metals,
    route,
    ...(isPoured ? {} : { waxGrams }),
    keep,
  };
  ids.design.set(index, book.record('Maren', 'design', fields, picture ? { pictures: [picture] } : {}));
}

/** The fronts for a kind of thing and a period, the least filled of them. The shelf of moulds for pouring is asked for by name. */
export function frontFor(book: Book, ids: Ids, purpose: string, periodKeys: readonly string[]) {
  const wanted = periodKeys.map((key) => ids.period.of(key));
  const fronts = book.all('place').filter((place) => place.box && place.for === purpose && place.label !== 'E3');
  const own = fronts.filter((place) => place.periods?.some((period) => wanted.includes(period)));
  const filled = (place: Seen) => book.countIn(place.id);
  const [best] = own.sort((a, b) => filled(a) - filled(b) || a.order - b.order);
  if (!best) throw new Error(`no front for ${purpose} of ${periodKeys}`);
  return best.id;
}
