import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FlaskId, InjectedWaxId, MouldId, ThingId } from '../../../src/domain/brand.ts';
import type { Entry } from '../../../src/domain/entry.ts';
import { draw } from '../../../src/domain/lineage/pool.ts';
import { traceFrom } from '../../../src/domain/lineage/trace.ts';
import { day } from '../../support/builders.ts';
import {
  aCast,
  aCorrected,
  aCounted,
  aDressed,
  anInjected,
  anInvested,
  anIssued,
  aRecorded,
  aWithdrawn,
  SOME,
} from '../../support/entry-builders.ts';

const { mould, place } = SOME;
const other = aRecorded('mould', { name: 'Another' });
const run = (shots: number, over: Partial<Parameters<typeof anInjected>[0]> = {}) =>
  anInjected({ mould, shots, good: shots, rejects: {}, to: place, ...over });
const pile = (entry: { readonly id: string }) => entry.id as InjectedWaxId;
const trace = (journal: readonly Entry[], from: { shot?: number; day?: ReturnType<typeof day> } = {}) =>
  traceFrom(journal, { mould, ...from });

describe('a trace', () => {
  it('begins at a shot: earlier runs are left out, and the run it lies in is told as bounds', () => {
    const early = run(10);
    const within = run(10, { good: 8, rejects: { bubbles: 2 } });
    const late = run(5);
    const { piles, made } = trace([early, within, late], { shot: 18 });
    expect(piles.has(early.id)).toBe(false);
    // Shots 18 to 20 are doubtful; of ten waxes three, of the eight good ones at least one.
    expect(piles.get(within.id)).toEqual({ total: 8, least: 1, most: 3 });
    expect(piles.get(late.id)).toEqual({ total: 5, least: 5, most: 5 });
    expect(made).toEqual({ total: 13, least: 6, most: 8 });
  });

  it('begins at a day, or is of everything', () => {
    const [before, after] = [run(4, { on: day('2024-03-01') }), run(6, { on: day('2024-03-09') })];
    expect([...trace([before, after], { day: day('2024-03-05') }).piles.keys()]).toEqual([after.id]);
    expect([...trace([before, after]).piles.keys()]).toEqual([before.id, after.id]);
  });

  it('follows waxes through dressing, flask and casting to what was sold', () => {
    const made = run(20);
    const dressed = aDressed({ from: pile(made), good: 9, scrapped: 1 });
    const flask = SOME.flask as FlaskId;
    const filled = anInvested({ flask, waxes: [{ from: pile(dressed), pieces: 6 }] });
    const inFlask = trace([made, dressed, filled]);
    expect(inFlask.flasks.get(flask)).toEqual({ total: 6, least: 6, most: 6 });
    const poured = aCast({ flask, mould, sound: 5, scrap: { porosity: 1 } });
    const sold = anIssued({ of: poured.id as string as ThingId, pieces: 2 });
    const all = trace([made, dressed, filled, poured, sold]);
    expect(all.flasks.size).toBe(0);
    expect(Object.fromEntries(all.piles)).toEqual({
      [made.id]: { total: 10, least: 10, most: 10 },
      [dressed.id]: { total: 3, least: 3, most: 3 },
      [poured.id]: { total: 3, least: 3, most: 3 },
    });
    expect(all.gone).toMatchObject([{ of: poured.id, reason: 'sold', to: 'the lighthouse museum', pool: { total: 2, least: 2, most: 2 } }]);
    expect(all.scrap).toEqual({ total: 2, least: 2, most: 2 });
  });

  it('says “some of” where a pile mixes sound and doubtful pieces', () => {
    const sound = run(10);
    const doubtful = run(4, { onto: pile(sound) });
    const taken = anIssued({ of: sound.id as string as ThingId, pieces: 12, reason: 'given' });
    const mixed = trace([sound, doubtful, taken], { shot: 11 });
    expect(mixed.gone[0]?.pool).toEqual({ total: 12, least: 2, most: 4 });
    expect(mixed.piles.get(sound.id)).toEqual({ total: 2, least: 0, most: 2 });
  });

  it('keeps the moulds of one flask apart, and cannot where the castings are not told apart', () => {
    const ours = run(5);
    const theirs = run(7, { mould: other.id as string as MouldId });
    const flask = SOME.flask as FlaskId;
    const filled = anInvested({
      flask,
      waxes: [
        { from: pile(ours), pieces: 5 },
        { from: pile(theirs), pieces: 7 },
      ],
    });
    const apart = [
      aCast({ flask, mould, sound: 5, scrap: {} }),
      aCast({ flask, mould: other.id as string as MouldId, sound: 7, scrap: {} }),
    ];
    const told = trace([other, ours, theirs, filled, ...apart]);
    expect(told.piles.get(apart[0]?.id ?? '')).toEqual({ total: 5, least: 5, most: 5 });
    expect(told.piles.has(apart[1]?.id ?? '')).toBe(false);
    const { mould: _, ...untold } = aCast({ flask, sound: 10, scrap: {} });
    expect(trace([other, ours, theirs, filled, untold as Entry]).piles.get(untold.id)).toEqual({ total: 10, least: 3, most: 5 });
  });

  it('knows of a pile only that it is the mould’s: it may be', () => {
    const found = aRecorded('casting', { mould, metal: 'bronze' }, { pieces: 9, on: day('2024-03-08') });
    expect(trace([found], { day: day('2024-03-05') }).piles.get(found.id)).toEqual({ total: 9, least: 0, most: 9 });
    expect(trace([found], { day: day('2024-03-09') }).piles.size).toBe(0);
  });

  it('is certain of what is said to be the mould’s when all of it is in doubt', () => {
    const found = aRecorded('casting', { mould, metal: 'bronze' }, { pieces: 9 });
    const { flask: _, ...loose } = aCast({ mould, sound: 4, scrap: { porosity: 1 } });
    const all = trace([found, loose as Entry]);
    expect(all.piles.get(found.id)).toEqual({ total: 9, least: 9, most: 9 });
    expect(all.piles.get(loose.id)).toEqual({ total: 4, least: 4, most: 4 });
    expect(all.scrap).toEqual({ total: 1, least: 1, most: 1 });
  });

  it('is certain of castings poured straight into the mould, by their day; pours are no shots, so by a shot they may be', () => {
    const design = aRecorded('design', { route: 'lost wax' });
    const direct = aCorrected(design, { route: 'poured in the mould' });
    const plate = aRecorded('mould', { design: design.id as never });
    const { flask: _, onto: __, ...poured } = aCast({ mould: plate.id as never, sound: 6, scrap: { porosity: 2 }, on: day('2024-03-08') });
    const { design: ___, ...cast } = poured;
    const journal = [design, plate, cast as Entry];
    const of = (entries: readonly Entry[], from: object) => traceFrom(entries, { mould: plate.id as never, ...from });
    const since = { day: day('2024-03-05') };
    // Of a lost-wax design the waxes may be older than the day.
    expect(of(journal, since).piles.get(cast.id)).toEqual({ total: 6, least: 0, most: 6 });
    const straight = [...journal, direct];
    expect(of(straight, since)).toMatchObject({ scrap: { total: 2, least: 2, most: 2 } });
    expect(of(straight, since).piles.get(cast.id)).toEqual({ total: 6, least: 6, most: 6 });
    expect(of(straight, { day: day('2024-03-09') }).piles.size).toBe(0);
    expect(of(straight, { shot: 1 }).piles.get(cast.id)).toEqual({ total: 6, least: 6, most: 6 });
    expect(of(straight, { shot: 40 }).piles.get(cast.id)).toEqual({ total: 6, least: 0, most: 6 });
    const sold = anIssued({ of: cast.id as never, pieces: 2 });
    expect(of([...straight, sold], since).gone[0]?.pool).toEqual({ total: 2, least: 2, most: 2 });
  });

  it('takes a count as pieces that went, and what was taken back as never done', () => {
    const made = run(10);
    const counted = aCounted({ of: made.id as string as ThingId, pieces: 7 });
    expect(trace([made, counted]).piles.get(made.id)).toEqual({ total: 7, least: 7, most: 7 });
    expect(trace([made, aWithdrawn(made)]).piles.size).toBe(0);
    const foundAgain = aCounted({ of: made.id as string as ThingId, pieces: 9 });
    expect(trace([made, counted, foundAgain]).piles.get(made.id)).toEqual({ total: 9, least: 7, most: 9 });
    const sound = run(4, { mould: other.id as string as MouldId });
    const more = aCounted({ of: sound.id as string as ThingId, pieces: 6 });
    expect(trace([other, sound, more]).piles.size).toBe(0);
  });

  it('names masters made of its waxes, and waxes that stand nowhere', () => {
    const made = run(10);
    const kept = aRecorded('master', { name: 'Dressed', from: [made.id] });
    const { to: _, ...loose } = run(3);
    const all = trace([made, kept, loose as Entry]);
    expect(all.masters).toEqual([kept.id]);
    expect(all.nowhere).toEqual({ total: 3, least: 3, most: 3 });
  });
});

describe('a pool', () => {
  it('has bounds that hold whichever pieces are really taken', () => {
    const pieces = fc.array(fc.boolean(), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(pieces, fc.nat({ max: 12 }), fc.nat({ max: 3 }), fc.nat({ max: 3 }), (really, take, less, more) => {
        const doubtful = really.filter(Boolean).length;
        const pool = { total: really.length, least: Math.max(0, doubtful - less), most: Math.min(really.length, doubtful + more) };
        const { taken, left } = draw(pool, take);
        const went = really.slice(0, take).filter(Boolean).length;
        expect(went).toBeGreaterThanOrEqual(taken.least);
        expect(went).toBeLessThanOrEqual(taken.most);
        expect(doubtful - went).toBeGreaterThanOrEqual(left.least);
        expect(doubtful - went).toBeLessThanOrEqual(left.most);
      }),
    );
  });
});
