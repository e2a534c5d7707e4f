import { describe, expect, it } from 'vitest';
import type { PlaceId, ThingId, WaxId } from '../../src/domain/brand.ts';
import type { Entry } from '../../src/domain/entry.ts';
import { foldAll, foldOn } from '../../src/domain/fold.ts';
import type { Shelf } from '../../src/domain/shelf.ts';
import { day, sha } from '../support/builders.ts';
import {
  aCast,
  aCorrected,
  aCounted,
  aFailed,
  aMeasured,
  aMoved,
  anInjected,
  anInspected,
  anInvested,
  anIssued,
  aReceived,
  aRetired,
  aStudioCorrected,
  aWeighed,
  aWithdrawn,
  SOME,
} from '../support/entry-builders.ts';
import { contents, known, mould, pile, thing, wax } from '../support/known-things.ts';

describe('recorded', () => {
  it('puts a thing on the shelf where it stands, with its tallies at their start', () => {
    const shelf = foldAll([mould, wax, pile]);
    expect(thing(shelf, 'mould')).toStrictEqual({
      id: SOME.mould,
      noun: 'mould',
      since: '2024-03-05',
      shots: 0,
      good: 0,
      rejects: 0,
      name: 'Dolphin 1',
      size: 'small',
      design: SOME.design,
      note: 'old',
      at: SOME.place,
      atSince: '2024-03-05',
    });
    expect(thing(shelf, 'wax').grams).toBe(500);
    expect(thing(shelf, 'injectedWax').pieces).toBe(33);
    expect(contents(shelf, SOME.place)).toEqual([SOME.mould, SOME.injectedWax].sort());
    expect(shelf.entries).toBe(3);
    expect(shelf.last).toBe(
      [mould, wax, pile]
        .map(({ id }) => id)
        .sort()
        .at(-1),
    );
  });
});

describe('corrected', () => {
  it('changes and clears the fields it names and no others', () => {
    const shelf = foldAll([mould, aCorrected(mould, { name: 'Dolphin 2', note: null })]);
    const { note: _, ...rest } = thing(foldAll([mould]), 'mould');
    expect(thing(shelf, 'mould')).toStrictEqual({ ...rest, name: 'Dolphin 2' });
  });

  it('sets a flag aside, and brings it back', () => {
    const aside = aCorrected(mould, {}, { aside: { worn: day('2024-09-01'), rejects: day('2024-10-01') } } as never);
    const back = aCorrected(mould, {}, { aside: { worn: null } } as never);
    const all = aCorrected(mould, {}, { aside: { rejects: null } } as never);
    expect(thing(foldAll([mould, aside]), 'mould').aside).toEqual({ worn: '2024-09-01', rejects: '2024-10-01' });
    expect(thing(foldAll([mould, aside, back]), 'mould').aside).toEqual({ rejects: '2024-10-01' });
    expect(thing(foldAll([mould, aside, back, all]), 'mould')).not.toHaveProperty('aside');
  });

  it('of the studio merges months and lives key by key', () => {
    const first = aStudioCorrected({
      name: 'Test',
      months: { '1': { lowC: 2, highC: 9 }, '2': { lowC: 3, highC: 10 } },
      life: { natural: { shots: 90 } },
    });
    const second = aStudioCorrected({ months: { '2': { lowC: 4, highC: 11 } }, life: { 'tin silicone': { shots: 40 } } });
    expect(foldAll([first, second]).studio).toEqual({
      name: 'Test',
      months: { '1': { lowC: 2, highC: 9 }, '2': { lowC: 4, highC: 11 } },
      life: { natural: { shots: 90 }, 'tin silicone': { shots: 40 } },
    });
  });

  it('of another noun than the thing’s changes nothing', () => {
    expect(thing(foldAll([mould, aCorrected({ id: SOME.mould, noun: 'master' }, { name: 'x' })]), 'mould').name).toBe('Dolphin 1');
  });
});

describe('moved', () => {
  const there = 'there' as PlaceId;
  it('stands the thing elsewhere and remembers its usual place when asked to', () => {
    const shelf = foldAll([mould, aMoved({ to: there, usual: 'kept', on: day('2024-04-01'), until: day('2024-05-01') })]);
    expect(thing(shelf, 'mould')).toMatchObject({ at: there, atSince: '2024-04-01', usual: SOME.place, until: '2024-05-01' });
    expect(contents(shelf, there)).toEqual([SOME.mould]);
    expect(shelf.contents.has(SOME.place)).toBe(false);
  });

  it('keeps the first usual place over several moves, and forgets it at home or when it is changed', () => {
    const away = aMoved({ to: there, usual: 'kept', until: day('2024-05-01') });
    const further = aMoved({ to: 'further' as PlaceId, usual: 'kept' });
    expect(thing(foldAll([mould, away, further]), 'mould')).toMatchObject({ at: 'further', usual: SOME.place });
    const home = thing(foldAll([mould, away, further, aMoved({ to: SOME.place, usual: 'kept' })]), 'mould');
    expect(home).not.toHaveProperty('usual');
    expect(home).not.toHaveProperty('until');
    expect(thing(foldAll([mould, away, aMoved({ to: 'new' as PlaceId })]), 'mould')).not.toHaveProperty('usual');
    expect(thing(foldAll([mould, away, aMoved({ to: 'new' as PlaceId, usual: 'changed' })]), 'mould')).not.toHaveProperty('usual');
  });
});

