import { describe, expect, it } from 'vitest';
import type { Grams, PlaceId, ThingId } from '../../src/domain/brand.ts';
import { foldAll } from '../../src/domain/fold.ts';
import { MONTHS_KEPT } from '../../src/domain/shelf.ts';
import { day } from '../support/builders.ts';
import { aCast, aDressed, anInjected, anInspected, anInvested, anIssued, aReceived, aWeighed, SOME } from '../support/entry-builders.ts';
import { contents, known, mould, pile, thing, wax } from '../support/known-things.ts';

describe('rejects that rise', () => {
  const runs = (count: number, good: number, bubbles: number) =>
    Array.from({ length: count }, () => anInjected({ shots: 12, good, ...(bubbles > 0 ? { rejects: { bubbles } } : { rejects: {} }) }));

  it('are watched from the first bad run on, and forgotten with a look at the mould', () => {
    const bad = [mould, ...runs(5, 20, 0), ...runs(2, 12, 8)];
    expect(thing(foldAll(bad), 'mould').drift).toMatchObject({ since: '2024-03-05', waxes: 40, rejects: 16 });
    expect(thing(foldAll([...bad, anInspected()]), 'mould').drift).toBeUndefined();
    expect(thing(foldAll([...bad, ...runs(9, 40, 0)]), 'mould')).not.toHaveProperty('drift');
  });
});

describe('injected', () => {
  it('adds to the mould’s tallies, takes the wax, and lays a new pile whose id is the entry’s', () => {
    const run = anInjected();
    const shelf = foldAll([mould, wax, run]);
    expect(thing(shelf, 'mould')).toMatchObject({ shots: 11, good: 39, rejects: 5, byFault: { bubbles: 3, 'short fill': 2 } });
    expect(thing(shelf, 'mould').runs).toStrictEqual([
      {
        on: '2024-03-05',
        good: 39,
        rejects: 5,
        wax: SOME.wax,
        injector: SOME.injector,
        waxC: 67,
        pressureKpa: 52,
        holdS: 7,
      },
    ]);
    expect(thing(shelf, 'wax')).toMatchObject({ grams: 408, used: { '2024-03': 92 } });
    expect(thing(shelf, 'injectedWax', run.id)).toStrictEqual({
      id: run.id,
      noun: 'injectedWax',
      since: '2024-03-05',
      pieces: 39,
      mould: SOME.mould,
      state: 'raw',
      design: SOME.design,
      size: 'small',
      wax: SOME.wax,
      at: SOME.place,
      atSince: '2024-03-05',
    });
    expect(contents(shelf, SOME.place)).toContain(run.id);
  });

  it('adds to a pile that is there, and makes none when nothing is said of where the waxes went, or none was good', () => {
    const shelf = foldAll([mould, pile, anInjected({ onto: SOME.injectedWax })]);
    expect(thing(shelf, 'injectedWax').pieces).toBe(72);
    expect(shelf.things.injectedWax.size).toBe(1);
    const { to: _, ...nowhere } = anInjected();
    expect(foldAll([mould, nowhere, anInjected({ good: 0 })]).things.injectedWax.size).toBe(0);
  });

  it('keeps the last run, and the last that went well when that one did not', () => {
    const kept = (...rejects: readonly number[]) => {
      const runs = rejects.map((bad, i) => anInjected({ shots: 40 + i, good: 40 + i - bad, rejects: bad ? { flash: bad } : {} }));
      return thing(foldAll([mould, ...runs]), 'mould').runs?.map(({ good, rejects: spoilt }) => [good, spoilt]);
    };
    expect(kept(0)).toEqual([[40, 0]]);
    expect(kept(0, 1)).toEqual([[40, 1]]);
    expect(kept(30)).toEqual([[10, 30]]);
    expect(kept(0, 21, 22, 23)).toEqual([
      [40, 0],
      [20, 23],
    ]);
    expect(kept(0, 21, 0, 20)).toEqual([
      [42, 0],
      [23, 20],
    ]);
  });

  it('keeps the last months of use', () => {
    const runs = Array.from({ length: MONTHS_KEPT + 6 }, (_, i) => {
      const month = `20${22 + Math.floor(i / 12)}-${String((i % 12) + 1).padStart(2, '0')}`;
      return anInjected({ shots: i + 1, good: i + 1, grams: 2 as Grams, on: day(`${month}-15`) });
    });
    const shelf = foldAll([mould, wax, ...runs]);
    expect(thing(shelf, 'mould').shots).toBe(210);
    const months = Object.keys(thing(shelf, 'wax').used ?? {}).sort();
    expect(months).toHaveLength(MONTHS_KEPT);
    expect([months[0], months.at(-1)]).toEqual(['2022-07', '2023-08']);
    expect(thing(shelf, 'wax').grams).toBe(460);
  });
});

