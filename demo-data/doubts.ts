import { makeChance } from './chance.ts';
import { designNamed } from './designs.ts';
import type { On } from './kinds.ts';

const SEED = 1120;

/** Moulds that failed, and the day from which their waxes are doubted. */
const FAILED: readonly (readonly [string, string])[] = [
  ['Mistletoe comb top', '2025-01-01'],
  ['Coiled serpent ring', '2025-06-01'],
];

/** What came out of two failed moulds and is on hand is marked for a look. */
export function planDoubts(on: On) {
  on('2026-11-19', ({ book, ids, domain }) => {
    book.aside(makeChance(SEED), () => {
      for (const [name, day] of FAILED) {
        const mould = ids.moulds.find((each) => each.index === designNamed(name) && book.get(each.id).grade === 'failed');
        if (!mould) throw new Error(`no failed mould of ${name}`);
        const { piles } = domain.traceFrom(book.entries, { mould: mould.id as never, day: day as never });
        const marked = [...piles].filter(([id, { most }]) => most > 0 && book.get(id).pieces > 0);
        if (marked.length === 0) throw new Error(`nothing to doubt of ${name}`);
        book.act('Maren', (add) => {
          for (const [of, { least, most }] of marked) {
            const { noun } = book.get(of);
            add('corrected', { noun, of, fields: { doubt: { mould: mould.id, on: book.today, least, most } } });
          }
        });
      }
    });
  });
}
