import type { Metal } from '../src/domain/design.ts';
import { designAt } from './designs.ts';
import type { Add, Chance, Ctx, Ids, MouldNote, Person, Rejects, Seen } from './kinds.ts';
import { ranked, total } from './ranking.ts';
import { frontFor } from './shelves.ts';
import type { WaxRow } from './waxes.ts';
import { METAL_FOR_WAX, roomRange, WAXES } from './waxes.ts';

/** Degrees in the workshop on a day. */
export function roomToday(chance: Chance, day: string) {
  const { low, high } = roomRange(day);
  return Math.round((low + (high - low) * chance.between(0.4, 0.9)) * 2) / 2;
}

function waxAt(key: string): WaxRow {
  const wax = WAXES.find((each) => each.key === key);
  if (!wax) throw new Error(`no wax called ${key}`);
  return wax;
}

/** Injector and wax for a run, as the pots are filled; the hand pump only when its wax suits the room. */
function injectorFor({ book, chance, ids }: Ctx, mould: MouldNote, roomC: number): readonly [string, string] {
  if (mould.needsHigh) return ['high', 'green'];
  const held = (key: string) => ids.wax.keyOf(book.get(ids.injector.of(key)).holds);
  const suits = ({ roomLowC, roomHighC }: WaxRow) => roomC >= roomLowC && roomC <= roomHighC;
  if (designAt(mould.index).waxGrams > 6 && suits(waxAt(held('hand'))) && chance.is(0.35)) return ['hand', held('hand')];
  return ['low', held('low')];
}

function rejectsOf(chance: Chance, made: number, mould: MouldNote, wax: WaxRow, roomC: number, extra: Rejects) {
  const shares: Rejects = { 'short fill': 0.009, bubbles: 0.011, flash: 0.006, sink: 0.003, sticking: 0.003 };
  if (roomC < wax.roomLowC) shares.broken = 0.07;
  if (roomC > wax.roomHighC) shares.bent = 0.07;
  if (mould.fate === 'worn' || mould.fate === 'faults') Object.assign(shares, { flash: 0.05, 'lost detail': 0.02 });
  Object.assign(shares, extra);
  const rejects: Rejects = {};
  let left = made;
  for (const [fault, share] of Object.entries(shares)) {
    const count = Math.min(left, chance.hits(made, share));
    if (count > 0) rejects[fault] = count;
    left -= count;
  }
  return { rejects, good: left };
}

/** A sitting of shots of one mould. The waxes go on the pile of that mould and wax. */
export function run(
  ctx: Ctx,
  mould: MouldNote,
  roomC: number,
  { by, shots = shotsFor(ctx, mould), extra = {} }: { by: Person; shots?: number; extra?: Rejects },
) {
  const { book, chance, ids } = ctx;
  const [injector, waxKey] = injectorFor(ctx, mould, roomC);
  const wax = waxAt(waxKey);
  const thing = book.get(mould.id);
  const { rejects, good } = rejectsOf(chance, shots * mould.cavities, mould, wax, roomC, extra);
  const pile = ids.piles.get(`${mould.id}/${waxKey}`);
  const design = designAt(mould.index);
  const where: { onto?: string; to?: string } =
    good === 0 ? {} : pile ? { onto: pile } : { to: frontFor(book, ids, 'injected waxes', design.periods) };
  const settings = {
    waxC: Math.min(Math.max(thing.injection.waxC, wax.injectLowC), wax.injectHighC),
    pressureKpa: injector === 'hand' ? Math.min(60, thing.injection.pressureKpa) : thing.injection.pressureKpa,
    holdS: thing.injection.holdS,
  };
  const grams = Math.round(thing.shotGrams * shots * 10) / 10;
  if (grams > book.get(ids.wax.of(waxKey)).grams) return undefined;
  const lost = Object.keys(rejects).length > 0 ? { rejects } : {};
  const fields = {
    mould: mould.id,
    shots,
    ...lost,
    good,
    wax: ids.wax.of(waxKey),
    injector: ids.injector.of(injector),
    ...settings,
    grams,
    ...where,
  };
  const id = book.note(by, 'injected', fields);
  if (where.to) ids.piles.set(`${mould.id}/${waxKey}`, id);
  return id;
}

function shotsFor({ chance }: Ctx, mould: MouldNote) {
  if (mould.purpose === 'intermediate') return chance.whole(1, 3);
  if (mould.cavities > 1) return chance.whole(2, 5);
  return designAt(mould.index).waxGrams > 25 ? chance.whole(2, 5) : chance.whole(4, 11);
}

/** Trims and repairs a raw pile; what cannot be saved is scrapped. */
export function dress({ book, chance, ids }: Ctx, raw: string, by: Person) {
  const from = book.get(raw);
  if (from.pieces < 1) return;
  const scrapped = chance.hits(from.pieces, 0.02);
  const good = from.pieces - scrapped;
  const pile = ids.dressed.get(raw);
  const where: { onto?: string; to?: string } = good === 0 ? {} : pile ? { onto: pile } : { to: from.at };
  const id = book.note(by, 'dressed', { from: raw, good, scrapped, ...where });
  if (where.to) ids.dressed.set(raw, id);
}

/** Powder for a flask, g: volume less the waxes (ml), 1.25 g/ml and a tenth more; water 40 to 100 by weight. */
function mix(flask: Seen, waxGrams: number) {
  const volume = (Math.PI / 4) * (flask.diameterMm / 10) ** 2 * (flask.heightMm / 10);
  const powderGrams = Math.round(((volume - waxGrams / 0.95) * 1.25 * 1.1) / 10) * 10;
  return { powderGrams, waterGrams: Math.round(powderGrams * 0.4) };
}

