import { afterEach, describe, expect, it } from 'vitest';
import { discardWax } from '../../src/actions/discard-wax.ts';
import { fillInjector } from '../../src/actions/fill-injector.ts';
import { receiveWax } from '../../src/actions/receive-wax.ts';
import { setRoomTable } from '../../src/actions/room-table.ts';
import { setAside } from '../../src/actions/set-aside.ts';
import { setStudioFigures } from '../../src/actions/studio-figures.ts';
import { weighWax } from '../../src/actions/weigh-wax.ts';
import { withdraw } from '../../src/actions/withdraw.ts';
import type { InjectorId, WaxId } from '../../src/domain/brand.ts';
import { addDays } from '../../src/domain/day.ts';
import type { Entry } from '../../src/domain/entry.ts';
import { isProblem, type Problem } from '../../src/domain/problem.ts';
import type { Keeper } from '../../src/store/keeper.ts';
import { START_DAY } from '../support/builders.ts';
import { aRecorded } from '../support/entry-builders.ts';
import { aKeeper, fillDisk, reopened, tailRows } from '../support/keepers.ts';

const tub = aRecorded('wax', { name: 'Green' }, { grams: 1640 as never });
const pot = aRecorded('injector', { name: 'Big pot', pressure: 'low' });
const wax = tub.id as string as WaxId;
const injector = pot.id as string as InjectorId;
const grams = (keeper: Keeper) => keeper.shelf().things.wax.get(wax)?.grams;
const until = addDays(START_DAY, 23);

interface Case {
  readonly name: string;
  readonly act: (keeper: Keeper) => Promise<readonly Entry[] | Problem>;
  readonly shown: (keeper: Keeper) => unknown;
  readonly expected: unknown;
}
const CASES: readonly Case[] = [
  { name: 'receiving wax', act: (keeper) => receiveWax({ keeper }, { wax, grams: 2500 }), shown: grams, expected: 4140 },
  { name: 'weighing wax', act: (keeper) => weighWax({ keeper }, { wax, grams: 1511 }), shown: grams, expected: 1511 },
  {
    name: 'discarding more wax than there is',
    act: (keeper) => discardWax({ keeper }, { wax, grams: 1700, confirmed: true }),
    shown: grams,
    expected: 0,
  },
  {
    name: 'filling an injector',
    act: (keeper) => fillInjector({ keeper }, { injector, wax }),
    shown: (keeper) => keeper.shelf().things.injector.get(injector)?.holds,
    expected: wax,
  },
  {
    name: 'the studio’s figures',
    act: (keeper) => setStudioFigures({ keeper }, { name: 'Gannet Yard', lookDays: 75 }),
    shown: (keeper) => [keeper.shelf().studio.name, keeper.shelf().studio.lookDays],
    expected: ['Gannet Yard', 75],
  },
  {
    name: 'setting aside',
    act: (keeper) => setAside({ keeper }, { of: wax, kind: 'wax low', until }),
    shown: (keeper) => keeper.shelf().things.wax.get(wax)?.aside,
    expected: { 'wax low': until },
  },
  {
    name: 'keeping the workshop’s months',
    act: (keeper) => setRoomTable({ keeper }, { hemisphere: 'south', months: { '4': { lowC: 9, highC: 21 } } }),
    shown: (keeper) => keeper.shelf().studio,
    expected: { hemisphere: 'south', months: { '4': { lowC: 9, highC: 21 } } },
  },
];

let keeper: Keeper;
let mend: (() => void) | undefined;
afterEach(() => {
  mend?.();
  mend = undefined;
  keeper.close();
});

describe.each(CASES)('$name', ({ act, shown, expected }) => {
  it('shows once it is written in one row, is there after a restart, and is undone whole', async () => {
    keeper = await aKeeper([tub, pot]);
    const was = shown(keeper);
    const rows = await tailRows(keeper);
    const entries = await act(keeper);
    if (isProblem(entries)) throw new Error(entries.says);
    expect(shown(keeper)).toEqual(expected);
    expect(await tailRows(keeper)).toBe(rows + 1);
    keeper = await reopened(keeper);
    expect(shown(keeper)).toEqual(expected);
    await withdraw({ keeper } as never, entries[0]?.id as never);
    expect(shown(keeper)).toEqual(was);
    expect(was).not.toEqual(expected);
  });

  it('changes nothing when it fails midway', async () => {
    keeper = await aKeeper([tub, pot]);
    const shelf = keeper.shelf();
    mend = fillDisk();
    expect(isProblem(await act(keeper))).toBe(true);
    expect(keeper.shelf()).toBe(shelf);
    mend();
    keeper = await reopened(keeper);
    expect(keeper.shelf().entries).toBe(shelf.entries);
  });
});
