import { openBook } from './book.ts';
import { dayAfter, FIRST_DAY, LAST_DAY } from './calendar.ts';
import { castFates, shareBefore } from './care.ts';
import { makeChance } from './chance.ts';
import { DESIGNS, designAt } from './designs.ts';
import type { Ctx, Domain, Ids, MouldNote } from './kinds.ts';
import { recordMasters } from './masters.ts';
import { carryShots, recordOddities, recordProduction } from './moulds.ts';
import { Names } from './names.ts';
import { recordOldMoulds } from './old-moulds.ts';
import { drawDesign, drawMould, MOULD_PICTURES, openAlbum } from './pictures.ts';
import { LAUNCHES, makePlan } from './plan.ts';
import { SHORT, SHORT_FROM } from './sales.ts';
import { frontFor, recordDesign, recordPeriods, recordPlaces, recordStudio, recordWaxes } from './shelves.ts';
import { live } from './story.ts';
import { STUDIO } from './waxes.ts';
import { castingKey } from './work.ts';

const SEED = 20261120;

/** Castings and waxes found in the drawers when the journal began. */
function recordPiles(ctx: Ctx) {
  const { book, chance, ids } = ctx;
  for (const [index, design] of DESIGNS.entries()) {
    if (!ids.design.has(index)) continue;
    const metals = chance.shuffled(design.metals.filter((metal) => metal !== 'gold')).slice(0, chance.pick([1, 1, 2]));
    for (const { label: size } of design.sizes) {
      for (const metal of metals) {
        const pieces = Math.ceil((design.keep * chance.between(0.9, 2)) / (design.sizes.length * metals.length));
        const fields = { design: ids.design.of(index), size, metal };
        const at = frontFor(book, ids, 'castings', design.periods);
        const id = book.act('Maren', (add) => add('recorded', { noun: 'casting', fields, at, pieces }));
        ids.castings.set(castingKey(ids.design.of(index), size, metal), id);
      }
    }
  }
  for (const mould of chance
    .shuffled(ids.moulds.filter((each) => each.fate === 'sound' && each.purpose === 'production' && !each.isPoured))
    .slice(0, 36)) {
    const fields = { mould: mould.id, design: ids.design.of(mould.index), size: mould.size, wax: ids.wax.of('amber'), state: 'raw' };
    const at = frontFor(book, ids, 'injected waxes', designAt(mould.index).periods);
    const id = book.act('Pell', (add) => add('recorded', { noun: 'injectedWax', fields, at, pieces: chance.whole(2, 15) }));
    ids.piles.set(`${mould.id}/amber`, id);
  }
}

/** A mould turns out to be of tin silicone, and older than the card said. */
function findOld({ book, chance, ids }: Ctx, mould: MouldNote) {
  const made = dayAfter('2018-07-02', chance.whole(0, 400));
  mould.rubber = 'tin silicone';
  mould.life = STUDIO.life[mould.rubber].shots;
  const fields = { rubber: mould.rubber, made, wax: ids.wax.of('amber') };
  book.note('Maren', 'corrected', { noun: 'mould', of: mould.id, fields, note: 'Rubber and date found on the frame.' });
}

/** The first week: everything on the shelves is written down. */
function setUp(ctx: Ctx, drawings: readonly (string | undefined)[]) {
  const { book, chance, ids } = ctx;
  const day = (number: number) => book.open(dayAfter(FIRST_DAY, number));
  day(0);
  recordStudio(book);
  recordPeriods(book, ids);
  recordPlaces(book, ids);
  recordWaxes(book, ids);
  const standing = DESIGNS.map((_, index) => index).filter((index) => !LAUNCHES.some((launch) => launch.index === index));
  for (const index of standing) recordDesign(book, ids, index, drawings[index]);
  day(1);
  for (const index of standing) recordMasters(book, chance, ids, index, ['2014-03-01', 3700]);
  day(2);
  for (const index of standing) recordProduction(book, chance, ids, index);
  day(3);
  recordOddities(book, chance, ids);
  for (const mould of ids.moulds) mould.masterMade = mould.isPoured ? '' : (book.get(book.get(mould.id).master ?? mould.id).made ?? '9');
  castFates(chance, ids);
  for (const mould of ids.moulds.filter((each) => each.fate === 'oldRubber')) findOld(ctx, mould);
  for (const mould of ids.moulds) carryShots(book, chance, mould, shareBefore(chance, mould));
  day(4);
  recordPiles(ctx);
  recordOldMoulds(ctx);
}

/** The whole demo studio as text: the journal, one entry to a line after a header, and the pictures. `domain` is src/domain. */
export function makeStudio(domain: Domain, seed: number = SEED) {
  const chance = makeChance(seed);
  const book = openBook(domain, chance);
  const album = openAlbum();
  const drawings = DESIGNS.map((design, index) => (index % 12 === 11 ? undefined : album.add(drawDesign(design, index))));
  const mouldPictures = Object.fromEntries(MOULD_PICTURES.map((fault) => [fault, album.add(drawMould(fault))]));
  const ids: Ids = {
    place: new Names(),
    period: new Names(),
    wax: new Names(),
    injector: new Names(),
    design: new Names(),
    master: new Names(),
    flasks: [],
    masters: [],
    moulds: [],
    piles: new Map(),
    dressed: new Map(),
    castings: new Map(),
    short: new Set(SHORT),
    shortFrom: SHORT_FROM,
  };
  const ctx: Ctx = { domain, book, chance, ids, pending: [], drawings, mouldPictures };
  setUp(ctx, drawings);
  live(ctx, makePlan(ctx));
  const header = { mouldkeep: 'journal', version: 1, name: STUDIO.name, entries: book.entries.length, until: LAST_DAY };
  const journal = `${[header, ...book.entries].map((line) => JSON.stringify(line)).join('\n')}\n`;
  return { journal, pictures: `${JSON.stringify(album.pages)}\n`, entries: book.entries, shelf: book.shelf };
}
