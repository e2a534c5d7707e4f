import { afterEach, describe, expect, it } from 'vitest';
import { correct } from '../../src/actions/correct.ts';
import { count } from '../../src/actions/count.ts';
import { failMould } from '../../src/actions/fail-mould.ts';
import { inspect } from '../../src/actions/inspect.ts';
import { lend } from '../../src/actions/lend.ts';
import { logRun } from '../../src/actions/log-run.ts';
import { move } from '../../src/actions/move.ts';
import { putBack } from '../../src/actions/put-back.ts';
import { record } from '../../src/actions/record.ts';
import { recordMany } from '../../src/actions/record-many.ts';
import { retire } from '../../src/actions/retire.ts';
import { retireMany } from '../../src/actions/retire-many.ts';
import { setUsual } from '../../src/actions/set-usual.ts';
import { takeBack } from '../../src/actions/take-back.ts';
import { withdraw } from '../../src/actions/withdraw.ts';
import type { InjectedWaxId, MouldId, PlaceId, WaxId } from '../../src/domain/brand.ts';
import type { Entry } from '../../src/domain/entry.ts';
import { isProblem, type Problem } from '../../src/domain/problem.ts';
import type { Keeper } from '../../src/store/keeper.ts';
import { aRecorded } from '../support/entry-builders.ts';
import { aKeeper, fillDisk, reopened, tailRows } from '../support/keepers.ts';

const recorded = {
  drawer: aRecorded('place', { name: 'A1', kind: 'drawer' }),
  tray: aRecorded('place', { name: 'Tray', kind: 'drawer' }),
  wax: aRecorded('wax', { name: 'Green' }, { grams: 1750 as never }),
  spare: aRecorded('injectedWax', { name: 'Spare', state: 'raw' }, { pieces: 9 }),
};
const drawer = recorded.drawer.id as string as PlaceId;
const tray = recorded.tray.id as string as PlaceId;
const wax = recorded.wax.id as string as WaxId;
const spare = recorded.spare.id as string as InjectedWaxId;
const moulding = aRecorded('mould', { name: 'Owl', cavities: 3 }, { at: drawer });
const mould = moulding.id as string as MouldId;
const lendingOut = (keeper: Keeper) => lend({ keeper }, { things: [mould], holder: 'The plater' });

type Act = (keeper: Keeper) => Promise<readonly Entry[] | Problem>;

interface Case {
  readonly name: string;
  readonly act: Act;
  /** What shows that it was done, and what it is then. */
  readonly shown: (keeper: Keeper) => unknown;
  readonly expected: unknown;
  readonly before?: Act;
}

