import type { Day } from '../../src/domain/brand.ts';
import { makeEntryId } from '../../src/domain/clock.ts';
import type { Entry } from '../../src/domain/entry.ts';

const START_MS = Date.UTC(2020, 0, 6, 8);

/**
 * A lineage of so many things: four piles to a mould, four moulds to a master, and a wax of every fifth mould dressed and moulded again. All
 * piles hold pieces, so that the picture shows them. The first entry records the original.
 */
export function bigFamily(things: number): Entry[] {
  const entries: Entry[] = [];
  const masters: string[] = [];
  const record = (noun: string, fields: object, pieces?: number): string => {
    const id = makeEntryId({ ms: START_MS + entries.length * 60_000, count: 0 }, 'BENCH0');
    entries.push({ id, kind: 'recorded', on: '2020-01-06' as Day, noun, fields, ...(pieces ? { pieces } : {}) } as Entry);
    return id;
  };
  masters.push(record('master', { name: 'The original', kind: 'original' }));
  for (let made = 0; entries.length < things; made++) {
    const master = masters[Math.floor(made / 4) % masters.length];
    const mould = record('mould', { name: `Mould ${made + 1}`, master, rubber: 'natural' });
    const waxes = [5, 7].map((pieces) => record('injectedWax', { mould, name: `Waxes of mould ${made + 1}`, state: 'raw' }, pieces));
    for (const pieces of [3, 9]) record('casting', { mould, name: `Castings of mould ${made + 1}`, metal: 'bronze' }, pieces);
    if (made % 5 === 0) masters.push(record('master', { name: `Dressed wax ${made + 1}`, kind: 'dressed wax', from: [waxes[0]] }));
  }
  return entries.slice(0, things);
}
