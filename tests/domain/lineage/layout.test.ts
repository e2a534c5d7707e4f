import { describe, expect, it } from 'vitest';
import type { Entry } from '../../../src/domain/entry.ts';
import { foldAll } from '../../../src/domain/fold.ts';
import { familyOf, outlineOf, unknownAbove } from '../../../src/domain/lineage/family.ts';
import { CARD_W, type Card, layOut } from '../../../src/domain/lineage/layout.ts';
import { bigFamily } from '../../bench/family.ts';
import { idOf, shelfOf } from '../../support/shelf-of.ts';

const overlap = (a: Card, b: Card) => a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h;

describe('the picture of a lineage', () => {
  const entries: Entry[] = bigFamily(500);
  const family = familyOf(foldAll(entries), entries[0]?.id ?? '', 'line');
  const picture = layOut(family);

  it('shows every thing once, piles within the card of their mould, and no card over another', () => {
    expect(family).toHaveLength(500);
    const shown = picture.cards.flatMap((card) => [card.id, ...card.piles]);
    expect(new Set(shown)).toEqual(new Set(family.map(({ id }) => id)));
    expect(shown).toHaveLength(500);
    for (const [at, card] of picture.cards.entries())
      for (const other of picture.cards.slice(at + 1)) expect(overlap(card, other), `${card.id} ${other.id}`).toBe(false);
    for (const card of picture.cards) {
      expect(card.x).toBeGreaterThanOrEqual(0);
      expect(card.x + card.w).toBeLessThanOrEqual(picture.width + 1);
      expect(card.y + card.h).toBeLessThanOrEqual(picture.height + 1);
    }
  });

  it('has what came of a thing below it, and generations begin one below the other', () => {
    const top = new Map(picture.cards.flatMap((card) => [card.id, ...card.piles].map((id) => [id, card] as const)));
    for (const { id, parents } of family) {
      for (const parent of parents) {
        const [above, below] = [top.get(parent) as Card, top.get(id) as Card];
        if (above !== below) expect(below.y).toBeGreaterThan(above.y);
      }
    }
    const begins = picture.bands.map(({ generation }) => generation);
    expect(begins).toEqual([...begins].sort((a, b) => a - b));
    expect(begins[0]).toBe(0);
    expect(picture.width).toBeLessThan(60 * CARD_W);
  });

  it('shows a parent that is not recorded as unknown, and one thing alone', () => {
    const shelf = shelfOf([
      { noun: 'mould', is: 'orphan' },
      { noun: 'casting', is: 'pile', mould: idOf('orphan') },
      { noun: 'mould', is: 'other', master: idOf('gone') },
    ]);
    const members = familyOf(shelf, idOf('pile'), 'line');
    expect(members.map(({ noun }) => noun)).toEqual(['unknown', 'mould', 'casting']);
    expect(layOut(members).cards.map(({ id }) => id)).toEqual([unknownAbove(idOf('orphan')), idOf('orphan')]);
    expect(familyOf(shelf, idOf('other'), 'line').map(({ id }) => id)).toEqual([idOf('gone'), idOf('other')]);
    expect(layOut([{ id: 'x', noun: 'master', parents: [], generation: 0 }]).cards).toHaveLength(1);
    expect(familyOf(shelf, idOf('nothing'), 'line')).toEqual([]);
  });

  it('tells the whole family of a pile, and an outline in which nothing is twice', () => {
    const shelf = shelfOf([
      { noun: 'master', is: 'a', kind: 'original' },
      { noun: 'master', is: 'b', kind: 'print' },
      { noun: 'mould', is: 'both', master: idOf('a'), masters: [idOf('b')] },
      { noun: 'mould', is: 'aside', master: idOf('b') },
      { noun: 'casting', is: 'pile', mould: idOf('both') },
    ]);
    expect(familyOf(shelf, idOf('pile'), 'line')).toHaveLength(4);
    const whole = familyOf(shelf, idOf('pile'), 'family');
    expect(new Set(whole.map(({ id }) => id))).toEqual(new Set(['a', 'b', 'both', 'aside', 'pile'].map((name) => idOf(name))));
    const count = (branches: ReturnType<typeof outlineOf>): number => branches.reduce((sum, { below }) => sum + 1 + count(below), 0);
    expect(count(outlineOf(whole))).toBe(5);
    const branch = outlineOf(whole)
      .flatMap(({ below }) => below)
      .find(({ id }) => id === idOf('both'));
    expect(branch?.besides).toHaveLength(1);
  });
});
