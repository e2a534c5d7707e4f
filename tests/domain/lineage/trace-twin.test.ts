import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { FlaskId, InjectedWaxId, MouldId, ThingId } from '../../../src/domain/brand.ts';
import type { Entry } from '../../../src/domain/entry.ts';
import { traceFrom } from '../../../src/domain/lineage/trace.ts';
import { nextId } from '../../support/builders.ts';
import { aCast, aDressed, anInjected, anInvested, anIssued, SOME } from '../../support/entry-builders.ts';

/** One way it may really have been: doubtful pieces in each pool. */
type Way = ReadonlyMap<string, number>;

/** The slow twin: every way in which pieces can have been taken, one after another, without a bound reckoned anywhere. */
class Ways {
  private ways: readonly Way[] = [new Map()];
  private readonly totals = new Map<string, number>();
  readonly pools = new Set<string>();

  total(pool: string): number {
    return this.totals.get(pool) ?? 0;
  }

  put(pool: string, pieces: number, doubtful: readonly number[]): void {
    this.pools.add(pool);
    this.totals.set(pool, this.total(pool) + pieces);
    this.branch((way) => doubtful.map((each) => new Map(way).set(pool, (way.get(pool) ?? 0) + each)));
  }

  take(from: string, to: string, pieces: number): void {
    const total = this.total(from);
    this.pools.add(to);
    this.totals.set(from, total - pieces);
    this.totals.set(to, this.total(to) + pieces);
    this.branch((way) => {
      const doubtful = way.get(from) ?? 0;
      const next: Way[] = [];
      for (let went = Math.max(0, pieces - (total - doubtful)); went <= Math.min(pieces, doubtful); went++) {
        next.push(new Map(way).set(from, doubtful - went).set(to, (way.get(to) ?? 0) + went));
      }
      return next;
    });
  }

  private branch(next: (way: Way) => readonly Way[]): void {
    const seen = new Map<string, Way>();
    for (const way of this.ways.flatMap(next)) seen.set([...way].sort().join(';'), way);
    this.ways = [...seen.values()];
  }

  bounds(pool: string): { readonly least: number; readonly most: number } {
    const counts = this.ways.map((way) => way.get(pool) ?? 0);
    return { least: Math.min(...counts), most: Math.max(...counts) };
  }
}

const STEPS = ['ours', 'theirs', 'dress', 'cast', 'issue'] as const;
const steps = fc.array(
  fc.record({ step: fc.constantFrom(...STEPS), which: fc.nat(9), pieces: fc.integer({ min: 1, max: 4 }), spoilt: fc.nat(2) }),
  {
    minLength: 2,
    maxLength: 7,
  },
);

it('says at least and at most exactly what going through every way says, for piles that mix moulds and runs', () => {
  const { mould } = SOME;
  const other = nextId() as string as MouldId;
  let mixed = 0;
  fc.assert(
    fc.property(steps, fc.integer({ min: 1, max: 9 }), (history, shot) => {
      const journal: Entry[] = [];
      const ways = new Ways();
      const raw: string[] = [];
      const waxes: string[] = [];
      const castings: string[] = [];
      let shots = 0;
      const inject = (ours: boolean, good: number, spoilt: number, which: number) => {
        const onto = which % 2 === 0 ? raw[which % (raw.length || 1)] : undefined;
        const entry = anInjected({
          mould: ours ? mould : other,
          shots: good + spoilt,
          good,
          rejects: spoilt > 0 ? { bubbles: spoilt } : {},
          ...(onto ? { onto: onto as InjectedWaxId } : {}),
        });
        journal.push(entry);
        const before = shots;
        if (ours) shots += good + spoilt;
        // Which of the shots were spoilt is not written down: any of them may have been.
        const after = ours ? Math.min(good + spoilt, Math.max(0, shots - Math.max(before, shot - 1))) : 0;
        const doubtful: number[] = [];
        for (let lost = 0; lost <= spoilt; lost++) if (after - lost >= 0 && after - lost <= good) doubtful.push(after - lost);
        if (!onto) {
          raw.push(entry.id);
          waxes.push(entry.id);
        }
        ways.put(onto ?? entry.id, good, doubtful);
      };
      for (const { step, which, pieces, spoilt } of history) {
        if (step === 'ours' || step === 'theirs') {
          inject(step === 'ours', pieces, spoilt, which);
          continue;
        }
        const piles = step === 'issue' ? [...waxes, ...castings] : waxes;
        const from = piles[which % (piles.length || 1)];
        const have = from === undefined ? 0 : ways.total(from);
        const taken = Math.min(pieces, have);
        if (from === undefined || taken === 0) continue;
        if (step === 'issue') {
          const entry = anIssued({ of: from as ThingId, pieces: taken });
          journal.push(entry);
          ways.take(from, `gone ${entry.on} ${from} ${journal.length}`, taken);
        } else if (step === 'dress') {
          const entry = aDressed({ from: from as InjectedWaxId, good: taken, scrapped: Math.min(spoilt, have - taken) });
          journal.push(entry);
          const total = taken + entry.scrapped;
          ways.take(from, `taken ${entry.id}`, total);
          ways.take(`taken ${entry.id}`, entry.id, taken);
          waxes.push(entry.id);
        } else {
          const flask = nextId() as string as FlaskId;
          journal.push(anInvested({ flask, waxes: [{ from: from as InjectedWaxId, pieces: taken }] }));
          const { mould: _, ...poured } = aCast({ flask, sound: taken, scrap: {} });
          journal.push(poured as Entry);
          ways.take(from, poured.id, taken);
          castings.push(poured.id);
        }
      }
      const { piles } = traceFrom(journal, { mould, shot });
      for (const id of [...waxes, ...castings]) {
        const { least, most } = ways.bounds(id);
        const told = piles.get(id);
        expect({ least: told?.least ?? 0, most: told?.most ?? 0 }, id).toEqual({ least, most });
        if (most > 0) expect(told?.total).toBe(ways.total(id));
        if (least < most) mixed++;
      }
    }),
    { numRuns: 400 },
  );
  expect(mixed).toBeGreaterThan(50);
});
