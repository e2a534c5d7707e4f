import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { EntryId } from '../../src/domain/brand.ts';
import { CLOCK_ZERO, type Clock, clockOf, makeEntryId, tick } from '../../src/domain/clock.ts';

// Kulkarni, Demirbas, Madappa, Avva, Leone: Logical Physical Clocks (2014), its rules for send and receive; invariants as in an author's
// published TLA+ model (github.com/muratdem/HLC, hlc.tla). The trace was computed from the paper's rules.
type Node = 'A' | 'B' | 'C';
type Step = readonly [node: Node, pt: number, l: number, c: number, from?: Node | Clock];

const TRACE: readonly Step[] = [
  ['A', 10, 10, 0],
  ['B', 1, 10, 1, 'A'],
  ['B', 2, 10, 2],
  ['B', 3, 10, 3],
  ['C', 2, 10, 4, 'B'],
  ['C', 4, 10, 5],
  ['A', 10, 10, 6, 'C'],
  ['A', 11, 11, 0],
  ['B', 12, 12, 0],
  ['C', 5, 10, 6, { ms: 10, count: 0 }],
  ['C', 13, 13, 0],
  ['A', 9, 11, 1],
  ['A', 8, 11, 2],
  ['A', 12, 12, 0],
];

/** Receiving as the app does it: the newest of all ids a shelf has seen, whoever gave it, is what the next one is reckoned from. */
function receive(own: Clock, heard: Clock, pt: number): Clock {
  const newest = [makeEntryId(own, 'AAAAAA'), makeEntryId(heard, 'AAAAAA')].sort()[1] as EntryId;
  return tick(clockOf(newest), pt);
}

describe('the hybrid logical clock', () => {
  it('receives as the paper’s rule has it: the latest of three, and a count that goes on only where it must', () => {
    const clocks = fc.record({ ms: fc.integer({ min: 1, max: 6 }), count: fc.nat({ max: 9 }) });
    fc.assert(
      fc.property(clocks, clocks, fc.integer({ min: 1, max: 6 }), (own, heard, pt) => {
        const l = Math.max(own.ms, heard.ms, pt);
        const counts = [own, heard].filter(({ ms }) => ms === l).map(({ count }) => count + 1);
        expect(receive(own, heard, pt)).toEqual({ ms: l, count: Math.max(0, ...counts) });
      }),
    );
  });

  it('follows the paper’s rules for sending, local events and receiving', () => {
    const clocks: Record<Node, Clock> = { A: CLOCK_ZERO, B: CLOCK_ZERO, C: CLOCK_ZERO };
    for (const [node, pt, l, c, from] of TRACE) {
      const heard = typeof from === 'string' ? clocks[from] : from;
      clocks[node] = heard ? receive(clocks[node], heard, pt) : tick(clocks[node], pt);
      expect([node, pt, clocks[node].ms, clocks[node].count]).toEqual([node, pt, l, c]);
    }
  });

  it('keeps the model’s invariants: l ≥ pt, l never ahead of every clock seen, each event after what it follows', () => {
    const event = fc.record({ node: fc.nat({ max: 2 }), from: fc.option(fc.nat({ max: 2 })), pt: fc.integer({ min: 1, max: 40 }) });
    const isAfter = (a: Clock, b: Clock) => a.ms > b.ms || (a.ms === b.ms && a.count > b.count);
    fc.assert(
      fc.property(fc.array(event, { maxLength: 60 }), (events) => {
        const clocks = [CLOCK_ZERO, CLOCK_ZERO, CLOCK_ZERO];
        let highest = 0;
        for (const { node, from, pt } of events) {
          const before = clocks[node] as Clock;
          const heard = from === null || from === node ? undefined : clocks[from];
          const after = heard ? receive(before, heard, pt) : tick(before, pt);
          highest = Math.max(highest, pt);
          expect(after.ms).toBeGreaterThanOrEqual(pt);
          expect(after.ms).toBeLessThanOrEqual(highest);
          expect(after.count).toBeLessThanOrEqual(events.length);
          expect(isAfter(after, before)).toBe(true);
          if (heard) expect(isAfter(after, heard)).toBe(true);
          clocks[node] = after;
        }
      }),
    );
  });
});