const CASES: readonly Case[] = [
  {
    name: 'logging a run',
    act: (keeper) => logRun({ keeper }, { mould, shots: 7, rejects: { bent: 2 }, wax, to: tray }),
    shown: (keeper) => theMould(keeper)?.good,
    expected: 19,
  },
  {
    name: 'failing a mould',
    act: (keeper) => failMould({ keeper }, { mould, faults: ['torn gate'] }),
    shown: (keeper) => theMould(keeper)?.grade,
    expected: 'failed',
  },
  {
    name: 'inspecting',
    act: (keeper) => inspect({ keeper }, { of: mould, grade: 'watch' }),
    shown: (keeper) => theMould(keeper)?.grade,
    expected: 'watch',
  },
  {
    name: 'retiring',
    act: (keeper) => retire({ keeper }, { of: mould, reason: 'dud' }),
    shown: (keeper) => theMould(keeper)?.retired?.reason,
    expected: 'dud',
  },
  {
    name: 'moving',
    act: (keeper) => move({ keeper }, { things: [mould], to: tray }),
    shown: (keeper) => theMould(keeper)?.at,
    expected: tray,
  },
  { name: 'lending', act: lendingOut, shown: (keeper) => theMould(keeper)?.usual, expected: drawer },
  {
    name: 'putting back',
    act: (keeper) => putBack({ keeper }, [mould]),
    shown: (keeper) => theMould(keeper)?.at,
    expected: drawer,
    before: lendingOut,
  },
  {
    name: 'recording',
    act: (keeper) => record({ keeper }, { noun: 'mould', fields: { name: 'Fox' }, count: 4 }),
    shown: (keeper) => keeper.shelf().things.mould.size,
    expected: 5,
  },
  {
    name: 'recording several like one',
    act: (keeper) => recordMany({ keeper }, { like: mould, count: 3, by: 'name' }),
    shown: (keeper) => [...keeper.shelf().things.mould.values()].map(({ name }) => name),
    expected: ['Owl', 'Owl 2', 'Owl 3', 'Owl 4'],
  },
  {
    name: 'retiring several',
    act: (keeper) => retireMany({ keeper }, { things: [mould, spare], reason: 'not wanted' }),
    shown: (keeper) => [theMould(keeper)?.retired?.reason, keeper.shelf().things.injectedWax.get(spare)?.retired?.reason],
    expected: ['not wanted', 'not wanted'],
  },
  {
    name: 'setting the usual place',
    act: (keeper) => setUsual({ keeper }, [mould]),
    shown: (keeper) => theMould(keeper)?.usual,
    expected: undefined,
    before: (keeper) => move({ keeper }, { things: [mould], to: tray, usual: 'kept' }),
  },
  {
    name: 'correcting',
    act: (keeper) => correct({ keeper }, { of: mould, fields: { name: 'Barn owl' } }),
    shown: (keeper) => theMould(keeper)?.name,
    expected: 'Barn owl',
  },
  {
    name: 'counting',
    act: (keeper) => count({ keeper }, { of: spare, pieces: 6 }),
    shown: (keeper) => keeper.shelf().things.injectedWax.get(spare)?.pieces,
    expected: 6,
  },
  { name: 'taking back', act: (keeper) => takeBack({ keeper }, { entry: moulding }), shown: theMould, expected: undefined },
];

function theMould(keeper: Keeper) {
  return keeper.shelf().things.mould.get(mould);
}

let mend: (() => void) | undefined;
let keeper: Keeper | undefined;
afterEach(() => {
  mend?.();
  mend = undefined;
  keeper?.close();
});

async function begin(before?: Act): Promise<Keeper> {
  keeper = await aKeeper([...Object.values(recorded), moulding]);
  if (before && isProblem(await before(keeper))) throw new Error('the test could not begin');
  return keeper;
}

describe.each(CASES)('$name', ({ act, shown, expected, before }) => {
  it('shows once it is written, in one row, is there after a restart, and is undone whole', async () => {
    const kept = await begin(before);
    const was = shown(kept);
    const rows = await tailRows(kept);
    const entries = await act(kept);
    if (isProblem(entries)) throw new Error(entries.says);
    expect(shown(kept)).toEqual(expected);
    expect(was).not.toEqual(expected);
    expect(await tailRows(kept)).toBe(rows + 1);
    keeper = await reopened(kept);
    expect(shown(keeper)).toEqual(expected);
    await withdraw({ keeper } as never, entries[0]?.id as never);
    expect(shown(keeper)).toEqual(was);
  });

  it('changes nothing when it fails midway, and says what was kept', async () => {
    const kept = await begin(before);
    const shelf = kept.shelf();
    let told = 0;
    kept.subscribe(() => {
      told += 1;
    });
    mend = fillDisk();
    const outcome = await act(kept);
    expect(outcome).toMatchObject({
      problem: true,
      says: expect.stringContaining('no room left'),
      kept: expect.stringContaining('still in the form'),
    });
    expect(kept.shelf()).toBe(shelf);
    expect(told).toBe(0);
    mend();
    keeper = await reopened(kept);
    expect(shown(keeper)).toEqual(shown(kept));
    expect(keeper.shelf().entries).toBe(shelf.entries);
  });
});
