import type { Rubber } from '../src/domain/mould.ts';
import { BEFORE, dayAfter, daysFrom, LAST_DAY } from './calendar.ts';
import type { Design } from './designs.ts';
import { designAt, designNamed } from './designs.ts';
import type { Book, Chance, Ids, MouldNote } from './kinds.ts';
import { frontFor } from './shelves.ts';
import { STUDIO } from './waxes.ts';

/** Days before the last day that a sound mould of each rubber was made, at most: well inside the rubber’s years. */
const OLDEST: Readonly<Record<Rubber, number>> = {
  natural: 4700,
  'vulcanised silicone': 3600,
  'platinum silicone': 3900,
  'tin silicone': 1250,
};
const BEFORE_TO_LAST = 750;

function rubberFor(chance: Chance, design: Design, purpose: string): Rubber {
  if (purpose === 'intermediate') return chance.is(0.6) ? 'platinum silicone' : 'tin silicone';
  if (design.isPoured) return chance.is(0.5) ? 'tin silicone' : 'vulcanised silicone';
  const draw = chance.next();
  return draw < 0.48 ? 'natural' : draw < 0.76 ? 'vulcanised silicone' : draw < 0.94 ? 'platinum silicone' : 'tin silicone';
}

/** Wax of one shot: the pieces, scaled from the first size by length, and a quarter more for the sprue. */
function shotGrams(design: Design, size: string, cavities: number) {
  const mm = design.sizes.find((each) => each.label === size)?.mm ?? design.sizes[0].mm;
  const scale = design.sort === 'signet ring' ? 1 : (mm / design.sizes[0].mm) ** 2.4;
  return Math.round(design.waxGrams * scale * cavities * 12.5) / 10;
}

function homeOf(book: Book, ids: Ids, design: Design, purpose: string) {
  if (purpose === 'intermediate') return ids.place.of(design.waxGrams > 12 ? 'E2' : 'E1');
  return design.isPoured && design.sizes.length === 1 ? ids.place.of('E3') : frontFor(book, ids, 'moulds', design.periods);
}

/** A day before the journal, no older than the rubber lasts well, and after the master was there. */
function madeSince(book: Book, chance: Chance, rubber: Rubber, master: string | undefined) {
  const newest = dayAfter(LAST_DAY, -BEFORE_TO_LAST - 10);
  const oldest = dayAfter(LAST_DAY, -OLDEST[rubber]);
  const ready = master ? dayAfter(book.get(master).made ?? oldest, 6) : oldest;
  const from = daysFrom(oldest, ready) > 0 ? ready : oldest;
  return dayAfter(from, chance.whole(0, Math.max(0, daysFrom(from, newest))));
}

/** Where a mould differs from what would be drawn for it. */
interface MouldFields {
  readonly name?: string;
  readonly master?: string | undefined;
  readonly masters?: readonly string[];
  readonly purpose?: string;
  readonly rubber?: Rubber;
  readonly cavities?: number;
  readonly made?: string;
  /** Where it stands; nowhere with null: it was thrown out. */
  readonly at?: string | null;
  readonly note?: string;
}

/** `rest` holds fields that differ (master, purpose, made, rubber, note) and where it stands. */
export function recordMould(book: Book, chance: Chance, ids: Ids, index: number, size: string, { at, note, ...rest }: MouldFields) {
  const design = designAt(index);
  const purpose = rest.purpose ?? 'production';
  const drawn = rest.rubber ?? rubberFor(chance, design, purpose);
  const rubber = drawn === 'tin silicone' && rest.made !== undefined && rest.made < '2023-06-01' ? 'platinum silicone' : drawn;
  const cavities = rest.cavities ?? (purpose === 'production' && design.isPlate ? chance.pick([3, 4, 6]) : 1);
  const made = rest.made ?? madeSince(book, chance, rubber, rest.master);
  const needsHigh = design.waxGrams < 6 && purpose === 'production' && !design.isPoured && chance.is(0.55);
  const injection = needsHigh
    ? { waxC: chance.whole(69, 73), pressureKpa: chance.whole(15, 22) * 10, holdS: chance.whole(5, 9) }
    : { waxC: chance.whole(65, 70), pressureKpa: chance.whole(9, 15) * 5, holdS: chance.whole(4, 14) };
  const poured = design.isPoured
    ? {}
    : { shotGrams: shotGrams(design, size, cavities), wax: ids.wax.of(needsHigh ? 'green' : 'amber'), injection };
  const place = at === null ? {} : { at: at ?? homeOf(book, ids, design, purpose) };
  const { made: _, ...given } = rest;
  const fields = { design: ids.design.of(index), size, purpose, rubber, ...(cavities > 1 ? { cavities } : {}), made, ...poured, ...given };
  const id = book.record(chance.is(0.6) ? 'Jory' : 'Maren', 'mould', { ...fields, ...(note ? { note } : {}) }, place);
  ids.moulds.push({
    id,
    index,
    size,
    purpose,
    rubber,
    cavities,
    needsHigh,
    life: STUDIO.life[rubber].shots,
    fate: 'sound',
    isPoured: design.isPoured,
  });
  return id;
}