describe('inspected and failed', () => {
  it('judge a mould or a master; the newest judgement stands', () => {
    const looked = anInspected({ note: 'a little flash' });
    expect(thing(foldAll([mould, looked]), 'mould')).toMatchObject({
      grade: 'watch',
      gradeOn: '2024-03-05',
      faults: ['flash'],
      gradeNote: 'a little flash',
      nextLook: '2024-06-21',
    });
    const failed = thing(foldAll([mould, looked, aFailed({ on: day('2024-03-09') })]), 'mould');
    expect(failed).toMatchObject({ grade: 'failed', gradeOn: '2024-03-09', faults: ['torn gate', 'curled'] });
    expect(failed).not.toHaveProperty('gradeNote');
    expect(failed).not.toHaveProperty('nextLook');
    expect(thing(foldAll([known('master'), anInspected({ of: SOME.master as ThingId })]), 'master').grade).toBe('watch');
    expect(thing(foldAll([wax, aFailed({ of: SOME.wax as ThingId })]), 'wax')).not.toHaveProperty('grade');
  });
});

describe('retired, measured, counted', () => {
  it('say so on the thing', () => {
    expect(thing(foldAll([mould, aRetired()]), 'mould').retired).toEqual({ on: '2024-03-05', reason: 'torn' });
    const measured = thing(foldAll([known('master'), aMeasured()]), 'master').measured;
    expect(measured).toEqual({ on: '2024-03-05', sizes: [{ name: 'length', mm: 14.8 }], grams: 6.3 });
    expect(thing(foldAll([pile, aCounted()]), 'injectedWax')).toMatchObject({ pieces: 29, countedOn: '2024-03-05' });
    expect(thing(foldAll([mould, aCounted({ of: SOME.mould as ThingId })]), 'mould')).not.toHaveProperty('pieces');
  });
});

describe('pictures', () => {
  it('gather on the thing an entry is about, each once', () => {
    const shelf = foldAll([mould, aFailed({ pictures: [sha(1), sha(2)] }), anInspected({ pictures: [sha(2), sha(3)] })]);
    expect(thing(shelf, 'mould')).toMatchObject({ looks: [sha(1), sha(2), sha(3)] });
    expect(thing(shelf, 'mould').pictures).toBeUndefined();
    const { mould: _, flask: __, ...alone } = aCast({ pictures: [sha(4)] });
    expect(thing(foldAll([alone]), 'casting', alone.id).pictures).toEqual([sha(4)]);
  });
});

describe('entries about things that are not there', () => {
  it('change nothing of their own', () => {
    const all: Entry[] = [
      aFailed(),
      anInspected(),
      aRetired(),
      aReceived(),
      aWeighed(),
      aCounted(),
      aMeasured(),
      anIssued(),
      aMoved(),
      anInvested(),
    ];
    const shelf = foldAll([...all, aCorrected(mould, { name: 'x' })]);
    expect(Object.values(shelf.things).every((things) => things.size === 0)).toBe(true);
    expect(shelf.contents.size).toBe(0);
  });
});

describe('going on from a shelf', () => {
  it('leaves the shelf it began with as it was, and shares what did not change', () => {
    const base = foldAll([mould, wax, pile]);
    const before = structuredClone(base);
    const next = foldOn(base, [
      anInjected({ onto: SOME.injectedWax }),
      aMoved({ to: 'there' as PlaceId }),
      aFailed({ pictures: [sha(1)] }),
    ]) as Shelf;
    expect(base).toEqual(before);
    expect(next.things.place).toBe(base.things.place);
    expect(next.things.mould).not.toBe(base.things.mould);
    expect(foldOn(base, [])).toBe(base);
  });

  it('cannot tell when an entry is older, takes back what is summed, or belongs to a summed action', () => {
    const base = foldAll([mould, wax, aReceived()]);
    expect(foldOn(base, [wax])).toBeNull();
    expect(foldOn(base, [aWithdrawn({ id: SOME.mould })])).toBeNull();
    expect(foldOn(base, [aReceived({ step: wax.id })])).toBeNull();
    const later = aReceived({ wax: SOME.wax as WaxId });
    expect(thing(foldOn(base, [later, aWithdrawn(later)]) as Shelf, 'wax').grams).toBe(1750);
  });
});
