import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { dropPhotos } from '../../src/actions/drop-photos.ts';
import { type OpenedBackup, openBackup } from '../../src/actions/open-backup.ts';
import { restoreBackup } from '../../src/actions/restore-backup.ts';
import { sweepPictures, unnamedPictures } from '../../src/actions/sweep-pictures.ts';
import { isProblem } from '../../src/domain/problem.ts';
import type { Keeper } from '../../src/store/keeper.ts';
import { makeTurns } from '../../src/store/turns.ts';
import { aPicture, backupOf, depsOf, onPhone } from '../support/backups.ts';
import { aKeeper as aTab, freshName } from '../support/database.ts';
import { aRecorded } from '../support/entry-builders.ts';
import { aKeeper } from '../support/keepers.ts';

vi.mock('../../src/device/worker-client.ts', async () => (await import('../support/worker-here.ts')).workerHere());

/** Web Locks as two tabs of one browser share them; this Node has none. */
function withLocks(): void {
  const turns = new Map<string, ReturnType<typeof makeTurns>>();
  const request = (name: string, job: () => Promise<unknown>) => {
    const inTurn = turns.get(name) ?? makeTurns();
    turns.set(name, inTurn);
    return inTurn(job);
  };
  vi.stubGlobal('navigator', { locks: { request } });
}

let tabs: Keeper[] = [];
beforeEach(() => onPhone());
afterEach(() => {
  for (const tab of tabs) tab.close();
  tabs = [];
  vi.unstubAllGlobals();
});

const drafts = { names: () => false } as never;
const pictures = [aPicture(1), aPicture(2)];
const shas = pictures.map(({ sha }) => sha);

/** Two tabs of an empty studio, and the backup of another, looked at in the first. */
async function twoTabs(name = freshName()) {
  const other = await aKeeper([aRecorded('mould', {}, { pictures: shas })]);
  await other.keepPictures(pictures);
  const { file } = await backupOf(other);
  withLocks();
  tabs = [await aTab(name), await aTab(name)];
  const [mine, theirs] = tabs as [Keeper, Keeper];
  const look = async () => (await openBackup(depsOf(mine), file, () => undefined).answer) as OpenedBackup;
  return { mine, theirs, look };
}

const kept = async (keeper: Keeper) => [...(await (await keeper.vault()).known(shas))].sort();
const slept = () => new Promise((resolve) => setTimeout(resolve, 60));

it('throws no picture away of a backup that another tab is taking in', async () => {
  const { mine, theirs, look } = await twoTabs();
  const throwing: Promise<unknown>[] = [];
  // Its pictures are kept already, and nothing names them yet.
  const joining = {
    ...mine,
    join: async (entries: Parameters<Keeper['join']>[0]) => {
      throwing.push(sweepPictures({ keeper: theirs, drafts }, shas), dropPhotos({ keeper: theirs, drafts }, shas));
      await Promise.race([Promise.all(throwing), slept()]);
      return mine.join(entries);
    },
  };
  expect(await restoreBackup(depsOf(joining), await look(), 'join', () => undefined)).toBe(1);
  expect((await Promise.all(throwing)).some(isProblem)).toBe(false);
  expect(await kept(mine)).toEqual([...shas].sort());
});

it('is made up for when it came between looking at a backup and taking it in', async () => {
  const { mine, theirs, look } = await twoTabs();
  await theirs.keepPictures(pictures);
  const backup = await look();
  expect(backup.freshPictures.size).toBe(0);
  await sweepPictures({ keeper: theirs, drafts }, shas);
  expect(await kept(mine)).toEqual([]);
  expect(await restoreBackup(depsOf(mine), backup, 'replace', () => undefined)).toBe(1);
  expect(await kept(mine)).toEqual([...shas].sort());
});

it('throws away what was found and is still unnamed, and nothing that came after', async () => {
  const { mine } = await twoTabs();
  const deps = { keeper: mine, drafts };
  await mine.keepPictures(pictures.slice(0, 1));
  const found = await unnamedPictures(deps);
  await mine.keepPictures(pictures.slice(1));
  expect(await sweepPictures(deps, found)).toBeUndefined();
  expect(await kept(mine)).toEqual(shas.slice(1));
});