export function mouldOf(ids: Ids, id: string): MouldNote {
  const mould = ids.moulds.find((each) => each.id === id);
  if (!mould) throw new Error(`no mould ${id}`);
  return mould;
}

/** The production moulds of a design, one or two to a size. */
export function recordProduction(book: Book, chance: Chance, ids: Ids, index: number, rest: MouldFields = {}) {
  const design = designAt(index);
  for (const { label } of design.sizes) {
    const master = ids.master.of(`${index}/${label}`);
    const count = design.isBusy ? (chance.is(0.7) ? 2 : 1) : chance.is(0.3) ? 2 : 1;
    for (let i = 0; i < count; i++) recordMould(book, chance, ids, index, label, { master, ...rest });
  }
}

/** Shots made before the journal, carried over from the old cards as one run. */
export function carryShots(book: Book, chance: Chance, mould: MouldNote, share: number) {
  const shots = Math.round(mould.life * share);
  if (shots < 1) return;
  const made = shots * mould.cavities;
  const flash = chance.hits(made, 0.014);
  const bubbles = chance.hits(made, 0.012);
  const rejects = { ...(flash ? { flash } : {}), ...(bubbles ? { bubbles } : {}) };
  const good = made - flash - bubbles;
  book.note('Maren', 'injected', {
    on: BEFORE,
    mould: mould.id,
    shots,
    ...(flash + bubbles ? { rejects } : {}),
    good,
    note: 'Carried over from the old cards.',
  });
}

const DUDS_OF = [
  'Swan-neck brooch',
  'Trumpet-scroll harness mount',
  'Terret, lipped',
  'Strap end, leaf scroll',
  'Fob seal, ship',
  'Whiplash buckle',
];
const NO_MASTER_NOTE = 'Bought in with the old shop; nobody knows its master.';

/** Moulds out of the ordinary: without a master, duds, sets of several masters, and those retired before the journal. */
export function recordOddities(book: Book, chance: Chance, ids: Ids) {
  for (const name of ['Twin-bee pendant', 'Chariot mount, rosette', 'Ivy-leaf pendant', 'Strap end, leaf scroll', 'Watch key, shell']) {
    const index = designNamed(name);
    recordMould(book, chance, ids, index, designAt(index).sizes[0].label, { note: NO_MASTER_NOTE });
  }
  const sets: readonly (readonly [string, readonly [string, ...string[]]])[] = [
    ['Seal plate, three sorts', ['Bull-leaper seal', 'Lentoid seal, flying fish', 'Merchant’s seal, knotted line']],
    ['Pendant plate, three sorts', ['Acorn pendant', 'Ivy-leaf pendant', 'Gazelle pendant']],
    ['Ring plate, two sorts', ['Coiled serpent ring', 'Signet ring, oval bezel']],
  ];
  for (const [name, designs] of sets) {
    const indexes = designs.map(designNamed);
    const index = designNamed(designs[0]);
    const masters = indexes.map((index) => ids.master.of(`${index}/${designAt(index).sizes[0].label}`));
    recordMould(book, chance, ids, index, designAt(index).sizes[0].label, {
      name,
      master: masters[0],
      masters: masters.slice(1),
      cavities: indexes.length,
      rubber: 'natural',
    });
  }
  const duds = [
    'Halves shifted in the cure.',
    'Undercured next to the frame.',
    'Cut through the cavity.',
    'Bubbles all along the rim.',
    'Silicone over natural rubber: skin never set.',
    'Master moved in the pour.',
  ];
  for (const [i, note] of duds.entries()) {
    const index = designNamed(DUDS_OF[i] ?? '');
    const size = designAt(index).sizes[0].label;
    const id = recordMould(book, chance, ids, index, size, { master: ids.master.of(`${index}/${size}`), at: ids.place.of('E5'), note });
    mouldOf(ids, id).fate = 'dud';
    book.note('Jory', 'retired', { of: id, reason: 'dud' });
  }
  for (const name of ['Wheel pendant', 'Duck-head brooch', 'Belt mount, acanthus', 'Coffer foot, ball and claw']) {
    const index = designNamed(name);
    const size = designAt(index).sizes[0].label;
    const id = recordMould(book, chance, ids, index, size, {
      master: ids.master.of(`${index}/${size}`),
      at: ids.place.of('E4'),
      rubber: 'natural',
    });
    const mould = mouldOf(ids, id);
    mould.fate = 'gone';
    carryShots(book, chance, mould, chance.between(0.9, 1.15));
    book.note('Maren', 'retired', { of: id, reason: chance.pick(['worn out', 'torn', 'replaced']) });
  }
}
