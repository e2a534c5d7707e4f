import type { Rubber } from '../src/domain/mould.ts';
import { dayAfter } from './calendar.ts';
import { makeChance } from './chance.ts';
import { designAt, designNamed } from './designs.ts';
import type { Ctx } from './kinds.ts';
import { carryShots, mouldOf, recordMould } from './moulds.ts';

const SEED = 1104;

/** Moulds that had gone before the journal began, from their old cards: design, rubber, shots, and why they went. */
const GONE: readonly (readonly [string, Rubber, number, string])[] = [
  ['Octopus pendant', 'platinum silicone', 118, 'torn'],
  ['Spectacle-spiral brooch', 'platinum silicone', 164, 'worn out'],
  ['Ivy-leaf pendant', 'platinum silicone', 205, 'torn'],
  ['Lion brooch', 'platinum silicone', 238, 'worn out'],
  ['Beaded disc brooch', 'platinum silicone', 262, 'worn out'],
  ['Hare medallion', 'platinum silicone', 290, 'torn'],
  ['Wheel pendant', 'platinum silicone', 334, 'worn out'],
  ['Fob seal, ship', 'vulcanised silicone', 420, 'torn'],
  ['Tulip buckle', 'vulcanised silicone', 690, 'worn out'],
  ['Triskele harness mount', 'vulcanised silicone', 880, 'worn out'],
  ['Shoe buckle, oval', 'vulcanised silicone', 1040, 'torn'],
  ['Bull-leaper seal', 'vulcanised silicone', 1210, 'worn out'],
  ['Boat brooch', 'tin silicone', 38, 'torn'],
  ['Papyrus finial', 'tin silicone', 61, 'worn out'],
  ['Dove lamp finial', 'tin silicone', 77, 'worn out'],
  ['Trefoil mount', 'tin silicone', 92, 'torn'],
  ['Antelope-head earring', 'tin silicone', 110, 'worn out'],
  ['Acorn pendant', 'tin silicone', 45, 'lost'],
  ['Horse toggle', 'natural', 700, 'lost'],
];

export function recordOldMoulds({ book, ids }: Ctx) {
  const chance = makeChance(SEED);
  book.aside(chance, () => {
    for (const [name, rubber, shots, reason] of GONE) {
      const index = designNamed(name);
      const size = designAt(index).sizes[0].label;
      const made = dayAfter(rubber === 'tin silicone' ? '2023-06-05' : '2017-03-06', chance.whole(0, 300));
      const id = recordMould(book, chance, ids, index, size, { at: null, rubber, cavities: 1, made });
      const mould = mouldOf(ids, id);
      mould.fate = 'gone';
      carryShots(book, chance, mould, shots / mould.life);
      book.note('Maren', 'retired', { of: id, reason });
    }
  });
}
