// @vitest-environment happy-dom
import { expect, test, vi } from 'vitest';
import { watchInstall } from '../../src/device/install.ts';

test("keeps the browser's offer until it is wanted, and offers it once", async () => {
  const install = watchInstall();
  const heard: boolean[] = [];
  install.onChange((canAsk) => heard.push(canAsk));
  expect(install.canAsk()).toBe(false);

  const prompt = vi.fn(async () => undefined);
  const offer = Object.assign(new Event('beforeinstallprompt', { cancelable: true }), { prompt });
  window.dispatchEvent(offer);
  expect(offer.defaultPrevented).toBe(true);
  expect(install.canAsk()).toBe(true);

  await install.ask();
  await install.ask();
  expect(prompt).toHaveBeenCalledOnce();
  expect(heard).toEqual([true, false, false]);
});

test('stops offering once the app is installed', () => {
  const install = watchInstall();
  window.dispatchEvent(Object.assign(new Event('beforeinstallprompt'), { prompt: async () => undefined }));
  window.dispatchEvent(new Event('appinstalled'));
  expect(install.canAsk()).toBe(false);
});
