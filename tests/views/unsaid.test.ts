import { describe, expect, it } from 'vitest';
import { isBeginning, isNext } from '../../src/views/first-steps.ts';
import { unsaidOf } from '../../src/views/unsaid.ts';
import { aDesign, aMaster, aMould, aPlace, aShelf, aWax, day } from '../support/builders.ts';

describe('what nobody has said yet', () => {
  it('is told in the words of the form, and no more once it is said', () => {
    const { rubber: _, ...thin } = aMould();
    expect(unsaidOf(thin)).toEqual(['design', 'rubber', 'master']);
    const design = aDesign();
    expect(unsaidOf(aMould({ design: design.id, master: aMaster().id }))).toEqual([]);
  });

  it('is nothing for what is out of use, or of a kind that needs no more than its name', () => {
    expect(unsaidOf(aMould({ retired: { on: day('2024-02-03'), reason: 'torn' } }))).toEqual([]);
    expect(unsaidOf(aPlace())).toEqual([]);
    expect(unsaidOf(aWax())).toEqual([]);
  });
});

describe('the hints of the first use', () => {
  const empty = aShelf([aPlace()]);
  const one = aShelf([aPlace(), aMould()]);
  const many = aShelf([aMould(), aMould(), aMaster(), aMaster()]);

  it('point at what comes next, and stop once it is done or the studio knows its way', () => {
    expect([isNext(empty, 'drawer'), isNext(empty, 'record'), isNext(empty, 'label')]).toEqual([true, true, false]);
    expect([isNext(one, 'drawer'), isNext(one, 'record'), isNext(one, 'label')]).toEqual([false, false, true]);
    expect([isNext(many, 'drawer'), isNext(many, 'record'), isNext(many, 'label')]).toEqual([false, false, false]);
    expect([empty, one, many].map(isBeginning)).toEqual([true, true, false]);
  });
});
