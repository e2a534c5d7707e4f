import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { lastBackup, reminderNow, setReminderAside } from '../../src/actions/last-backup.ts';
import { handOver, type MadeBackup, makeBackup } from '../../src/actions/make-backup.ts';
import { type OpenedBackup, openBackup } from '../../src/actions/open-backup.ts';
import { restoreBackup } from '../../src/actions/restore-backup.ts';
import type { Entry } from '../../src/domain/entry.ts';
import { foldAll } from '../../src/domain/fold.ts';
import { makeJournal } from '../../src/domain/journal.ts';
import { isProblem } from '../../src/domain/problem.ts';
import type { Keeper } from '../../src/store/keeper.ts';
import { aPicture, backupOf, depsOf, onPhone } from '../support/backups.ts';
import { aCorrected, aRecorded, aStudioCorrected } from '../support/entry-builders.ts';
import { histories } from '../support/histories.ts';
import { aKeeper, reopened } from '../support/keepers.ts';
import { plainShelf } from '../support/plain-shelf.ts';
import { workerHere } from '../support/worker-here.ts';

vi.mock('../../src/device/worker-client.ts', async () => (await import('../support/worker-here.ts')).workerHere());

beforeEach(() => onPhone());
afterEach(() => {
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});

async function opened(keeper: Keeper, file: Blob): Promise<OpenedBackup> {
  const answer = await openBackup(depsOf(keeper), file, () => undefined).answer;
  if (!answer || isProblem(answer)) throw new Error(answer?.says);
  return answer;
}

async function restored(keeper: Keeper, file: Blob, way: 'join' | 'replace'): Promise<number> {
  const outcome = await restoreBackup(depsOf(keeper), await opened(keeper, file), way, () => undefined);
  if (isProblem(outcome)) throw new Error(outcome.says);
  return outcome;
}

const bytesOf = async (blob: Blob | undefined) => [...new Uint8Array((await blob?.arrayBuffer()) ?? new ArrayBuffer(0))];

/** A studio of one mould with pictures, of which one entry alone names the second. */
async function aStudio(pictures = [aPicture(1), aPicture(2)]): Promise<{ keeper: Keeper; entries: Entry[] }> {
  const mould = aRecorded('mould', { name: 'Heron' }, { pictures: pictures.slice(0, 1).map(({ sha }) => sha) });
  const more = pictures.slice(1).map(({ sha }) => aCorrected({ id: mould.id, noun: 'mould' }, {}, { pictures: [sha] }));
  const entries = [aStudioCorrected({ name: 'Quay' }), mould, ...more];
  const keeper = await aKeeper(entries);
  expect(await keeper.keepPictures(pictures)).toBeUndefined();
  return { keeper, entries };
}

