import { describe, expect, it } from 'vitest';
import { LEVELS, rulesOf } from '../../src/domain/flag.ts';
import { flagsOf, lookAt } from '../../src/domain/flags.ts';
import { foldOn } from '../../src/domain/fold.ts';
import { NOUNS } from '../../src/domain/noun.ts';
import type { Shelf, Thing } from '../../src/domain/shelf.ts';
import { attentionOf } from '../../src/views/attention.ts';
import { aDesign, aMaster, aMould, anInjectedWax, aPeriod, aPlace, aShelf, aWax, day } from '../support/builders.ts';
import { aCorrected, aFailed, aMoved, anInjected, anInspected, aRetired } from '../support/entry-builders.ts';

const TODAY = day('2025-06-20');

/** The slow way: every flag of every thing, judged by itself. */
function slowly(shelf: Shelf) {
  const look = lookAt(shelf, rulesOf(TODAY, shelf.studio));
  const all = NOUNS.flatMap((noun) => [...(shelf.things[noun] as ReadonlyMap<string, Thing>).values()]).flatMap((thing) =>
    flagsOf(thing, look).map((flag) => ({ flag, at: thing.noun === 'place' ? thing.id : thing.at })),
  );
  return all.filter(({ flag }) => flag.asideUntil === undefined);
}

const period = aPeriod();
const other = aPeriod({ name: 'Coptic' });
const design = aDesign({ periods: [period.id], keep: 3 });
const cabinet = aPlace({ name: 'Cabinet', kind: 'cabinet', for: 'moulds' });
const drawer = aPlace({ name: 'A1', in: cabinet.id, capacity: 2, periods: [other.id] });
const second = aPlace({ name: 'A2', in: cabinet.id, capacity: 9, periods: [period.id] });
const master = aMaster({ design: design.id, state: 'worn', at: second.id });
const moulds = Array.from({ length: 5 }, () => aMould({ design: design.id, master: master.id, at: drawer.id, expectedShots: 150 }));
const wax = aWax({ grams: 400 });
const pile = anInjectedWax({ design: design.id, at: drawer.id });
const start = aShelf([period, other, design, cabinet, drawer, second, master, ...moulds, wax, pile]);
const [first, next] = moulds as [Thing<'mould'>, Thing<'mould'>];

const putAside = (of: Thing, aside: object) => ({ ...aCorrected(of, {}), aside }) as ReturnType<typeof aCorrected>;

describe('what needs attention', () => {
  it('agrees with judging everything by itself, entry after entry', () => {
    const entries = [
      anInjected({ mould: first.id, wax: wax.id, onto: pile.id }),
      anInspected({ of: next.id, grade: 'worn' }),
      aFailed({ of: first.id }),
      aMoved({ things: [first.id, next.id], to: second.id }),
      aCorrected(drawer, { periods: [period.id] }),
      putAside(next, { worn: day('2025-12-01') }),
      aCorrected(design, { keep: 0 }),
      aRetired({ of: first.id }),
      putAside(next, { worn: null }),
      anInjected({ mould: next.id, wax: wax.id, shots: 90, onto: pile.id }),
      aCorrected(master, { state: 'sound' }),
    ].map((entry) => ({ ...entry, on: TODAY }));
    let shelf: Shelf | null = start;
    const counts: number[] = [];
    for (const entry of [undefined, ...entries]) {
      shelf = entry ? foldOn(shelf as Shelf, [entry]) : shelf;
      const now = shelf as Shelf;
      const attention = attentionOf(now, TODAY);
      const expected = slowly(now);
      expect(attention.count).toBe(expected.length);
      expect(new Set(attention.flags)).toEqual(new Set(expected.map(({ flag }) => flag)));
      const marks = new Map<string, number>();
      for (const { flag, at } of expected)
        if (at) marks.set(`${at} ${flag.level} ${flag.kind}`, (marks.get(`${at} ${flag.level} ${flag.kind}`) ?? 0) + 1);
      const shown = new Map(
        [...attention.byPlace].flatMap(([place, list]) => list.map((mark) => [`${place} ${mark.level} ${mark.kind}`, mark.count] as const)),
      );
      expect(shown).toEqual(marks);
      counts.push(attention.count);
    }
    expect(new Set(counts).size).toBeGreaterThan(4);
  });

  it('lists the most pressing first and counts each level', () => {
    const { flags, counts } = attentionOf(start, TODAY);
    const levels = flags.map(({ level }) => LEVELS.indexOf(level));
    expect(levels).toEqual([...levels].sort((a, b) => b - a));
    for (const level of LEVELS) expect(counts[level]).toBe(flags.filter((flag) => flag.level === level).length);
  });

  it('keeps what was judged for all but the thing an entry touched', () => {
    const before = attentionOf(start, TODAY);
    const shelf = foldOn(start, [{ ...anInspected({ of: first.id, grade: 'worn' }), on: TODAY }]) as Shelf;
    const after = attentionOf(shelf, TODAY);
    const kept = (id: string) => after.flags.filter((flag) => flag.of === id).every((flag) => before.flags.includes(flag));
    expect(kept(first.id)).toBe(false);
    for (const mould of moulds.slice(1)) expect(kept(mould.id)).toBe(true);
    expect(attentionOf(shelf, TODAY)).toBe(after);
  });

  it('sets aside until the day, listed apart, soonest first', () => {
    const shelf = foldOn(start, [
      { ...anInspected({ of: first.id, grade: 'worn' }), on: TODAY },
      { ...anInspected({ of: next.id, grade: 'worn' }), on: TODAY },
      putAside(first, { worn: day('2025-09-01') }),
      putAside(next, { worn: day('2025-08-01') }),
    ]) as Shelf;
    const attention = attentionOf(shelf, TODAY);
    expect(attention.aside.map(({ of, asideUntil }) => [of, asideUntil])).toEqual([
      [next.id, '2025-08-01'],
      [first.id, '2025-09-01'],
    ]);
    expect(attention.to(first.id).map(({ kind }) => kind)).not.toContain('worn');
    expect(
      attentionOf(shelf, day('2025-08-01'))
        .to(next.id)
        .map(({ kind }) => kind),
    ).toContain('worn');
    expect(attentionOf(shelf, day('2025-08-01')).aside).toHaveLength(1);
  });
});
