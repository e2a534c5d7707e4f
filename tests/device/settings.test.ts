import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { beforeEach, expect, test, vi } from 'vitest';
import { openSettings } from '../../src/device/settings.ts';

beforeEach(() => {
  vi.stubGlobal('indexedDB', new IDBFactory());
  return () => vi.unstubAllGlobals();
});

test('a setting holds at once, and is there when the app is opened again', async () => {
  const settings = await openSettings();
  expect(settings.get('theme')).toBeUndefined();
  settings.set('theme', 'dark');
  settings.set('units', { mass: 'dwt' });
  expect(settings.get('theme')).toBe('dark');
  await vi.waitFor(async () => {
    const again = await openSettings();
    expect([again.get('theme'), again.get('units')]).toEqual(['dark', { mass: 'dwt' }]);
  });
});

test('where storage is denied a setting lasts as long as the tab, and nothing is thrown', async () => {
  vi.stubGlobal('indexedDB', {
    open: () => {
      throw new DOMException('denied', 'SecurityError');
    },
  });
  const settings = await openSettings();
  settings.set('theme', 'light');
  expect(settings.get('theme')).toBe('light');
  expect((await openSettings()).get('theme')).toBeUndefined();
});

test('a setting that cannot be written, because the device is full, still holds in this tab', async () => {
  const settings = await openSettings();
  const rejected = vi.fn();
  process.on('unhandledRejection', rejected);
  const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
    throw new DOMException('no room', 'QuotaExceededError');
  });
  settings.set('theme', 'dark');
  await vi.waitFor(() => expect(put).toHaveBeenCalled());
  put.mockRestore();
  await new Promise((resolve) => setTimeout(resolve, 20));
  process.off('unhandledRejection', rejected);
  expect(rejected).not.toHaveBeenCalled();
  expect(settings.get('theme')).toBe('dark');
  expect((await openSettings()).get('theme')).toBeUndefined();
});
