import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ancestorsOf, childrenOf, descendantsOf, parentsOf } from '../../../src/domain/lineage/descent.ts';
import { nearKin } from '../../../src/domain/lineage/family.ts';
import { kinOf, saidParents } from '../../../src/domain/lineage/kin.ts';
import { CARD_W, layOut } from '../../../src/domain/lineage/layout.ts';
import { cutsOf } from '../../../src/domain/lineage/rings.ts';
import { NOUNS } from '../../../src/domain/noun.ts';
import type { Shelf, Thing } from '../../../src/domain/shelf.ts';
import { anyLineage } from '../../support/lineages.ts';
import { idOf, shelfOf } from '../../support/shelf-of.ts';

const id = (name: string) => idOf(name);

/** The same things, met in the opposite order. */
function turned(shelf: Shelf): Shelf {
  const things = Object.fromEntries(
    NOUNS.map((noun) => [noun, new Map([...(shelf.things[noun] as ReadonlyMap<string, Thing>)].reverse())]),
  );
  return { ...shelf, things: things as unknown as Shelf['things'] };
}

describe('a lineage', () => {
  it('goes from the original through mould, wax, dressed wax and mould to castings, with several parents', () => {
    const shelf = shelfOf([
      { noun: 'master', is: 'ring', kind: 'original' },
      { noun: 'master', is: 'stone', kind: 'print' },
      { noun: 'mould', is: 'first', master: id('ring') },
      { noun: 'injectedWax', is: 'pile', mould: id('first') },
      { noun: 'master', is: 'built', from: [id('pile'), id('stone')] },
      { noun: 'mould', is: 'second', master: id('built') },
      { noun: 'casting', is: 'cast', mould: id('second') },
    ]);
    expect(ancestorsOf(shelf, id('cast'))).toEqual(new Set(['second', 'built', 'pile', 'stone', 'first', 'ring'].map(id)));
    expect(descendantsOf(shelf, id('stone'))).toEqual(new Set(['built', 'second', 'cast'].map(id)));
    expect(descendantsOf(shelf, id('cast')).size).toBe(0);
  });

  it('names a parent that is not recorded here, and goes no further', () => {
    const shelf = shelfOf([{ noun: 'mould', is: 'orphan', master: id('gone') }]);
    expect([...ancestorsOf(shelf, id('orphan'))]).toEqual([id('gone')]);
    expect(kinOf(shelf, id('gone'))).toBeUndefined();
    expect(descendantsOf(shelf, id('gone'))).toEqual(new Set([id('orphan')]));
  });

  it('cuts a ring that two phones made above its oldest thing, and keeps its other parents', () => {
    const [a, b] = [id('a'), id('b')].sort() as [string, string];
    const names = { [id('a')]: 'a', [id('b')]: 'b' };
    const shelf = shelfOf([
      { noun: 'master', is: names[a] as string, from: [id('mould of b'), id('elsewhere')] },
      { noun: 'master', is: names[b] as string, from: [a] },
      { noun: 'mould', is: 'mould of b', master: b },
    ]);
    const ring = [a, b, id('mould of b')].sort();
    const oldest = ring[0] as string;
    for (const each of [shelf, turned(shelf)]) expect([...cutsOf(each).keys()]).toEqual([oldest]);
    expect(ancestorsOf(shelf, oldest).has(oldest)).toBe(false);
    expect(ancestorsOf(shelf, a).has(id('elsewhere'))).toBe(true);
  });

  it('always ends, and is cut the same whatever the order things are met in', () => {
    fc.assert(
      fc.property(anyLineage, ({ shelf, ids }) => {
        for (const each of ids) expect(ancestorsOf(shelf, each).has(each)).toBe(false);
        expect(new Map(cutsOf(turned(shelf)))).toEqual(new Map(cutsOf(shelf)));
      }),
    );
  });

  it('cuts nothing where there is no ring', () => {
    fc.assert(
      fc.property(anyLineage, ({ shelf, ids }) => {
        const cut = [...cutsOf(shelf).keys()];
        // A thing is cut only when what it is said to have come from leads back to it.
        for (const each of cut) {
          const seen = new Set<string>();
          const open = [each];
          for (let at = open.pop(); at !== undefined; at = open.pop()) {
            const thing = kinOf(shelf, at);
            for (const parent of thing ? saidParents(thing) : []) {
              if (!seen.has(parent)) open.push(parent);
              seen.add(parent);
            }
          }
          expect(seen.has(each)).toBe(true);
        }
        for (const each of ids.filter((one) => !cut.includes(one))) {
          const thing = kinOf(shelf, each);
          if (thing) expect(parentsOf(shelf, thing)).toEqual(saidParents(thing));
        }
      }),
    );
  });

  it('up and down are inverse', () => {
    fc.assert(
      fc.property(anyLineage, ({ shelf, ids }) => {
        for (const one of ids) {
          for (const other of ids) expect(ancestorsOf(shelf, one).has(other)).toBe(descendantsOf(shelf, other).has(one));
        }
        for (const [parent, children] of childrenOf(shelf)) for (const child of children) expect(parentsOf(shelf, child)).toContain(parent);
      }),
    );
  });
});

describe('the nearest kin of a thing', () => {
  const shelf = shelfOf([
    { noun: 'master', is: 'ring', kind: 'original' },
    { noun: 'mould', is: 'first', master: id('ring') },
    { noun: 'mould', is: 'second', master: id('ring') },
    { noun: 'mould', is: 'third', master: id('ring') },
    { noun: 'injectedWax', is: 'pile', mould: id('first') },
    { noun: 'injectedWax', is: 'other pile', mould: id('first') },
    { noun: 'master', is: 'dressed', from: [id('pile')] },
    { noun: 'mould', is: 'copy', master: id('dressed') },
  ]);
  const near = (name: string) => new Set(nearKin(shelf, id(name), () => true).map((member) => member.id));
  const are = (...names: readonly string[]) => new Set(names.map(id));

  it('are what it came from and a few of what came of it, of a pile its mould’s master too', () => {
    expect(near('first')).toEqual(are('ring', 'first', 'pile', 'other pile'));
    expect(near('pile')).toEqual(are('ring', 'first', 'pile', 'dressed'));
    expect(near('dressed')).toEqual(are('first', 'pile', 'dressed', 'copy'));
    expect(near('ring').size).toBe(3);
    expect(nearKin(shelf, id('first'), () => false).map((member) => member.id)).toEqual([id('ring'), id('first')]);
    expect(nearKin(shelf, 'gone', () => true)).toEqual([]);
  });

  it('stand one below the other where that is asked for: no wider than one frame', () => {
    for (const name of ['ring', 'first', 'pile', 'dressed']) {
      const picture = layOut(
        nearKin(shelf, id(name), () => true),
        1,
      );
      expect(picture.width, name).toBeLessThanOrEqual(CARD_W + 20);
      const shown = new Set(picture.cards.flatMap((card) => [card.id, ...card.piles]));
      expect(shown).toEqual(near(name));
    }
  });
});
