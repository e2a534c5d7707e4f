import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { type OpenApp, openApp } from '../support/browser.ts';
import { workingMould } from '../support/demo-moulds.ts';

let app: OpenApp;
beforeEach(async () => {
  app = await openApp({ demo: true });
  await app.page.locator('.front').first().waitFor();
});
afterEach(() => app.close());

const shots = (page: Page, more: number) => page.locator('dt:text-is("Shots") + dd', { hasText: String(workingMould.shots + more) });

/** Another tab with the mould's page open. */
async function secondTab(prepare?: (page: Page) => Promise<void>): Promise<Page> {
  const page = await app.context.newPage();
  await prepare?.(page);
  await page.goto(`${app.url}?demo#/mould/${workingMould.id}`);
  await shots(page, 0).waitFor();
  return page;
}

async function logFive(page: Page): Promise<void> {
  await page.evaluate((hash) => Object.assign(window.location, { hash }), `#/mould/${workingMould.id}/run`);
  await page.getByRole('button', { name: 'Shots: 5 more' }).click();
  await page.getByRole('button', { name: 'Log 5 shots' }).click();
  await page.waitForURL((url) => url.hash === `#/mould/${workingMould.id}`);
}

test('a run logged in one tab shows in the other at once, and so does taking it back', async () => {
  const other = await secondTab();
  await logFive(app.page);
  await shots(other, 5).waitFor();
  await app.page.getByRole('button', { name: 'Undo' }).click();
  await shots(other, 0).waitFor();
  app.assertQuiet();
});

test('both tabs log: neither run is lost, whichever had heard of the other', async () => {
  const other = await secondTab();
  await Promise.all([logFive(app.page), logFive(other)]);
  await Promise.all([shots(app.page, 10).waitFor(), shots(other, 10).waitFor()]);
  app.assertQuiet();
});

test('a tab that slept through it catches up when it comes to the front', async () => {
  // A sleeping tab hears of nothing; headless browsers put none to sleep.
  const sleeper = await secondTab(async (page) => {
    await page.addInitScript(() => {
      Object.defineProperty(BroadcastChannel.prototype, 'onmessage', { set: () => undefined });
    });
  });
  await logFive(app.page);
  await new Promise((resolve) => setTimeout(resolve, 500));
  await expect.poll(() => shots(sleeper, 0).count()).toBe(1);
  await sleeper.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
  await shots(sleeper, 5).waitFor();
  app.assertQuiet();
});

test('a tab that slept plans again on what was written meanwhile before it writes', async () => {
  const sleeper = await secondTab(async (page) => {
    await page.addInitScript(() => {
      Object.defineProperty(BroadcastChannel.prototype, 'onmessage', { set: () => undefined });
    });
  });
  await logFive(app.page);
  await logFive(sleeper);
  await shots(sleeper, 10).waitFor();
  await shots(app.page, 10).waitFor();
});
