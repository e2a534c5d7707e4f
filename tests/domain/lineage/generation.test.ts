import { describe, expect, it } from 'vitest';
import { generationInWords, generationOf, hasUnknownParent } from '../../../src/domain/lineage/generation.ts';
import { kinOf } from '../../../src/domain/lineage/kin.ts';
import { idOf, shelfOf } from '../../support/shelf-of.ts';

const shelf = shelfOf([
  { noun: 'master', is: 'ring', kind: 'original' },
  { noun: 'mould', is: 'first', master: idOf('ring'), purpose: 'intermediate' },
  { noun: 'injectedWax', is: 'pile', mould: idOf('first') },
  { noun: 'master', is: 'dressed', kind: 'dressed wax', from: [idOf('pile')] },
  { noun: 'mould', is: 'second', master: idOf('dressed') },
  { noun: 'casting', is: 'cast', mould: idOf('second') },
  { noun: 'master', is: 'again', kind: 'casting', from: [idOf('cast'), idOf('ring')] },
  { noun: 'mould', is: 'third', master: idOf('again') },
  { noun: 'mould', is: 'orphan' },
  { noun: 'casting', is: 'from orphan', mould: idOf('orphan') },
  { noun: 'mould', is: 'of what is gone', master: idOf('gone') },
  { noun: 'master', is: 'found wax', kind: 'dressed wax' },
  { noun: 'master', is: 'no kind' },
  { noun: 'place', is: 'drawer' },
]);
const of = (name: string) => generationOf(shelf, idOf(name));
const says = (name: string) => generationInWords(kinOf(shelf, idOf(name)) as never, of(name) as never);

describe('generations', () => {
  it('count the mouldings since the original; of several ways the longest', () => {
    expect(
      Object.fromEntries(['ring', 'first', 'pile', 'dressed', 'second', 'cast', 'again', 'third'].map((name) => [name, of(name)?.count])),
    ).toEqual({
      ring: 0,
      first: 1,
      pile: 1,
      dressed: 1,
      second: 2,
      cast: 2,
      again: 2,
      third: 3,
    });
    expect(of('third')?.isLeast).toBe(false);
  });

  it('are “at least” where a parent is not recorded, which is taken for an original', () => {
    expect(of('orphan')).toEqual({ count: 1, isLeast: true });
    expect(of('from orphan')).toEqual({ count: 1, isLeast: true });
    expect(of('of what is gone')).toEqual({ count: 1, isLeast: true });
    expect(of('found wax')).toEqual({ count: 1, isLeast: true });
    expect(of('no kind')).toEqual({ count: 0, isLeast: true });
    expect(of('drawer')).toBeUndefined();
    expect(
      ['orphan', 'of what is gone', 'found wax', 'ring'].map((name) => hasUnknownParent(shelf, kinOf(shelf, idOf(name)) as never)),
    ).toEqual([true, true, true, false]);
  });

  it('are told in words: a moulded copy of a copy is said to be so', () => {
    expect(says('ring')).toBe('Generation 0: an original.');
    expect(says('first')).toBe('Generation 1: moulded from the original.');
    expect(says('cast')).toBe('Generation 2: a copy of a copy.');
    expect(says('third')).toBe('Generation 3: moulded from a copy of a copy.');
    expect(says('from orphan')).toBe('Generation 1 at least: a copy. Where it began is not recorded.');
  });
});

/** Common practice, no source. */
describe('a worn original', () => {
  it('is moulded, cast in wax, the wax repaired and moulded again: the first mould is the intermediate step, the second the production mould', () => {
    expect(of('first')?.count).toBe(1);
    expect(of('second')?.count).toBe(2);
    expect(kinOf(shelf, idOf('first'))).toMatchObject({ purpose: 'intermediate' });
  });
});
