import { describe, expect, it } from 'vitest';
import type { Celsius, DesignId, Kilopascals } from '../../src/domain/brand.ts';
import type { Run, Thing } from '../../src/domain/shelf.ts';
import { SI_UNITS, type Units } from '../../src/domain/units.ts';
import { settingsThatWork } from '../../src/views/mould-facts.ts';
import { mouldPageOf } from '../../src/views/mould-page.ts';
import { runFormOf } from '../../src/views/run-form.ts';
import {
  aCasting,
  aDesign,
  aMaster,
  aMould,
  anInjectedWax,
  anInjector,
  aPlace,
  aShelf,
  aWax,
  codeOf,
  day,
  sha,
} from '../support/builders.ts';

const today = day('2024-03-05');
const cabinet = aPlace({ name: 'Tall cabinet', kind: 'cabinet' });
const drawer = aPlace({ name: 'Drawer C2', label: 'C2', in: cabinet.id });
const away = aPlace({ name: 'The plater', kind: 'away', holder: 'Ann at the plater' });
const design = aDesign({ name: 'Owl seal', pictures: [sha(8)] });
const master = aMaster({ name: 'Owl, carved', at: drawer.id, pictures: [sha(4)] });
const wax = aWax({ name: 'Green' });
const base = {
  design: design.id,
  size: 'small',
  master: master.id,
  at: drawer.id,
  atSince: day('2023-12-24'),
  gradeOn: day('2024-02-01'),
} as const;
const page = (mould: Thing<'mould'>, others: readonly Thing[] = [], units: Units = SI_UNITS) =>
  mouldPageOf(aShelf([cabinet, drawer, away, design, master, wax, mould, ...others]), mould.id, today, units);
const run = (over: Partial<Run>): Run => ({
  on: day('2024-02-11'),
  good: 40,
  rejects: 0,
  wax: wax.id,
  ...over,
});

describe('a mould’s page', () => {
  it('says what it is, where it stands, what it has done and what it is made of', () => {
    const { name: _, ...unnamed } = aMould({
      ...base,
      grade: 'sound',
      code: codeOf('mould', 4),
      byFault: { flash: 9, bent: 38 },
      sound: 71,
      scrap: 3,
    });
    const shown = page(unnamed);
    expect(shown).toMatchObject({
      title: 'Owl seal, small',
      code: codeOf('mould', 4),
      pictures: [sha(8)],
      purpose: 'Production',
      states: [{ name: 'sound', word: 'sound' }],
      stands: { id: drawer.id, path: 'Tall cabinet › C2', since: '24 December 2023', front: { cabinet: cabinet.id, drawer: drawer.id } },
      masters: [{ id: master.id, title: 'Owl, carved', detail: 'carved · sound · Tall cabinet › C2', picture: sha(4) }],
      next: 'run',
    });
    expect(shown?.counts.map(({ name, says }) => `${name}: ${says}`)).toEqual([
      'Shots: 137',
      'Rejects: 47 of 548 waxes (9 %), most often bent',
      'Life used: 7 % of about 2\u202f000 shots (a rule of thumb for this rubber; set your own in Settings)',
      'Castings: 71 sound, 3 scrap',
    ]);
    expect(shown?.making.map(({ says }) => says)).toEqual(['natural', '9 November 2023, 3 months old', '4']);
  });

  it('lists what it has made, emptied piles left out, and the masters dressed from its waxes', () => {
    const mould = aMould({ ...base, purpose: 'intermediate' });
    const from = { mould: mould.id, at: drawer.id };
    const dressed = aMaster({ name: 'Owl, dressed', from: [mould.id] });
    const shown = page(mould, [
      anInjectedWax({ ...from, pieces: 1, wax: wax.id }),
      anInjectedWax({ ...from, pieces: 0 }),
      aCasting({ ...from, pieces: 6, metal: 'pewter' }),
      dressed,
    ]);
    expect(shown?.made.map(({ title, detail }) => `${title} / ${detail}`)).toEqual([
      '1 wax, raw / Green · Tall cabinet › C2',
      '6 castings, pewter / Tall cabinet › C2',
    ]);
    expect(shown?.descendants.map(({ title }) => title)).toEqual(['Owl, dressed']);
    expect(shown?.purpose).toContain('Intermediate');
    expect(shown?.states).toContainEqual({ name: 'intermediate', word: 'intermediate' });
  });

  it.each([
    ['failed: what to use instead', { grade: 'failed', faults: ['torn gate'] }, 'instead'],
    ['lent: it is back', { at: away.id, usual: drawer.id, grade: 'failed' }, 'back'],
    ['a look due: inspect', { grade: 'sound', nextLook: day('2024-03-01') }, 'inspect'],
    ['retired: nothing', { retired: { on: day('2024-01-01'), reason: 'dud' } }, 'nothing'],
    ['else: log a run', { grade: 'watch' }, 'run'],
  ] as const)('offers as the next action, %s', (_, over, next) => {
    expect(page(aMould({ ...base, ...over }))?.next).toBe(next);
  });

  it('says who has it, until when, and its usual place', () => {
    const lent = aMould({ ...base, at: away.id, usual: drawer.id, until: day('2024-03-04') });
    expect(page(lent)).toMatchObject({
      stands: { holder: 'Ann at the plater' },
      usual: { id: drawer.id, path: 'Tall cabinet › C2' },
      until: { says: '4 March 2024', isLate: true },
    });
    expect(page({ ...lent, until: today })?.until?.isLate).toBe(false);
  });

  it('gives the reasons for its condition', () => {
    const shown = page(aMould({ ...base, grade: 'failed', faults: ['torn gate'] }));
    expect(shown?.flags.map((flag) => flag.says).join()).toContain('torn gate');
  });

  it('is none for a mould that is not there', () => {
    expect(mouldPageOf(aShelf(), aMould().id, today, SI_UNITS)).toBeUndefined();
  });
});

