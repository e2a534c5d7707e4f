import { describe, expect, it } from 'vitest';
import type { MouldId } from '../../../src/domain/brand.ts';
import type { Entry, FlagKind } from '../../../src/domain/entry.ts';
import { foldOn } from '../../../src/domain/fold.ts';
import { planSetAside } from '../../../src/domain/plans/set-aside.ts';
import { isProblem } from '../../../src/domain/problem.ts';
import type { Shelf } from '../../../src/domain/shelf.ts';
import { aDesk, aMould, aShelf, day, nextId } from '../../support/builders.ts';

const mould = aMould({ aside: { worn: day('2024-05-01') } });
const shelf = aShelf([mould]);
const plan = (kind: FlagKind, until: string | null, of: MouldId = mould.id) =>
  planSetAside(shelf, aDesk(), { of, kind, until: until === null ? null : day(until) });
const asideAfter = (entries: ReturnType<typeof plan>) =>
  (foldOn(shelf, entries as readonly Entry[]) as Shelf).things.mould.get(mould.id)?.aside;

describe('setting a flag aside', () => {
  it('puts it off until a day and leaves the other kinds alone', () => {
    expect(asideAfter(plan('look due', '2024-04-02'))).toEqual({ worn: '2024-05-01', 'look due': '2024-04-02' });
  });

  it('brings it back', () => {
    expect(asideAfter(plan('worn', null))).toBeUndefined();
    expect(plan('faults', null)).toEqual([]);
  });

  it.each(['2024-03-05', '2024-03-04', '2026-03-06'])('refuses %s: not a day to come, or out of sight', (until) => {
    expect(isProblem(plan('worn', until))).toBe(true);
  });

  it('takes tomorrow and two years', () => {
    expect(isProblem(plan('worn', '2024-03-06'))).toBe(false);
    expect(isProblem(plan('worn', '2026-03-05'))).toBe(false);
  });

  it('refuses what is not there', () => {
    expect(isProblem(plan('worn', '2024-04-02', nextId<MouldId>()))).toBe(true);
    expect(isProblem(plan('rust' as FlagKind, '2024-04-02'))).toBe(true);
  });
});
