import { makeChance } from './chance.ts';
import { designAt, designNamed } from './designs.ts';
import type { Chance, Ctx, MouldNote, On, Seen } from './kinds.ts';
import { recordMould } from './moulds.ts';
import { frontFor } from './shelves.ts';
import { dress, run } from './work.ts';

const SEED = 1119;
const LIFTED = 'Duck toggle';
const DRESSED = 'Lion brooch';

/** A casting and a dressed wax become masters, and some pieces are held to the caliper. */
export function planDescent(on: On) {
  on('2026-11-18', (live, roomC) => {
    const chance = makeChance(SEED);
    live.book.aside(chance, () => {
      keepDressedWax({ ...live, chance }, roomC);
      keepCasting({ ...live, chance });
      readCalipers(live, chance);
    });
  });
}

const mouldNamed = ({ ids }: Ctx, name: string, purpose: string): MouldNote => {
  const mould = ids.moulds.find((each) => each.index === designNamed(name) && each.purpose === purpose && each.fate !== 'gone');
  if (!mould) throw new Error(`no ${purpose} mould of ${name}`);
  return mould;
};

/** One piece is taken off a pile and stands as a master from now on. */
function keep({ book, ids }: Ctx, name: string, pile: string, fields: object): string {
  const index = designNamed(name);
  const at = frontFor(book, ids, 'masters', designAt(index).periods);
  const size = designAt(index).sizes[0].label;
  return book.act('Maren', (add, code) => {
    const made = book.today;
    add('recorded', {
      noun: 'master',
      fields: { code: code('master'), design: ids.design.of(index), size, state: 'sound', made, from: [pile], ...fields },
      at,
    });
    add('issued', { of: pile, pieces: 1, reason: 'kept as master' });
  });
}

/** Two waxes out of an intermediate mould, dressed; the better one is the next master. */
function keepDressedWax(live: Ctx, roomC: number) {
  const mould = mouldNamed(live, DRESSED, 'intermediate');
  const raw = run(live, mould, roomC, { by: 'Jory', shots: 2 });
  if (!raw) throw new Error('no wax for the intermediate mould');
  dress(live, raw, 'Maren');
  const dressed = live.ids.dressed.get(raw);
  if (!dressed) throw new Error('nothing dressed');
  const lengthMm = hundredths(lengthOf(live, mould) * 0.972);
  keep(live, DRESSED, dressed, { name: `${DRESSED}, dressed again`, kind: 'dressed wax', material: 'wax', lengthMm });
}

/** A good casting out of a production mould stands in for a master that may go: its moulds are copies of a copy. */
function keepCasting(live: Ctx) {
  const { book, ids, chance } = live;
  const mould = mouldNamed(live, LIFTED, 'production');
  const pile = book.all('casting').find((each) => each.mould === mould.id && each.pieces > 1);
  if (!pile) throw new Error(`no castings of ${LIFTED}`);
  const lengthMm = hundredths(lengthOf(live, mould) * LEFT_BY.wax(mould) * LEFT_BY.metal(pile.metal));
  const master = keep(live, LIFTED, pile.id, { name: `${LIFTED}, casting kept`, kind: 'casting', material: pile.metal, lengthMm });
  recordMould(book, chance, ids, mould.index, mould.size, { master, rubber: 'natural', made: book.today });
}

const hundredths = (mm: number) => Math.round(mm * 100) / 100;

/** What this studio's own waxes and metals leave of a size, invented. */
const WAX_LEFT = { natural: 0.958, 'vulcanised silicone': 0.963, 'platinum silicone': 0.978, 'tin silicone': 0.969 } as const;
const METAL_LEFT: Readonly<Record<string, number>> = { pewter: 0.986, bronze: 0.983, brass: 0.984, silver: 0.987 };
const LEFT_BY = {
  wax: ({ rubber }: MouldNote) => WAX_LEFT[rubber],
  metal: (metal: string) => METAL_LEFT[metal] ?? 0.985,
};

function lengthOf({ book }: Ctx, mould: MouldNote): number {
  const { master } = book.get(mould.id);
  const { lengthMm } = book.get(master ?? '');
  if (!lengthMm) throw new Error('a master without a length');
  return lengthMm;
}

const READ = 9;

/** Waxes and castings of one mould and their master, measured at the same place. */
function readCalipers(live: Ctx, chance: Chance) {
  const { book, ids } = live;
  const mouldsWith = ids.moulds.filter(
    (each) => each.purpose === 'production' && !each.isPoured && each.cavities === 1 && book.get(each.id).master !== undefined,
  );
  const pilesOf = (noun: 'injectedWax' | 'casting', mould: MouldNote) =>
    book.all(noun).find((pile) => pile.mould === mould.id && pile.pieces > 0 && pile.id !== undefined);
  const able = mouldsWith.filter((each) => pilesOf('casting', each) && book.get(book.get(each.id).master ?? '').state === 'sound');
  for (const mould of chance.shuffled(able).slice(0, READ)) {
    const master = book.get(book.get(mould.id).master ?? '');
    const mm = hundredths(master.lengthMm);
    const read = (of: string, left: number) =>
      book.note('Pell', 'measured', { of, sizes: [{ name: 'length', mm: hundredths(mm * left * chance.between(0.998, 1.002)) }] });
    book.note('Pell', 'measured', { of: master.id, sizes: [{ name: 'length', mm }] });
    const wax = pilesOf('injectedWax', mould);
    if (wax) read(wax.id, LEFT_BY.wax(mould));
    const casting: Seen | undefined = pilesOf('casting', mould);
    if (casting) read(casting.id, LEFT_BY.wax(mould) * LEFT_BY.metal(casting.metal));
  }
}
