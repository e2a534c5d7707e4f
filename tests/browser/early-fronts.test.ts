import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { FRONTS_SHAPE } from '../../src/views/fronts.ts';
import { type OpenApp, openApp } from '../support/browser.ts';
import { keptSetting } from '../support/kept-setting.ts';

let app: OpenApp;
beforeEach(async () => {
  app = await openApp({ demo: true });
  // Fronts without the bar of main screens are those drawn before the shelf was read.
  await app.page.addInitScript(() => {
    Object.assign(window, { early: false });
    new MutationObserver(() => {
      if (!document.querySelector('.front') || document.querySelector('.bar')) return;
      const shown = document.querySelector('.pager-page:not([inert])');
      Object.assign(window, { early: true, earlyCabinet: shown?.getAttribute('aria-label') });
    }).observe(document, { childList: true, subtree: true });
  });
});
afterEach(() => app.close());

/** What is remembered of the first screen; `next` takes its place. */
function remembered(page: Page, next?: unknown): Promise<unknown> {
  return page.evaluate(
    (value) =>
      new Promise((resolve, reject) => {
        const opening = indexedDB.open('mouldkeep-demo');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const db = opening.result;
          const change = db.transaction('meta', 'readwrite');
          const store = change.objectStore('meta');
          const read = store.get('recall:fronts');
          if (value !== undefined) store.put({ key: 'recall:fronts', value });
          change.oncomplete = () => {
            db.close();
            resolve(read.result?.value);
          };
        };
      }),
    next,
  );
}

/** Whether fronts were drawn before the shelf was read, once it has been. */
async function earlyAfterReload(page: Page): Promise<boolean> {
  await page.reload();
  await page.waitForSelector('.bar');
  await page.waitForSelector('.pager-page:not([inert]) .front');
  return page.evaluate(() => (window as unknown as { early: boolean }).early);
}

test('the fronts shown last are drawn before the shelf is read', async () => {
  const { page } = app;
  await page.waitForSelector('.bar');
  await expect.poll(() => remembered(page)).toMatchObject({ shape: FRONTS_SHAPE });
  expect(await earlyAfterReload(page)).toBe(true);
  app.assertQuiet();
});

test('and of them the cabinet that was looked at last', async () => {
  const { page } = app;
  const second = page.locator('.pager-page').nth(1);
  await second.waitFor();
  const name = await second.getAttribute('aria-label');
  await page.locator('.tabs button').nth(1).click();
  await expect.poll(() => second.getAttribute('inert')).toBe(null);
  await expect.poll(() => remembered(page)).toMatchObject({ shape: FRONTS_SHAPE });
  await expect.poll(() => keptSetting(page, 'cabinet:mouldkeep-demo')).toBeTruthy();
  expect(await earlyAfterReload(page)).toBe(true);
  expect(await page.evaluate(() => (window as unknown as { earlyCabinet?: string }).earlyCabinet)).toBe(name);
});

test.each([
  ['of another shape', { shape: FRONTS_SHAPE + 1, text: JSON.stringify({ cabinets: [{ id: 'x', name: 'Old', fronts: [] }] }) }],
  ['without a shape', { cabinets: [{ id: 'x' }], elsewhere: [] }],
  ['damaged', { shape: FRONTS_SHAPE, text: JSON.stringify({ cabinets: [{ id: 'x' }] }), fronts: ['{}'] }],
  ['of fewer cabinets', { shape: FRONTS_SHAPE, text: JSON.stringify({ cabinets: [{ id: 'x' }] }), fronts: [] }],
  ['cut short', { shape: FRONTS_SHAPE, text: '{"cabinets":[{"id":', fronts: ['[]'] }],
])('fronts %s are not drawn, and the shelves open all the same', async (_, value) => {
  const { page } = app;
  await page.waitForSelector('.bar');
  // Away from the shelves nothing else is remembered meanwhile.
  await page.evaluate(() => Object.assign(window.location, { hash: '#/settings' }));
  await page.getByRole('heading', { level: 1, name: 'Settings' }).waitFor();
  await remembered(page, value);
  await page.evaluate(() => window.history.replaceState(null, '', '#/'));
  expect(await earlyAfterReload(page)).toBe(false);
  await expect.poll(() => page.locator('.front').count()).toBeGreaterThan(5);
});