describe('received, weighed, issued', () => {
  it('keep the grams of a wax: added, set, taken', () => {
    expect(thing(foldAll([wax, aReceived()]), 'wax').grams).toBe(1750);
    expect(thing(foldAll([wax, aReceived(), aWeighed()]), 'wax')).toMatchObject({ grams: 1830, weighedOn: '2024-03-05' });
    expect(
      thing(foldAll([wax, aReceived(), aWeighed(), anIssued({ of: SOME.wax as ThingId, grams: 130 as Grams, reason: 'discarded' })]), 'wax')
        .grams,
    ).toBe(1700);
  });

  it('take pieces off a pile, and count castings by where they went', () => {
    const casting = known('casting', {}, { pieces: 26 });
    const shelf = foldAll([
      casting,
      pile,
      anIssued(),
      anIssued({ reason: 'given', pieces: 2 }),
      anIssued({ pieces: 1 }),
      anIssued({ of: SOME.injectedWax as ThingId }),
    ]);
    expect(thing(shelf, 'casting')).toMatchObject({ pieces: 18, issued: { sold: 6, given: 2 } });
    expect(thing(shelf, 'injectedWax').pieces).toBe(28);
  });
});

describe('dressed', () => {
  it('takes the waxes off the raw pile and lays the good ones on a dressed pile', () => {
    const dressed = aDressed({ to: 'tray' as PlaceId });
    const shelf = foldAll([pile, dressed]);
    expect(thing(shelf, 'injectedWax').pieces).toBe(13);
    expect(thing(shelf, 'injectedWax', dressed.id)).toMatchObject({
      pieces: 16,
      state: 'dressed',
      mould: SOME.mould,
      size: 'small',
      at: 'tray',
    });
    const { to: _, ...where } = aDressed({ onto: dressed.id as never, good: 2, scrapped: 1 });
    expect(thing(foldAll([pile, dressed, where]), 'injectedWax', dressed.id).pieces).toBe(18);
    const { to: __, ...beside } = aDressed();
    expect(thing(foldAll([pile, beside]), 'injectedWax', beside.id).at).toBe(SOME.place);
  });
});

describe('invested and cast', () => {
  const flask = known('flask', { name: 'Flask 5' });
  it('fill a flask with waxes and empty it as castings', () => {
    const invested = anInvested();
    const full = foldAll([flask, pile, mould, invested]);
    expect(thing(full, 'injectedWax').pieces).toBe(24);
    expect(thing(full, 'flask').invested).toEqual({ on: '2024-03-05', waxes: [{ from: SOME.injectedWax, pieces: 9 }] });
    const poured = aCast();
    const shelf = foldAll([flask, pile, mould, invested, poured]);
    expect(thing(shelf, 'flask')).not.toHaveProperty('invested');
    expect(thing(shelf, 'mould')).toMatchObject({ sound: 8, scrap: 1 });
    expect(thing(shelf, 'casting', poured.id)).toStrictEqual({
      id: poured.id,
      noun: 'casting',
      since: '2024-03-05',
      pieces: 8,
      metal: 'bronze',
      scrap: { porosity: 1 },
      mould: SOME.mould,
      flask: SOME.flask,
      design: SOME.design,
      size: 'small',
      at: SOME.place,
      atSince: '2024-03-05',
    });
  });

  it('add to castings that are there', () => {
    const casting = known('casting', {}, { pieces: 26 });
    const shelf = foldAll([casting, aCast({ onto: SOME.casting }), aCast({ onto: SOME.casting, scrap: { porosity: 2, fins: 1 } })]);
    expect(thing(shelf, 'casting')).toMatchObject({ pieces: 42, scrap: { porosity: 3, fins: 1 } });
    expect(shelf.things.casting.size).toBe(1);
  });
});
