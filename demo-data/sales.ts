import { makeChance } from './chance.ts';
import { designAt, designNamed } from './designs.ts';
import type { Ids, On } from './kinds.ts';

/** Design, size, metal, pieces, due, for whom, and the day it was asked for. */
const WANTS: readonly (readonly [string, string, string, number, string, string, string])[] = [
  ['Duck toggle', '', 'bronze', 24, '2026-12-11', 'Gullhaven Museum shop', '2026-10-20'],
  ['Wheel pendant', 'M', 'pewter', 30, '2026-12-04', 'Harbour Street Gifts', '2026-10-27'],
  ['Tulip buckle', 'S', 'silver', 6, '2027-01-22', 'Old Granary Theatre', '2026-11-03'],
  ['Comic-mask gaming piece', '', 'pewter', 32, '2026-12-18', 'Fairlight Film Props', '2026-11-05'],
  ['Fob seal, urn', '', 'brass', 10, '2026-11-13', 'Saltmarsh Gallery', '2026-10-13'],
  ['Coffer foot, lion paw', 'L', 'brass', 8, '2026-12-01', 'Old Granary Theatre', '2026-11-09'],
  ['Dragonfly brooch', 'L', 'silver', 12, '2026-12-09', 'Saltmarsh Gallery', '2026-11-10'],
  ['Looped mirror handle', '', 'bronze', 4, '2027-02-26', 'Gullhaven Museum shop', '2026-11-12'],
  ['Gaming counter, crab', '', 'pewter', 48, '2026-12-15', 'Market stall', '2026-11-16'],
];

export function planWants(on: On, ids: Ids) {
  for (const [name, letter, metal, pieces, due, who, day] of WANTS) {
    const index = designNamed(name);
    const size = letter || designAt(index).sizes[0].label;
    on(day, ({ book }) => book.record('Maren', 'want', { design: ids.design.of(index), size, metal, pieces, due, who }));
  }
}

/** Designs that sell out in the autumn and are not made again in time. */
export const SHORT = ['Wheel pendant', 'Coffer foot, lion paw', 'Dragonfly brooch', 'Fob seal, urn'];
export const SHORT_FROM = '2026-09-14';

/** What sells out, and the violet wax: the autumn’s delivery is a small one. */
export function planShortages(on: On, ids: Ids) {
  on('2026-10-27', ({ book }) => {
    const { grams } = book.get(ids.wax.of('violet'));
    const left = Math.max(100, Math.round((2300 - grams) / 10) * 10);
    book.note('Maren', 'received', {
      wax: ids.wax.of('violet'),
      grams: left,
      lot: 'VI2610-41',
      note: 'Part of the order; the rest is late.',
    });
  });
  for (const [i, name] of SHORT.entries()) {
    on(`2026-${10 + (i % 2)}-${12 + i}`, ({ book }) => {
      const design = ids.design.of(designNamed(name));
      for (const pile of book.all('casting').filter((each) => each.design === design && each.pieces > 1)) {
        book.note('Pell', 'issued', { of: pile.id, pieces: Math.ceil(pile.pieces * 0.8), to: 'Gullhaven Museum shop', reason: 'sold' });
      }
    });
  }
}

/** Asked for beyond what is on hand, so that moulds have to be made again: design, size, metal, pieces beyond, due, for whom. */
const LATE_WANTS: readonly (readonly [string, string, string, number, string, string])[] = [
  ['Shoe buckle, square', '60 mm', 'pewter', 180, '2027-01-15', 'Fairlight Film Props'],
  ['Coiled serpent ring', 'P', 'silver', 40, '2026-12-18', 'Gullhaven Museum shop'],
  ['Coiled serpent ring', 'N', 'silver', 12, '2026-12-18', 'Gullhaven Museum shop'],
  ['Ivy-leaf pendant', '25 mm', 'bronze', 160, '2026-12-11', 'Market stall'],
  ['Crescent harness mount', '48 mm', 'brass', 45, '2027-02-12', 'Old Granary Theatre'],
];
const LATE_WANTS_SEED = 1118;

export function planLateWants(on: On) {
  on('2026-11-20', ({ book, ids }) => {
    book.aside(makeChance(LATE_WANTS_SEED), () => {
      for (const [name, size, metal, beyond, due, who] of LATE_WANTS) {
        const design = ids.design.of(designNamed(name));
        const piles = [...book.all('casting'), ...book.all('injectedWax')].filter((pile) => pile.design === design && pile.size === size);
        const onHand = piles.reduce((sum, pile) => sum + pile.pieces, 0);
        const pieces = Math.ceil((onHand + beyond) / 5) * 5;
        book.record('Maren', 'want', { design, size, metal, pieces, due, who });
      }
    });
  });
}
