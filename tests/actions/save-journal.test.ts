import { afterEach, expect, test, vi } from 'vitest';
import { lastBackup, noteBackup } from '../../src/actions/last-backup.ts';
import { saveJournal } from '../../src/actions/save-journal.ts';
import { censusOf } from '../../src/domain/backup-reminder.ts';
import { isProblem } from '../../src/domain/problem.ts';
import { onPhone, settingsInMemory } from '../support/backups.ts';
import { START_DAY } from '../support/builders.ts';
import { aRecorded } from '../support/entry-builders.ts';
import { aKeeper } from '../support/keepers.ts';

afterEach(() => vi.unstubAllGlobals());

async function aStudio() {
  const keeper = await aKeeper([aRecorded('wax', { name: 'Green' }), aRecorded('mould', {})]);
  return { keeper, settings: settingsInMemory(), today: () => START_DAY };
}

test('a copy that was handed over is noted with its day and its entries', async () => {
  onPhone();
  const deps = await aStudio();
  expect(lastBackup(deps)).toBeUndefined();
  expect(await saveJournal(deps)).toBe(2);
  expect(lastBackup(deps)).toEqual({ on: START_DAY, last: deps.keeper.shelf().last, entries: 2, things: 2, pictures: 0 });
  // Another studio on this device has its own.
  expect(lastBackup({ ...deps, keeper: { ...deps.keeper, name: 'mouldkeep-demo' } })).toBeUndefined();
});

test('nothing is claimed when the share sheet was closed', async () => {
  onPhone(() => Promise.reject(new DOMException('closed', 'AbortError')));
  const deps = await aStudio();
  expect(await saveJournal(deps)).toBeUndefined();
  expect(lastBackup(deps)).toBeUndefined();
});

test('a journal that cannot be read is told of, and nothing is claimed', async () => {
  onPhone();
  const deps = await aStudio();
  const outcome = await saveJournal({ ...deps, keeper: { ...deps.keeper, journal: () => Promise.reject(new Error('gone')) } });
  expect(isProblem(outcome)).toBe(true);
  expect(lastBackup(deps)).toBeUndefined();
});

test('it holds no pictures, so those of the backup before it count on', async () => {
  onPhone();
  const deps = await aStudio();
  noteBackup(deps, { ...censusOf(deps.keeper.shelf()), pictures: 7 }, true);
  await saveJournal(deps);
  expect(lastBackup(deps)?.pictures).toBe(7);
});

test('what an older version noted is read, and anything else is no copy', async () => {
  const deps = await aStudio();
  deps.settings.set(`backup-on:${deps.keeper.name}`, { on: '2024-03-05', entries: 3 });
  expect(lastBackup(deps)).toEqual({ on: '2024-03-05', last: '', entries: 3, things: 0, pictures: 0 });
  for (const raw of ['2024-03-05', { on: '2024-02-30', entries: 3 }, { on: '2024-03-05' }, null]) {
    deps.settings.set(`backup-on:${deps.keeper.name}`, raw);
    expect(lastBackup(deps)).toBeUndefined();
  }
});
