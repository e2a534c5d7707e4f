import { afterEach, expect, test, vi } from 'vitest';
import { lastCopy, saveJournal } from '../../src/actions/save-journal.ts';
import type { DeviceSettings } from '../../src/device/settings.ts';
import { isProblem } from '../../src/domain/problem.ts';
import { START_DAY } from '../support/builders.ts';
import { aRecorded } from '../support/entry-builders.ts';
import { aKeeper } from '../support/keepers.ts';

afterEach(() => vi.unstubAllGlobals());

function settingsInMemory(): DeviceSettings {
  const values = new Map<string, unknown>();
  return { get: <T>(key: string) => values.get(key) as T | undefined, set: (key, value) => void values.set(key, value) };
}

/** An installed app on a phone, whose share sheet answers like this. */
function onPhone(share: () => Promise<void>): void {
  vi.stubGlobal('window', { matchMedia: () => ({ matches: true }) });
  vi.stubGlobal('navigator', { canShare: () => true, share });
}

async function aStudio() {
  const keeper = await aKeeper([aRecorded('wax', { name: 'Green' }), aRecorded('mould', {})]);
  return { keeper, settings: settingsInMemory(), today: () => START_DAY };
}

test('a copy that was handed over is noted with its day and its entries', async () => {
  onPhone(async () => undefined);
  const deps = await aStudio();
  expect(lastCopy(deps)).toBeUndefined();
  expect(await saveJournal(deps)).toBe(2);
  expect(lastCopy(deps)).toEqual({ on: START_DAY, entries: 2 });
  // Another studio on this device has its own.
  expect(lastCopy({ ...deps, keeper: { ...deps.keeper, name: 'mouldkeep-demo' } })).toBeUndefined();
});

test('nothing is claimed when the share sheet was closed', async () => {
  onPhone(() => Promise.reject(new DOMException('closed', 'AbortError')));
  const deps = await aStudio();
  expect(await saveJournal(deps)).toBeUndefined();
  expect(lastCopy(deps)).toBeUndefined();
});

test('a journal that cannot be read is told of, and nothing is claimed', async () => {
  onPhone(async () => undefined);
  const deps = await aStudio();
  const outcome = await saveJournal({ ...deps, keeper: { ...deps.keeper, journal: () => Promise.reject(new Error('gone')) } });
  expect(isProblem(outcome)).toBe(true);
  expect(lastCopy(deps)).toBeUndefined();
});

test('what an older version noted, or anything else, is no copy', async () => {
  const deps = await aStudio();
  for (const raw of ['2024-03-05', { on: '2024-02-30', entries: 3 }, { on: '2024-03-05' }, null]) {
    deps.settings.set(`backup-on:${deps.keeper.name}`, raw);
    expect(lastCopy(deps)).toBeUndefined();
  }
});
