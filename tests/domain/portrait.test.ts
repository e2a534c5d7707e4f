import { describe, expect, it } from 'vitest';
import { apply } from '../../src/domain/apply.ts';
import type { Entry } from '../../src/domain/entry.ts';
import { planCorrect } from '../../src/domain/plans/correct.ts';
import { planFailMould } from '../../src/domain/plans/fail-mould.ts';
import { picturesOf, portraitOf } from '../../src/domain/portrait.ts';
import { type Shelf, type Thing, thingOf } from '../../src/domain/shelf.ts';
import { placePage } from '../../src/views/place-page.ts';
import { whereIs } from '../../src/views/where-is.ts';
import { aDesign, aDesk, aMould, aPlace, aShelf, sha } from '../support/builders.ts';

const drawer = aPlace();
const design = aDesign({ pictures: [sha(1), sha(2)] });
const mould = aMould({ design: design.id, at: drawer.id });
const begun = aShelf([drawer, design, mould]);
const failed = (shelf: Shelf) =>
  apply(shelf, planFailMould(shelf, aDesk(), { mould: mould.id, faults: ['torn gate'], pictures: [sha(3)] }) as readonly Entry[]);
const shown = (shelf: Shelf, picture: number) =>
  apply(shelf, planCorrect(shelf, aDesk(), { of: mould.id, fields: {}, pictures: [sha(picture)] }) as readonly Entry[]);
const ours = (shelf: Shelf) => thingOf(shelf, mould.id) as Thing;

describe('the portrait', () => {
  it('is the design’s while the thing has none of its own, on every screen, also after a photo of what tore', () => {
    const shelf = failed(begun);
    expect(portraitOf(shelf, ours(shelf))).toBe(sha(1));
    expect(picturesOf(shelf, ours(shelf))).toEqual([sha(1), sha(3)]);
    expect(placePage(shelf, drawer.id, new Map(), () => [])?.rows[0]?.picture).toBe(sha(1));
    expect(whereIs(shelf, 'dolphin').things.find(({ id }) => id === mould.id)?.picture).toBe(sha(1));
  });

  it('is the first picture that was added to the thing itself', () => {
    const shelf = shown(shown(failed(begun), 4), 5);
    expect(picturesOf(shelf, ours(shelf))).toEqual([sha(4), sha(5), sha(3)]);
    expect(portraitOf(shelf, ours(shelf))).toBe(sha(4));
  });

  it('is none for a thing of which only a fault was photographed', () => {
    const shelf = failed(aShelf([aMould({ ...mould, design: undefined } as never)]));
    expect([portraitOf(shelf, ours(shelf)), picturesOf(shelf, ours(shelf))]).toEqual([undefined, [sha(3)]]);
  });

  it('can be a picture that was first seen at a look', () => {
    const shelf = shown(failed(begun), 3);
    expect(picturesOf(shelf, ours(shelf))).toEqual([sha(3)]);
  });
});
