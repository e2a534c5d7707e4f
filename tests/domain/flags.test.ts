import { describe, expect, it } from 'vitest';
import type { Celsius, Grams, ThingId } from '../../src/domain/brand.ts';
import type { FlagKind } from '../../src/domain/entry.ts';
import { rulesOf } from '../../src/domain/flag.ts';
import { flagsOf, lookAt } from '../../src/domain/flags.ts';
import { type Shelf, type Thing, thingOf } from '../../src/domain/shelf.ts';
import { aCasting, aDesign, aMaster, aMould, anInjectedWax, anInjector, aPeriod, aPlace, aShelf, aWax, day } from '../support/builders.ts';

const TODAY = day('2025-06-20');
const flags = (shelf: Shelf, id: ThingId) => flagsOf(thingOf(shelf, id) as Thing, lookAt(shelf, rulesOf(TODAY, shelf.studio)));
const only = (shelf: Shelf, id: ThingId, kind: FlagKind) => flags(shelf, id).find((flag) => flag.kind === kind);

describe('strays', () => {
  const coptic = aPeriod({ name: 'Coptic' });
  const georgian = aPeriod({ name: 'Georgian' });
  const seal = aDesign({ name: 'Fob seal', periods: [georgian.id] });
  const cabinet = aPlace({ name: 'Cabinet A', kind: 'cabinet', for: 'moulds', periods: [coptic.id] });
  const drawer = aPlace({ name: 'A1', in: cabinet.id });
  const georgianDrawer = aPlace({ name: 'A2', in: cabinet.id, periods: [georgian.id, coptic.id] });
  const shelfWith = (...things: Thing[]) => aShelf([coptic, georgian, seal, cabinet, drawer, georgianDrawer, ...things]);

  it('finds a mould in a drawer of another period, also where the period is the cabinet’s', () => {
    const mould = aMould({ design: seal.id, at: drawer.id });
    expect(only(shelfWith(mould), mould.id, 'stray')).toMatchObject({ level: 'note', says: 'It is Georgian; A1 keeps Coptic.' });
  });

  it('leaves it alone where one of the drawer’s periods is its own', () => {
    const mould = aMould({ design: seal.id, at: georgianDrawer.id });
    expect(flags(shelfWith(mould), mould.id)).toEqual([]);
  });

  it('finds a thing of another kind than the place is for', () => {
    const pile = anInjectedWax({ design: seal.id, at: georgianDrawer.id });
    expect(only(shelfWith(pile), pile.id, 'stray')?.says).toBe('A2 is for moulds, and this is one of the injected waxes.');
  });

  it('says nothing without a period on both sides, away, or of an empty pile', () => {
    const away = aPlace({ name: 'The plater', kind: 'away', periods: [coptic.id] });
    const lent = aMould({ design: seal.id, at: away.id });
    const plain = aMould({ design: aDesign().id, at: drawer.id });
    const empty = anInjectedWax({ design: seal.id, at: drawer.id, pieces: 0 });
    const shelf = shelfWith(away, lent, plain, empty);
    for (const thing of [lent, plain, empty]) expect(flags(shelf, thing.id)).toEqual([]);
  });

  it('judges again when the design or the drawer changes, by the very same rules', () => {
    const rules = rulesOf(TODAY, {});
    const mould = aMould({ design: seal.id, at: drawer.id });
    const shelf = shelfWith(mould);
    const kinds = (changed: Partial<Shelf['things']>) =>
      flagsOf(mould, lookAt({ ...shelf, things: { ...shelf.things, ...changed } }, rules)).map(({ kind }) => kind);
    const redated = new Map(shelf.things.design).set(seal.id, { ...seal, periods: [coptic.id] });
    const refitted = new Map(shelf.things.place).set(drawer.id, { ...drawer, periods: [georgian.id] });
    expect(kinds({})).toEqual(['stray']);
    expect(kinds({ design: redated })).toEqual([]);
    expect(kinds({})).toEqual(['stray']);
    expect(kinds({ place: refitted })).toEqual([]);
  });

  it('finds it again on a shelf of its own', () => {
    const mould = aMould({ design: seal.id, at: drawer.id });
    const shelf = shelfWith(mould);
    expect(only(shelf, mould.id, 'stray')).toBeDefined();
    expect(only(aShelf([coptic, georgian, { ...seal, periods: [coptic.id] }, cabinet, drawer, mould]), mould.id, 'stray')).toBeUndefined();
    expect(
      only(aShelf([coptic, georgian, seal, cabinet, { ...drawer, periods: [georgian.id] }, mould]), mould.id, 'stray'),
    ).toBeUndefined();
  });
});

describe('things out past their day', () => {
  const plater = aPlace({ name: 'Plating', kind: 'away', holder: 'the plater in town' });
  it('says to whom, until when, and how long over', () => {
    const mould = aMould({ at: plater.id, until: day('2025-06-08') });
    expect(only(aShelf([plater, mould]), mould.id, 'out late')).toMatchObject({
      level: 'act',
      says: 'Out to the plater in town until 8 June 2025, 12 days past its day.',
    });
  });
  it('waits until the day is over', () => {
    const mould = aMould({ at: plater.id, until: TODAY });
    expect(flags(aShelf([plater, mould]), mould.id)).toEqual([]);
  });
});

describe('over-full places', () => {
  it('counts pieces, not piles', () => {
    const drawer = aPlace({ capacity: 34 });
    const pile = anInjectedWax({ at: drawer.id, pieces: 33 });
    const moulds = [aMould({ at: drawer.id }), aMould({ at: drawer.id })];
    expect(flags(aShelf([drawer, pile, moulds[0] as Thing]), drawer.id)).toEqual([]);
    expect(only(aShelf([drawer, pile, ...moulds]), drawer.id, 'over-full')?.says).toBe('35 pieces where 34 fit: 1 too many.');
  });
});

