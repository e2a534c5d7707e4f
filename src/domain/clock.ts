import type { EntryId } from './brand.ts';
import { fromBase32, toBase32 } from './crockford.ts';
import { type Problem, problem, quoted } from './problem.ts';

/** Hybrid logical clock (Kulkarni, Demirbas et al. 2014): `ms` since 1970, and a count for what shares a millisecond. */
export interface Clock {
  readonly ms: number;
  readonly count: number;
}

export const CLOCK_ZERO: Clock = { ms: 0, count: 0 };
const MS_WIDTH = 9;
const COUNT_WIDTH = 3;
const COUNT_MAX = 32 ** COUNT_WIDTH - 1;
/** Up to the year 2527: a reading near the end of what fits would leave the clock nowhere to go. */
const ENTRY_ID = /^[0-9A-F][0-9A-HJKMNP-TV-Z]{17}$/;

function carry(clock: Clock): Clock {
  return clock.count > COUNT_MAX ? { ms: clock.ms + 1, count: 0 } : clock;
}

/**
 * The reading for something that happens now. Never goes back, even when the wall clock does. `clock` is the latest reading known here,
 * whichever device made it: ticking from the later of two readings is the paper's rule for receiving as well as for sending.
 */
export function tick(clock: Clock, nowMs: number): Clock {
  const ms = Math.max(clock.ms, nowMs);
  return carry({ ms, count: ms === clock.ms ? clock.count + 1 : 0 });
}

/** An entry's id: 18 characters that sort in time order. `device` is six Crockford characters. */
export function makeEntryId(clock: Clock, device: string): EntryId {
  return (toBase32(clock.ms, MS_WIDTH) + toBase32(clock.count, COUNT_WIDTH) + device) as EntryId;
}

export function parseEntryId(raw: unknown): EntryId | Problem {
  if (typeof raw === 'string' && ENTRY_ID.test(raw)) return raw as EntryId;
  return problem(`${quoted(raw)} is not an entry’s id.`);
}

export function clockOf(id: EntryId): Clock {
  return {
    ms: fromBase32(id.slice(0, MS_WIDTH)),
    count: fromBase32(id.slice(MS_WIDTH, MS_WIDTH + COUNT_WIDTH)),
  };
}
