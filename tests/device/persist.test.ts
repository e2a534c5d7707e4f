import { afterEach, expect, test, vi } from 'vitest';
import { askPersist, keeping } from '../../src/device/persist.ts';

afterEach(() => vi.unstubAllGlobals());

const refuse = () => Promise.reject(new Error('denied'));

test('tells what the browser tells', async () => {
  vi.stubGlobal('navigator', {
    storage: { persisted: async () => true, estimate: async () => ({ usage: 12, quota: 345 }), persist: async () => true },
  });
  expect(await keeping()).toEqual({ isPersistent: true, usedBytes: 12, quotaBytes: 345 });
  expect(await askPersist()).toBe(true);
});

test.each([
  ['no storage manager', {}],
  ['an old one', { storage: {} }],
  ['one that refuses', { storage: { persisted: refuse, estimate: refuse, persist: refuse } }],
])('knows nothing, and throws nothing, with %s', async (_, navigator) => {
  vi.stubGlobal('navigator', navigator);
  expect(await keeping()).toEqual({});
  expect(await askPersist()).toBe(false);
});
