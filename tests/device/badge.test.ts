import { afterEach, expect, test, vi } from 'vitest';
import { setBadge } from '../../src/device/badge.ts';

afterEach(() => vi.unstubAllGlobals());

test('shows a count, and clears it at none', () => {
  const setAppBadge = vi.fn(async () => undefined);
  const clearAppBadge = vi.fn(async () => undefined);
  vi.stubGlobal('navigator', { setAppBadge, clearAppBadge });
  setBadge(3);
  setBadge(0);
  expect(setAppBadge.mock.calls).toEqual([[3]]);
  expect(clearAppBadge).toHaveBeenCalledOnce();
});

test('does nothing where there are no badges, or they are refused', async () => {
  vi.stubGlobal('navigator', {});
  expect(() => setBadge(3)).not.toThrow();
  const refuse = vi.fn(() => Promise.reject(new Error('denied')));
  vi.stubGlobal('navigator', { setAppBadge: refuse });
  setBadge(3);
  await Promise.resolve();
  expect(refuse).toHaveBeenCalledOnce();
});