describe('settings that work', () => {
  it('are the mould’s own first, in the studio’s units', () => {
    const mould = aMould({
      wax: wax.id,
      injection: { waxC: 68 as Celsius, pressureKpa: 100 as Kilopascals, holdS: 2.5 },
      runs: [run({ waxC: 50 as Celsius })],
    });
    expect(page(mould, [], { ...SI_UNITS, temperature: '°F', pressure: 'bar' })?.injection.map(({ says }) => says)).toEqual([
      'Green',
      '154 °F',
      '1 bar',
      '2.5 s',
      '8.4 g',
    ]);
  });

  it('are else those of the last run with hardly a reject, else of the last', () => {
    const good = run({ waxC: 66 as Celsius, good: 38, rejects: 2 });
    const bad = run({ waxC: 75 as Celsius, on: day('2024-03-01'), good: 37, rejects: 3 });
    expect(settingsThatWork(aMould({ runs: [good, bad] }))).toMatchObject({
      injection: { waxC: 66 },
      from: 'From the run of 11 February 2024: 38 good waxes, 2 rejects',
    });
    expect(settingsThatWork(aMould({ runs: [bad] }))).toMatchObject({ injection: { waxC: 75 } });
    expect(settingsThatWork(aMould())).toBeUndefined();
  });
});

describe('the run form', () => {
  const low = anInjector({ name: 'Bench pot' });
  it('offers last time’s wax, injector, settings and place, and the mould’s own faults first', () => {
    const mould = aMould({ ...base, byFault: { sink: 4, flash: 21 }, runs: [run({ injector: low.id, waxC: 67 as Celsius })] });
    const pile = anInjectedWax({ mould: mould.id, at: drawer.id });
    const sticky = aWax({ name: 'Sticky', use: 'sticky' });
    const gone = aWax({ name: 'Gone', retired: { on: today, reason: 'not wanted' } });
    const form = runFormOf(aShelf([drawer, design, wax, sticky, gone, low, mould, pile]), mould.id, SI_UNITS);
    expect(form?.offered).toMatchObject({ wax: wax.id, injector: low.id, waxC: 67, to: drawer.id });
    expect(form?.faults.slice(0, 4)).toEqual(['flash', 'sink', 'short fill', 'bubbles']);
    expect(new Set(form?.faults).size).toBe(11);
    expect(form?.waxes.map(({ word }) => word)).toEqual(['Green · 2\u202f310 g left · 63–71 °C']);
  });

  it('warns before a failed mould is used', () => {
    const mould = aMould({ design: design.id as DesignId, grade: 'failed', gradeOn: today, faults: ['curled'] });
    expect(runFormOf(aShelf([mould]), mould.id, SI_UNITS)?.warnings).toEqual(['This mould was marked failed on 5 March 2024: curled.']);
  });
});
