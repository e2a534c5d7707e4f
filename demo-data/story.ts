import { workDays } from './calendar.ts';
import { inspect, isInUse, longestUnlooked } from './care.ts';
import { designAt } from './designs.ts';
import type { Ctx, MouldNote, Person, Plan } from './kinds.ts';
import { ranked } from './ranking.ts';
import { REFILLS } from './waxes.ts';
import { castPending, dress, invest, pour, roomToday, run, sell } from './work.ts';

const BUYERS = [
  'Gullhaven Museum shop',
  'Old Granary Theatre',
  'Saltmarsh Gallery',
  'Harbour Street Gifts',
  'Fairlight Film Props',
  'Market stall',
];

/** Castings and waxes on hand of each design, against what is kept; much of what is being let run short. */
function covers({ book, ids }: Ctx) {
  const pieces = new Map<string, number>();
  for (const noun of ['casting', 'injectedWax'] as const)
    for (const pile of book.all(noun)) pieces.set(pile.design, (pieces.get(pile.design) ?? 0) + pile.pieces);
  return (index: number) => {
    const { name, keep } = designAt(index);
    return ids.short.has(name) && book.today > ids.shortFrom ? 9 : (pieces.get(ids.design.of(index)) ?? 0) / (keep * 3);
  };
}

function canRun(ctx: Ctx, mould: MouldNote) {
  const thing = ctx.book.get(mould.id);
  const share = (thing.shots + 14) / mould.life;
  const most =
    mould.fate === 'oldShots' ? 1.35 : mould.fate === 'worn' ? 0.78 : mould.fate === 'watch' || mould.fate === 'faults' ? 0.68 : 0.62;
  return isInUse(ctx, mould) && !thing.until && share < most;
}

/** A mould of the design that is shortest, the least worn of its size. */
function mouldToRun(ctx: Ctx, used: ReadonlySet<string>) {
  const { book, chance, ids } = ctx;
  const month = Number(book.today.slice(5, 7));
  const isCold = month === 12 || month < 4;
  const able = ids.moulds.filter(
    (each) => each.purpose === 'production' && !each.isPoured && !used.has(each.id) && !(each.needsHigh && isCold) && canRun(ctx, each),
  );
  const indexes = [...new Set(able.map((each) => each.index))];
  const cover = covers(ctx);
  const score = (index: number) => cover(index) * (designAt(index).isBusy ? 0.6 : 1) + chance.between(0, 0.5);
  const [shortest] = ranked(
    indexes.map((index) => ({ id: String(index), index })),
    (each) => score(each.index),
  );
  if (!shortest) return undefined;
  const { index } = shortest;
  const size = chance.pick(able.filter((each) => each.index === index).map((each) => each.size));
  return chance.pick(able.filter((each) => each.index === index && each.size === size));
}

function takeOut(ctx: Ctx, moulds: readonly MouldNote[], by: Person) {
  ctx.book.note(by, 'moved', { things: moulds.map((each) => each.id), to: ctx.ids.place.of('workshop'), usual: 'kept' });
}

function putBack(ctx: Ctx, moulds: readonly MouldNote[], by: Person) {
  const homes = new Map<string, string[]>();
  for (const { id } of moulds) {
    const home = ctx.book.get(id).usual;
    homes.set(home, [...(homes.get(home) ?? []), id]);
  }
  ctx.book.act(by, (add) => {
    for (const [to, things] of homes) add('moved', { things, to });
  });
}

function injectToday(ctx: Ctx, roomC: number) {
  const { chance } = ctx;
  const by = chance.is(0.7) ? 'Jory' : 'Pell';
  const used = new Set<string>();
  const moulds: MouldNote[] = [];
  for (let i = chance.pick([1, 1, 1, 2, 2, 2, 3]); i > 0; i--) {
    const mould = mouldToRun(ctx, used);
    if (!mould) break;
    used.add(mould.id);
    moulds.push(mould);
  }
  const carries = chance.is(0.16) && moulds.length > 0;
  if (carries) takeOut(ctx, moulds, by);
  for (const mould of moulds) run(ctx, mould, roomC, { by });
  if (carries) putBack(ctx, moulds, by);
}

function dressToday(ctx: Ctx) {
  const raw = ctx.book.all('injectedWax').filter((pile) => pile.state === 'raw' && pile.pieces > 3);
  for (const pile of ctx.chance.shuffled(raw).slice(0, ctx.chance.pick([0, 1, 1, 2])))
    dress(ctx, pile.id, ctx.chance.is(0.6) ? 'Pell' : 'Maren');
}