describe('castings on hand', () => {
  it('sums the piles of a design and sets them against what is to be kept', () => {
    const design = aDesign({ keep: 12 });
    const piles = [aCasting({ design: design.id, pieces: 4 }), aCasting({ design: design.id, pieces: 7, metal: 'silver' })];
    expect(only(aShelf([design, ...piles]), design.id, 'stock low')).toMatchObject({
      level: 'note',
      says: '11 castings on hand, 12 are to be kept: 1 short.',
    });
    expect(only(aShelf([design]), design.id, 'stock low')?.level).toBe('soon');
    expect(only(aShelf([{ ...design, keep: 11 }, ...piles]), design.id, 'stock low')).toBeUndefined();
  });
});

describe('a master that is no longer sound', () => {
  const design = aDesign();
  const worn = aMaster({ design: design.id, state: 'broken' });
  const spent = aMould({ design: design.id, master: worn.id, grade: 'worn' });
  const good = aMould({ design: design.id, master: worn.id });

  it('calls for action when every mould is spent', () => {
    expect(only(aShelf([design, worn, spent]), worn.id, 'master unsound')).toMatchObject({
      level: 'act',
      says: 'The master is broken, there is no other for this size, and its only mould is spent.',
    });
  });
  it('calls for it before long while a good mould is left', () => {
    expect(only(aShelf([design, worn, spent, good]), worn.id, 'master unsound')).toMatchObject({ level: 'soon' });
    expect(only(aShelf([design, worn, good]), worn.id, 'master unsound')).toBeUndefined();
  });
  it('rests where another sound master of the size is there', () => {
    const other = aMaster({ design: design.id });
    expect(only(aShelf([design, worn, spent, other]), worn.id, 'master unsound')).toBeUndefined();
    expect(only(aShelf([design, worn, spent, { ...other, size: 'large' }]), worn.id, 'master unsound')).toBeDefined();
    expect(only(aShelf([design, worn, spent, { ...other, state: 'worn' }]), worn.id, 'master unsound')).toBeDefined();
  });
  it('counts shots against the rubber’s life, and leaves moulds of other sizes and intermediate ones out', () => {
    const shot = aMould({ design: design.id, expectedShots: 60, shots: 60 });
    const elsewhere = [
      aMould({ design: design.id, size: 'large', grade: 'worn' }),
      aMould({ design: design.id, purpose: 'intermediate', grade: 'worn' }),
    ];
    expect(only(aShelf([design, worn, shot]), worn.id, 'master unsound')?.level).toBe('act');
    expect(only(aShelf([design, worn, good, ...elsewhere]), worn.id, 'master unsound')).toBeUndefined();
  });
});

describe('wax', () => {
  const pot = anInjector();
  const low = { grams: 80, used: { '2025-04': 900 }, deliveryDays: 18, keepGrams: 1 as Grams };

  it('runs low by what is used while more is on its way', () => {
    // 1 April to 20 June is 81 days: 11.1 g a day, 200 g in 18 days, 300 g with the margin.
    const wax = aWax(low);
    expect(only(aShelf([wax]), wax.id, 'wax low')).toMatchObject({
      level: 'act',
      says: '80 g left; 11.1 g a day used, so 7 days’ worth; 18 days to get more ask for 300 g.',
    });
    expect(only(aShelf([{ ...wax, grams: 250 }]), wax.id, 'wax low')?.level).toBe('soon');
    expect(only(aShelf([{ ...wax, grams: 301 }]), wax.id, 'wax low')).toBeUndefined();
  });

  it('runs low below what the studio keeps', () => {
    const wax = aWax({ grams: 700 });
    expect(only(aShelf([wax]), wax.id, 'wax low')?.says).toBe('700 g left; at least 750 g is to be kept.');
  });

  it('asks to weigh a tub that is reckoned below nothing', () => {
    const wax = aWax({ grams: -35 });
    expect(only(aShelf([wax]), wax.id, 'wax low')).toMatchObject({ level: 'act', todo: 'Weigh the tub.' });
  });

  const studio = { months: { '6': { lowC: 17 as Celsius, highC: 24 as Celsius }, '7': { lowC: 29 as Celsius, highC: 33 as Celsius } } };
  it('is wrong for the coming month while an injector holds it', () => {
    const wax = aWax();
    const shelf = aShelf([wax, { ...pot, holds: wax.id }], { studio });
    expect(only(shelf, wax.id, 'wax wrong')).toMatchObject({
      level: 'soon',
      word: 'wax wrong next month',
      says: 'July: the workshop is 29–33 °C. Too soft above 27 °C, and the room stays warmer. Big pot holds it.',
    });
  });

  it('is wrong when it was used this month or the last, and of no concern when it rests in its tub', () => {
    const used = aWax({ used: { '2025-05': 40 } });
    expect(only(aShelf([used], { studio }), used.id, 'wax wrong')?.todo).toBe('Change to a wax that suits.');
    const resting = aWax({ used: { '2025-04': 40 } });
    expect(only(aShelf([resting], { studio }), resting.id, 'wax wrong')).toBeUndefined();
  });

  it('calls for action when it is wrong already', () => {
    const wax = aWax({ roomLowC: 26 as Celsius, roomHighC: 35 as Celsius });
    const shelf = aShelf([wax, { ...pot, holds: wax.id }], { studio });
    expect(only(shelf, wax.id, 'wax wrong')).toMatchObject({ level: 'act' });
    expect(only(shelf, wax.id, 'wax wrong')).not.toHaveProperty('word');
    expect(only(shelf, wax.id, 'wax wrong')?.says).toContain('June');
  });
});
