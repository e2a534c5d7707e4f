import fc from 'fast-check';
import type { Shelf } from '../../src/domain/shelf.ts';
import { idOf, type Made, shelfOf } from './shelf-of.ts';

type Pick = readonly number[];
const picks = fc.array(fc.nat({ max: 30 }), { maxLength: 2 });

/**
 * Shelves of masters, moulds, piles and castings that name one another as parents at random: sometimes nothing, sometimes something that is not
 * recorded, and sometimes in rings, as two devices can make them.
 */
export const anyLineage: fc.Arbitrary<{ readonly shelf: Shelf; readonly ids: readonly string[] }> = fc
  .array(fc.record({ noun: fc.constantFrom('master', 'mould', 'injectedWax', 'casting'), from: picks }), { minLength: 1, maxLength: 24 })
  .map((made) => {
    const name = (at: number) => `thing ${at}`;
    const some = (from: Pick, ...nouns: readonly string[]) =>
      from.filter((at) => made[at] === undefined || nouns.includes(made[at].noun)).map((at) => idOf(name(at)));
    const things = made.map(({ noun, from }, at): Made => {
      const base = { noun: noun as Made['noun'], is: name(at) };
      if (noun === 'master') return { ...base, from: some(from, 'master', 'mould', 'injectedWax', 'casting') };
      const masters = some(from, 'master');
      if (noun === 'mould') return { ...base, ...(masters[0] ? { master: masters[0] } : {}), masters: masters.slice(1) };
      const [mould] = some(from, 'mould');
      return { ...base, ...(mould ? { mould } : {}) };
    });
    return { shelf: shelfOf(things), ids: made.map((_, at) => idOf(name(at))) };
  });
