import type { Code, Day, EntryId } from './brand.ts';
import { type Clock, makeEntryId, tick } from './clock.ts';
import { base32FromBytes } from './crockford.ts';
import type { Common } from './entry.ts';
import { makeCode } from './label.ts';
import type { Noun } from './noun.ts';

/** Where a plan gets its time, ids and chance from, so that the same desk gives the same entries. */
export interface Desk {
  readonly today: Day;
  /** The common fields of the action's next entry. The second and later ones name the first as their step. */
  entry(): Common;
  /** A fresh label code, on no thing and not given out by this desk before. */
  code(noun: Noun): Code;
}

export interface DeskStart {
  readonly today: Day;
  readonly nowMs: number;
  /** Last reading known on this device. */
  readonly clock: Clock;
  /** Six Crockford characters. */
  readonly device: string;
  readonly by?: string | undefined;
  /** `count` random bytes. */
  readonly bytes: (count: number) => Uint8Array;
  /** Whether some thing carries the code already. */
  readonly isTaken: (code: Code) => boolean;
}

export function makeDesk(start: DeskStart): Desk {
  let clock = start.clock;
  let first: EntryId | undefined;
  const given = new Set<Code>();
  return {
    today: start.today,
    entry() {
      clock = tick(clock, start.nowMs);
      const id = makeEntryId(clock, start.device);
      const common = { id, on: start.today, ...(start.by ? { by: start.by } : {}), ...(first ? { step: first } : {}) };
      first ??= id;
      return common;
    },
    code(noun) {
      for (;;) {
        const code = makeCode(noun, base32FromBytes(start.bytes(6)));
        if (!code || given.has(code) || start.isTaken(code)) continue;
        given.add(code);
        return code;
      }
    },
  };
}