const indexOf = (ids: Ids, design: string) => Number(ids.design.keyOf(design));
export const castingKey = (design: string, size: string, metal: string) => `${design}/${size}/${metal}`;

/** Sets dressed waxes in a flask; they are cast on the next work day. */
export function invest(ctx: Ctx, flaskId: string, by: Person) {
  const { book, chance, ids } = ctx;
  const flask = book.get(flaskId);
  const room = (flask.diameterMm / 10) ** 2 * (flask.heightMm / 10) * 0.11;
  const isLeftShort = (pile: Seen) => book.today > ids.shortFrom && ids.short.has(designAt(indexOf(ids, pile.design)).name);
  const fits = (pile: Seen) =>
    !isLeftShort(pile) && pile.state === 'dressed' && pile.pieces > 0 && designAt(indexOf(ids, pile.design)).metals.includes(flask.metal);
  const lots: { from: string; pieces: number }[] = [];
  let grams = 0;
  const stockOf = (pile: Seen) => {
    const stock = ids.castings.get(castingKey(pile.design, pile.size, flask.metal));
    return stock === undefined ? 0 : book.get(stock).pieces;
  };
  const need = (pile: Seen) => stockOf(pile) / designAt(indexOf(ids, pile.design)).keep + chance.between(0, 1.2);
  for (const pile of ranked(book.all('injectedWax').filter(fits), need)) {
    const each = designAt(indexOf(ids, pile.design)).waxGrams;
    const pieces = Math.min(pile.pieces, 12, Math.floor((room - grams) / each));
    if (pieces < 1) continue;
    lots.push({ from: pile.id, pieces });
    grams += pieces * each;
    if (lots.length === 6) break;
  }
  if (lots.length === 0) return;
  book.note(by, 'invested', { flask: flaskId, waxes: lots, ...mix(flask, grams) });
  ctx.pending.push({ flask: flaskId, metal: flask.metal, lots: lots.map((lot) => ({ ...lot, pile: book.get(lot.from) })) });
}

function scrapOf(chance: Chance, pieces: number, share = 0.04) {
  const scrap: Rejects = {};
  for (let i = chance.hits(pieces, share); i > 0; i--) {
    const fault = chance.pick(['porosity', 'short fill', 'short fill', 'fins', 'rough skin', 'inclusion']);
    scrap[fault] = (scrap[fault] ?? 0) + 1;
  }
  return scrap;
}

interface Lot {
  readonly flask?: string;
  readonly metal: Metal;
  readonly mould: string | undefined;
  readonly design: string;
  readonly size: string;
  readonly pieces: number;
  /** Wax in one, g. */
  readonly each: number;
}

function castLot({ book, chance, ids }: Ctx, add: Add, { flask, metal, mould, design, size, pieces, each }: Lot) {
  const scrap = scrapOf(chance, pieces);
  const sound = pieces - total(scrap);
  const key = castingKey(design, size, metal);
  const pile = ids.castings.get(key);
  const where = pile ? { onto: pile } : { to: frontFor(book, ids, 'castings', designAt(indexOf(ids, design)).periods) };
  const lost = Object.keys(scrap).length > 0 ? { scrap } : {};
  const metalGrams = Math.round(pieces * each * METAL_FOR_WAX[metal] * 1.1);
  const from = { ...(flask ? { flask } : {}), metal, design, size, ...(mould ? { mould } : {}) };
  const id = add('cast', { ...from, sound, ...lost, metalGrams, ...where });
  if (!pile) ids.castings.set(key, id);
}

/** Casts every flask that is waiting, one action for each. */
export function castPending(ctx: Ctx, by: Person) {
  for (const { flask, metal, lots } of ctx.pending) {
    ctx.book.act(by, (add) => {
      for (const { pile, pieces } of lots) {
        const { mould, design, size } = pile;
        castLot(ctx, add, { flask, metal, mould, design, size, pieces, each: designAt(indexOf(ctx.ids, design)).waxGrams });
      }
    });
  }
  ctx.pending.length = 0;
}

/** Pours pewter straight into a mould. */
export function pour(ctx: Ctx, mould: MouldNote, by: Person) {
  const pieces = ctx.chance.whole(3, 8) * mould.cavities;
  const { id, index, size } = mould;
  const each = designAt(index).waxGrams;
  ctx.book.act(by, (add) => castLot(ctx, add, { metal: 'pewter', mould: id, design: ctx.ids.design.of(index), size, pieces, each }));
}

/** Sells from the pile with most to spare, so that what is kept on hand stays. */
export function sell({ book, chance, ids }: Ctx, by: Person, buyers: readonly string[]) {
  const piles = new Map<string, number>();
  for (const key of ids.castings.keys()) {
    const design = key.slice(0, key.indexOf('/'));
    piles.set(design, (piles.get(design) ?? 0) + 1);
  }
  const spare = (pile: Seen) => {
    const design = designAt(indexOf(ids, pile.design));
    const floor = Math.ceil((design.keep * (ids.short.has(design.name) ? 0.2 : 1.1)) / (piles.get(pile.design) ?? 1));
    return pile.pieces - floor;
  };
  const able = book.all('casting').filter((pile) => spare(pile) > 0);
  const [pile] = ranked(able, (each) => -spare(each) * chance.between(0.4, 1.3));
  if (!pile) return;
  const pieces = Math.min(spare(pile), chance.whole(2, 24));
  const reason = chance.is(0.03) ? 'given' : 'sold';
  book.note(by, 'issued', { of: pile.id, pieces, ...(reason === 'sold' ? { to: chance.pick(buyers) } : {}), reason });
}