function pourToday(ctx: Ctx) {
  const { book, chance, ids } = ctx;
  const tallies = (each: MouldNote) => (book.get(each.id).sound ?? 0) + (book.get(each.id).scrap ?? 0);
  const able = ids.moulds.filter(
    (each) => each.isPoured && each.purpose === 'production' && isInUse(ctx, each) && tallies(each) < each.life * 0.55,
  );
  const cover = covers(ctx);
  const [neediest] = ranked(able, (each) => cover(each.index) + chance.between(0, 0.4));
  if (neediest) pour(ctx, neediest, 'Jory');
}

/** Waxes are weighed on the first work day of a month; the scale and spills differ a little from the reckoning. */
function weighAll(ctx: Ctx) {
  ctx.book.act('Pell', (add) => {
    for (const [, id] of ctx.ids.wax.entries()) {
      const grams = Math.max(0, Math.round((ctx.book.get(id).grams * ctx.chance.between(0.985, 1.004)) / 5) * 5);
      add('weighed', { wax: id, grams });
    }
  });
}

const LOT_GRAMS: Readonly<Record<string, number>> = { amber: 5000, green: 4000, violet: 5500, grey: 2500, white: 500 };
const ORDER_AT: Readonly<Record<string, number>> = { amber: 3000, green: 2200, violet: 2800, grey: 1600, white: 260 };

/** What is short is ordered and comes; no violet is ordered after the second winter. */
function receive(ctx: Ctx) {
  const { book, chance, ids } = ctx;
  for (const [key, id] of ids.wax.entries()) {
    if (book.get(id).grams > (ORDER_AT[key] ?? 0) || (key === 'violet' && book.today > '2026-03-08')) continue;
    const lot = `${key.slice(0, 2).toUpperCase()}${book.today.slice(2, 4)}${book.today.slice(5, 7)}-${chance.whole(10, 99)}`;
    book.note('Maren', 'received', { wax: id, grams: LOT_GRAMS[key], lot });
  }
}

function refill(ctx: Ctx, day: string) {
  const pots = REFILLS[day.slice(0, 7)] ?? {};
  for (const [injector, wax] of Object.entries(pots)) {
    ctx.book.note('Jory', 'corrected', { noun: 'injector', of: ctx.ids.injector.of(injector), fields: { holds: ctx.ids.wax.of(wax) } });
  }
}

function countOne(ctx: Ctx) {
  const pile = ctx.chance.pick(ctx.book.all(ctx.chance.is(0.75) ? 'casting' : 'injectedWax').filter((each) => each.pieces > 0));
  if (!pile) return;
  const off = ctx.chance.is(0.25) ? ctx.chance.pick([-2, -1, -1, 1]) : 0;
  ctx.book.note(ctx.chance.pick(['Pell', 'Maren']), 'counted', { of: pile.id, pieces: Math.max(0, pile.pieces + off) });
}

/** Two years of work days; `plan` holds what happens on days of its own. */
export function live(ctx: Ctx, plan: Plan) {
  const { book, chance, ids } = ctx;
  const days = workDays().filter((day) => day >= '2024-11-11');
  for (const [i, day] of days.entries()) {
    book.open(day);
    const week = new Date(`${day}T00:00:00Z`).getUTCDay();
    const roomC = roomToday(chance, day);
    if (days[i - 1]?.slice(0, 7) !== day.slice(0, 7)) {
      refill(ctx, day);
      weighAll(ctx);
    }
    if (week === 1) {
      book.note('Pell', 'measured', { of: ids.place.of('workshop'), roomC });
      receive(ctx);
    }
    if (ctx.pending.length > 0) castPending(ctx, 'Jory');
    injectToday(ctx, roomC);
    dressToday(ctx);
    if (week === 2) for (const flask of chance.shuffled(ids.flasks).slice(0, chance.is(0.25) ? 3 : 2)) invest(ctx, flask, 'Jory');
    if (chance.is(0.2)) pourToday(ctx);
    for (let n = chance.pick([0, 1, 1, 2]); n > 0; n--) sell(ctx, chance.pick(['Maren', 'Pell']), BUYERS);
    if (chance.is(0.92)) inspect(ctx, longestUnlooked(ctx), chance.is(0.8) ? 'Maren' : 'Jory');
    if (chance.is(0.16)) countOne(ctx);
    for (const happen of plan.get(day) ?? []) happen(ctx, roomC);
  }
}