describe('a backup', () => {
  it('brings any studio back as it was, whichever way it is taken in', async () => {
    await fc.assert(
      fc.asyncProperty(histories(40), fc.constantFrom('join' as const, 'replace' as const), async (entries, way) => {
        const keeper = await aKeeper(entries);
        const { file } = await backupOf(keeper);
        const other = await aKeeper(way === 'replace' ? [aRecorded('wax', { name: 'Green' })] : []);
        await restored(other, file, way);
        const again = await reopened(other);
        expect(plainShelf(again.shelf())).toEqual(plainShelf(foldAll(entries)));
        expect(await again.journal()).toEqual(await keeper.journal());
        keeper.close();
        again.close();
      }),
      { numRuns: 12 },
    );
  });

  it('carries 500 pictures and their thumbnails, byte for byte, and leaves out what nothing names', async () => {
    const pictures = Array.from({ length: 500 }, (_, i) => aPicture(i, 300 + i));
    const { keeper } = await aStudio(pictures);
    await keeper.keepPictures([aPicture(999)]);
    const { file, pictures: count } = await backupOf(keeper);
    expect(count).toBe(500);
    const other = await aKeeper();
    await restored(other, file, 'join');
    for (const { sha, bytes, thumb } of [0, 77, 499].map((i) => pictures[i] as (typeof pictures)[0])) {
      expect(await bytesOf(await other.picture(sha, 'whole'))).toEqual([...new Uint8Array(bytes)]);
      expect(await bytesOf(await other.picture(sha, 'thumb'))).toEqual([...new Uint8Array(thumb.bytes)]);
    }
    expect(await other.picture(aPicture(999).sha, 'whole')).toBeUndefined();
    expect(await backupOf(other)).toMatchObject({ entries: 501, pictures: 500, absent: 0 });
  });

  it('says how many pictures it could not carry: those of another device, and one that is damaged', async () => {
    const damaged = { ...aPicture(2), bytes: new Uint8Array([1, 2, 3]).buffer };
    const { keeper } = await aStudio([aPicture(1), damaged, aPicture(3)]);
    await keeper.join([aRecorded('wax', { name: 'Green' }, { pictures: [aPicture(4).sha] })]);
    expect(await backupOf(keeper)).toMatchObject({ pictures: 2, absent: 2 });
  });

  it('is looked at first: what is new, what is only here, what both changed', async () => {
    const { keeper, entries } = await aStudio();
    const mould = { id: (entries[1] as Entry).id, noun: 'mould' } as const;
    const { file } = await backupOf(keeper);
    const other = await aKeeper([...entries.slice(0, 2), aCorrected(mould, { name: 'Crane' }), aRecorded('wax', { name: 'Violet' })]);
    const { difference, freshPictures, name, manifest } = await opened(other, file);
    expect(difference).toEqual({
      entries: { fresh: 1, onlyHere: 2, same: 2, otherwise: 0 },
      things: [{ noun: 'wax', fresh: 0, onlyHere: 1 }],
      bothChanged: 1,
      days: { from: entries[0]?.on, to: entries[0]?.on },
    });
    expect([name, manifest?.counts, freshPictures.size]).toEqual(['Quay', { entries: 3, pictures: 2 }, 2]);
    expect(other.shelf().things.mould.get(mould.id as never)?.name).toBe('Crane');
    expect(await restored(other, file, 'join')).toBe(1);
    expect(other.shelf().things.wax.size).toBe(1);
  });

  it('may be the journal saved as text', async () => {
    const { keeper, entries } = await aStudio();
    const other = await aKeeper();
    expect(await restored(other, new Blob([makeJournal('Quay', entries)]), 'join')).toBe(3);
    expect(plainShelf(other.shelf())).toEqual(plainShelf(keeper.shelf()));
  });

  it('tells how far it is, never backwards, and of the journal too', async () => {
    const { file } = await backupOf((await aStudio()).keeper);
    const many = Array.from({ length: 1200 }, () => aRecorded('mould', {}));
    const big = await backupOf(await aKeeper(many));
    for (const [way, backup] of [
      ['join', file],
      ['replace', big.file],
      ['join', big.file],
    ] as const) {
      const other = await aKeeper([aRecorded('wax', { name: 'Green' })]);
      const looks: number[] = [];
      const looked = await openBackup(depsOf(other), backup, ({ done, total }) => looks.push(done / total)).answer;
      if (!looked || isProblem(looked)) throw new Error(looked?.says);
      const takes: number[] = [];
      await restoreBackup(depsOf(other), looked, way, ({ done, total }) => takes.push(done / total));
      for (const told of [looks, takes]) {
        expect(told.length).toBeGreaterThanOrEqual(3);
        expect(told).toEqual([...told].sort((a, b) => a - b));
        expect(told.at(-1)).toBeGreaterThan(0.9);
        expect(told.at(-1)).toBeLessThanOrEqual(1);
      }
    }
  });

  it('takes no picture in when the disk is full before the journal is', async () => {
    const { keeper } = await aStudio();
    const { file } = await backupOf(keeper);
    const other = await aKeeper([aRecorded('wax', { name: 'Green' })]);
    const before = plainShelf(other.shelf());
    const backup = await opened(other, file);
    for (const way of ['join', 'replace'] as const) {
      const add = IDBObjectStore.prototype.add;
      vi.spyOn(IDBObjectStore.prototype, 'add').mockImplementation(function (this: IDBObjectStore, ...given) {
        if (this.name === 'pages') throw new DOMException('no room', 'QuotaExceededError');
        return add.apply(this, given);
      });
      const outcome = await restoreBackup(depsOf(other), backup, way, () => undefined);
      expect(isProblem(outcome) && outcome.says).toMatch(/no room left/);
      vi.restoreAllMocks();
      expect(await other.picture(aPicture(1).sha, 'whole')).toBeUndefined();
    }
    expect(plainShelf((await reopened(other)).shelf())).toEqual(before);
  });

  it('that changed on the disk between looking and taking in is not taken in', async () => {
    const { keeper } = await aStudio();
    const { bytes, file } = await backupOf(keeper);
    const other = await aKeeper();
    const backup = await opened(other, file);
    const at = backup.pictures[1]?.at ?? 0;
    const outcome = await restoreBackup(
      depsOf(other),
      { ...backup, file: new Blob([bytes.with(at + 3, 255 - (bytes[at + 3] ?? 0))]) },
      'join',
      () => undefined,
    );
    expect(isProblem(outcome) && outcome.says).toMatch(/changed or taken away/);
    expect([other.shelf().entries, await other.picture(aPicture(1).sha, 'whole')]).toEqual([0, undefined]);
  });

  it('is not taken into the demo', async () => {
    const { keeper } = await aStudio();
    const { file } = await backupOf(keeper);
    const demo = { ...depsOf(await aKeeper()), isDemo: true };
    expect(await openBackup(demo, file, () => undefined).answer).toMatchObject({ says: expect.stringMatching(/not opened in the demo/) });
    expect(await restoreBackup(demo, await opened(keeper, file), 'join', () => undefined)).toMatchObject({ problem: true });
  });

  it('is claimed only once it was handed over, and then says what has happened since', async () => {
    const { keeper } = await aStudio();
    const deps = depsOf(keeper);
    const shut = new DOMException('closed', 'AbortError');
    onPhone(() => Promise.reject(shut));
    const made = (await makeBackup(deps, () => undefined)) as MadeBackup;
    expect([await handOver(deps, made), lastBackup(deps)]).toEqual([false, undefined]);
    onPhone();
    expect([await handOver(deps, made), reminderNow(deps).since]).toEqual([true, undefined]);
    expect(lastBackup(deps)).toMatchObject({ entries: 3, things: 1, pictures: 2 });
    await keeper.join([aRecorded('wax', { name: 'Green' }, { pictures: [aPicture(9).sha] })]);
    expect(reminderNow(deps)).toMatchObject({ stake: 'quiet', since: { entries: 1, things: 1, pictures: 1 } });
  });

  it('that was called off leaves nothing, and nothing is claimed', async () => {
    const { keeper } = await aStudio();
    const deps = depsOf(keeper);
    expect(
      await makeBackup(
        deps,
        () => undefined,
        () => true,
      ),
    ).toBeUndefined();
    expect(lastBackup(deps)).toBeUndefined();
  });

  it('is put off when the reminder is set aside, for some days', async () => {
    const keeper = await aKeeper(Array.from({ length: 40 }, () => aRecorded('mould', {})));
    const deps = depsOf(keeper);
    expect(reminderNow(deps).stake).toBe('line');
    setReminderAside(deps);
    expect(reminderNow(deps).stake).toBe('quiet');
    expect(reminderNow({ ...deps, today: () => '2099-01-01' as never }).stake).toBe('note');
    expect(reminderNow({ ...deps, isDemo: true, today: () => '2099-01-01' as never }).stake).toBe('quiet');
  });
});

describe('the worker in these tests', () => {
  it('knows no other job', async () => {
    await expect(workerHere().startJob('import', {} as never, () => undefined).answer).rejects.toThrow('import');
  });
});
