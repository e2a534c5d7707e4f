import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import * as domain from '../../demo-data/domain.ts';
import { makeStudio } from '../../demo-data/studio.ts';
import { ENTRY_KINDS, FLAG_KINDS } from '../../src/domain/entry.ts';
import { rulesOf } from '../../src/domain/flag.ts';
import { flagsOf, lookAt } from '../../src/domain/flags.ts';
import { GRADES } from '../../src/domain/grade.ts';
import { nounOfCode, parseCode } from '../../src/domain/label.ts';
import { RUBBERS } from '../../src/domain/mould.ts';
import { entries, header, journalText, LAST_DAY, pictures, picturesText, shelf, things } from './read-demo.ts';

const sha256 = (text: string) => createHash('sha256').update(text, 'utf8').digest('hex');
const { period, design, master, mould, place, wax, injector } = shelf.things;
const places = [...place.values()];
const moulds = [...mould.values()];

describe('the demo studio’s file', () => {
  it('says in its first line what follows', () => {
    expect(header).toEqual({ mouldkeep: 'journal', version: 1, name: 'Tern Quay Foundry', entries: entries.length, until: LAST_DAY });
    expect(shelf.studio.name).toBe('Tern Quay Foundry');
  });

  /** Two years take some seconds to live through. */
  const LONG_MS = 120_000;
  it('is what its script writes, byte for byte', { timeout: LONG_MS }, () => {
    const made = makeStudio(domain);
    expect(sha256(made.journal)).toBe(sha256(journalText));
    expect(sha256(made.pictures)).toBe(sha256(picturesText));
  });

  it('is small enough to come with the app', () => {
    expect(Buffer.byteLength(journalText)).toBeLessThan(1_200_000);
    expect(Buffer.byteLength(picturesText)).toBeLessThan(250_000);
  });

  it('holds two years in order, and nothing after the last day', () => {
    expect(entries.length).toBeGreaterThanOrEqual(4200);
    expect(entries.map(({ id }) => id)).toEqual(entries.map(({ id }) => id).sort());
    const days = entries.map(({ on }) => on).sort();
    expect(days[0]?.slice(0, 7)).toBe('2024-10');
    expect(days.at(-1)).toBe(LAST_DAY);
  });

  it('uses every kind of entry', () => {
    const kinds = new Set(entries.map(({ kind }) => kind));
    expect([...kinds].sort()).toEqual([...ENTRY_KINDS].sort());
  });
});

describe('the demo studio’s shelves', () => {
  it('hold what was promised', () => {
    expect(period.size).toBeGreaterThanOrEqual(9);
    expect(design.size).toBeGreaterThanOrEqual(75);
    expect(master.size).toBeGreaterThanOrEqual(110);
    expect(moulds.length).toBeGreaterThanOrEqual(190);
    expect([wax.size, injector.size]).toEqual([5, 3]);
    expect(places.filter(({ kind }) => kind === 'cabinet')).toHaveLength(6);
    expect(places.filter(({ kind }) => kind === 'drawer').length).toBeGreaterThanOrEqual(50);
    expect(places.filter(({ box }) => box).length).toBeGreaterThanOrEqual(55);
    expect([...master.values()].filter(({ kind }) => kind === 'original').length).toBeGreaterThanOrEqual(15);
    expect(new Set([...master.values()].map(({ state }) => state))).toEqual(new Set(['sound', 'worn', 'broken', 'lost']));
  });

  it('have moulds of every rubber and grade, intermediate ones, duds, plates and some without a master', () => {
    for (const rubber of RUBBERS) expect(moulds.filter((each) => each.rubber === rubber).length, rubber).toBeGreaterThanOrEqual(10);
    for (const grade of GRADES)
      expect(moulds.filter((each) => each.grade === grade && !each.retired).length, grade).toBeGreaterThanOrEqual(4);
    expect(moulds.filter(({ purpose }) => purpose === 'intermediate').length).toBeGreaterThanOrEqual(15);
    expect(moulds.filter(({ retired }) => retired?.reason === 'dud').length).toBeGreaterThanOrEqual(6);
    expect(moulds.filter(({ retired }) => retired && retired.reason !== 'dud').length).toBeGreaterThanOrEqual(8);
    expect(moulds.filter(({ masters }) => masters).length).toBeGreaterThanOrEqual(3);
    expect(moulds.filter((each) => each.master === undefined).length).toBeGreaterThanOrEqual(4);
  });

  it('show every flag, on few of the moulds', () => {
    const look = lookAt(shelf, rulesOf(LAST_DAY, shelf.studio));
    const kinds = new Set(things.flatMap((thing) => flagsOf(thing, look)).map(({ kind }) => kind));
    expect(FLAG_KINDS.filter((kind) => !kinds.has(kind))).toEqual([]);
    const sound = moulds.filter((each) => each.grade === 'sound' && !each.retired && flagsOf(each, look).length === 0);
    expect(sound.length / moulds.filter(({ retired }) => !retired).length).toBeGreaterThanOrEqual(0.75);
    const overFull = places.filter((each) => flagsOf(each, look).some(({ kind }) => kind === 'over-full'));
    expect(overFull.length).toBeGreaterThanOrEqual(2);
    expect(overFull.length).toBeLessThanOrEqual(6);
  });

  it('have fronts that lie on their cabinet and on no other front', () => {
    for (const cabinet of places.filter(({ kind }) => kind === 'cabinet')) {
      const fronts = places.filter((each) => each.in === cabinet.id && each.box);
      expect(fronts.length).toBeGreaterThan(0);
      for (const [i, { label, box }] of fronts.entries()) {
        if (!box) throw new Error(`${label} has no box`);
        expect(box.x + box.w, label).toBeLessThanOrEqual(cabinet.widthMm as number);
        expect(box.y + box.h, label).toBeLessThanOrEqual(cabinet.heightMm as number);
        for (const { label: other, box: b } of fronts.slice(i + 1)) {
          const isApart = !b || b.x >= box.x + box.w || box.x >= b.x + b.w || b.y >= box.y + box.h || box.y >= b.y + b.h;
          expect(isApart, `${label} and ${other}`).toBe(true);
        }
      }
    }
  });

  it('carry codes that are right and each their own', () => {
    const coded = things.filter(({ code }) => code);
    expect(new Set(coded.map(({ code }) => code)).size).toBe(coded.length);
    for (const { code, noun } of coded) expect([parseCode(code), nounOfCode(code as NonNullable<typeof code>)]).toEqual([code, noun]);
    expect([...places, ...moulds, ...master.values()].every(({ code }) => code)).toBe(true);
  });

  it('have pictures that are there and named by their bytes', () => {
    for (const [name, svg] of Object.entries(pictures)) expect(sha256(svg)).toBe(name);
    const named = entries.flatMap((entry) => entry.pictures ?? []);
    expect(named.length).toBeGreaterThanOrEqual(60);
    expect(named.filter((name) => !(name in pictures))).toEqual([]);
    expect(Object.keys(pictures).length).toBeGreaterThanOrEqual(60);
  });
});

/** Words of what the demo keeps off. */
const KEPT_OFF =
  /\b(medi(a)?eval|norse|vikings?|slav(ic|s)?|romans?|anglo|saxon|cross(es)?|crucifix|thimbles?|needles?|bobbins?|spindles?|scissors|sewing|stitch|runes?|awards?)\b/i;

it('keeps off what it should', () => {
  expect(KEPT_OFF.test('a Viking needle')).toBe(true);
  expect(KEPT_OFF.test('all across the romance')).toBe(false);
  expect(journalText.match(KEPT_OFF)?.[0]).toBeUndefined();
});
