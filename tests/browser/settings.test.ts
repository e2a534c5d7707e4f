import type { Page } from 'playwright-core';
import { afterEach, expect, test } from 'vitest';
import { axeWhole } from '../support/axe-whole.ts';
import { type OpenApp, openApp } from '../support/browser.ts';
import { keptSetting } from '../support/kept-setting.ts';

let app: OpenApp | undefined;
afterEach(() => app?.close());

async function openSettings(options: Parameters<typeof openApp>[0] = {}): Promise<Page> {
  app = await openApp({ path: '#/settings', ...options });
  await app.page.getByRole('heading', { name: 'Settings', level: 1 }).waitFor();
  return app.page;
}

const card = (page: Page, heading: string) => page.locator('.card', { has: page.getByRole('heading', { name: heading, exact: true }) });
const fact = (page: Page, name: string) => page.locator('dt', { hasText: name }).locator('+ dd');
async function entries(page: Page): Promise<number> {
  const counted = fact(page, 'Entries').filter({ hasText: /^[\d\u202f]+$/ });
  return Number((await counted.textContent())?.replace(/\D/g, ''));
}

/** To another screen of the same page, as its links do it. */
async function go(page: Page, hash: string): Promise<void> {
  await page.evaluate((next) => {
    window.location.hash = next;
  }, hash);
}

test('tells whether the browser will keep the shelves, how much is used, and when a backup was last made', async () => {
  const page = await openSettings({ demo: true });
  await page.getByText(/No: it has promised|Yes, when the phone runs out of room/).waitFor();
  await expect.poll(() => fact(page, 'Stored').textContent()).toMatch(/^[\d.\u202f]+ MB of [\d.\u202f]+ [MG]B$/);
  await expect.poll(async () => Number.parseFloat((await fact(page, 'Stored').textContent()) ?? '')).toBeGreaterThan(0);
  await expect.poll(() => entries(page)).toBeGreaterThan(1000);
  await expect.poll(() => fact(page, 'Last backup').textContent()).toBe('None has been made on this device.');
  await expect
    .poll(() => fact(page, 'In no backup yet').textContent())
    .toMatch(/^[\d\u202f]+ entries, [\d\u202f]+ things and \d+ pictures$/);
  await page.getByRole('link', { name: 'Make or open a backup' }).click();
  await page.getByRole('heading', { name: 'Backup', level: 1 }).waitFor();
  app?.assertQuiet();
});

test('figures are shown and taken in the units chosen, and what is recorded stays', async () => {
  const page = await openSettings({ demo: true });
  const left = () => page.locator('.wax-card', { hasText: 'Amber' }).locator('dd').first().textContent();
  await go(page, '#/wax');
  await page.locator('.wax-card').first().waitFor();
  await page.getByLabel('The room is at').fill('21');
  const grams = Number((await left())?.replace(/[\u202f\s]/g, '').match(/^[\d.]+/)?.[0]);
  await go(page, '#/settings');
  for (const unit of ['oz t (troy ounce)', '°F', 'psi', 'in']) await page.getByRole('radio', { name: unit, exact: true }).check();
  await go(page, '#/wax');
  await page.locator('.wax-card').first().waitFor();
  // A troy ounce is 31.1034768 g.
  await expect.poll(async () => Number((await left())?.match(/^([\d.]+) oz t/)?.[1])).toBeCloseTo(grams / 31.1034768, 0);
  // A note on a wax is somebody’s own words, and stays as it was written.
  const text = ((await page.getByRole('main').textContent()) ?? '').replace(/brittle below 22 °C\./, '');
  expect(text).toMatch(/°F/);
  expect(text).toMatch(/ psi/);
  expect(text).not.toMatch(/°C|kPa|\d g\b/);
  // 21 typed as °C is not 21 °F.
  await expect.poll(() => page.getByLabel('The room is at').inputValue()).toBe('');
  await page.getByLabel('The room is at').fill('86');
  await expect.poll(() => page.locator('.wax-card', { hasText: 'Violet' }).textContent()).toContain('Too soft above 68 °F');

  await go(page, '#/where?q=amber');
  await page
    .getByText(/wax · [\d.]+ oz t/)
    .first()
    .waitFor();
  await page.reload();
  await page
    .getByText(/wax · [\d.]+ oz t/)
    .first()
    .waitFor();
  app?.assertQuiet();
});

test('the studio’s own figures change what needs attention, and can be taken back', async () => {
  const page = await openSettings({ demo: true });
  const flags = async () => {
    await go(page, '#/attention');
    await page.getByRole('heading', { level: 1, name: /attention/ }).waitFor();
    return page.locator('.bar-count').textContent();
  };
  await go(page, '#/attention');
  await page.locator('.attention-group').first().waitFor();
  const before = await flags();
  await go(page, '#/settings');
  const shots = page.getByLabel('vulcanised silicone, shots');
  const was = await shots.inputValue();
  await shots.fill('0');
  await page.getByRole('button', { name: 'Keep the studio’s figures' }).click();
  await page
    .getByText(/vulcanised silicone: shots are a whole number from 1/)
    .first()
    .waitFor();
  await shots.fill('30');
  await page.getByRole('button', { name: 'Keep the studio’s figures' }).click();
  await page.getByText('The studio’s figures are written down.').waitFor();
  await expect.poll(async () => Number.parseInt((await flags()) ?? '', 10)).toBeGreaterThan(Number.parseInt(before ?? '', 10));
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByText('Taken back.').waitFor();
  await expect.poll(flags).toBe(before);
  await go(page, '#/settings');
  await expect.poll(() => shots.inputValue()).toBe(was);
});

test('who uses the device is written beside what is done on it, on the day it was done', async () => {
  const page = await openSettings({ demo: true });
  await page.getByLabel('Name', { exact: true }).fill('Una');
  await go(page, '#/wax');
  await page.getByRole('button', { name: 'Receive: Amber' }).click();
  await page.getByLabel('Came in').fill('500');
  await page.getByText(/^On which day: Today · change$/).click();
  await page.getByLabel('On which day').fill('2999-01-01');
  await page.getByText('1 January 2999 has not come yet.').waitFor();
  await page.getByRole('button', { name: 'Write it down' }).click();
  await page.getByRole('dialog').waitFor();
  await page.getByLabel('On which day').fill('2026-01-31');
  await page.getByText(/31 January 2026 · change$/).waitFor();
  await page.getByRole('button', { name: 'Write it down' }).click();
  await page.getByText('Amber: 500 g came in.').waitFor();
  await page.locator('.wax-card').getByRole('link', { name: 'Amber' }).click();
  const line = page.locator('.history li', { hasText: 'Received 500 g' });
  await line.waitFor();
  await expect.poll(() => line.textContent()).toMatch(/31 January 2026[\s\S]*Una/);
});

test.each([
  ['light', { width: 390, height: 844 }],
  ['dark', { width: 1280, height: 800 }],
  ['dark', { width: 320, height: 640 }],
] as const)('nothing stands in anybody’s way, %s, %o', async (colorScheme, viewport) => {
  const page = await openSettings({ demo: true, colorScheme, viewport });
  expect(await axeWhole(page)).toEqual([]);
  await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth)).toBe(true);
  const other = colorScheme === 'light' ? 'Dark' : 'Light';
  await card(page, 'Look').getByText(other, { exact: true }).click();
  await expect.poll(() => page.evaluate(() => document.documentElement.dataset['theme'])).toBe(other.toLowerCase());
  expect(await axeWhole(page)).toEqual([]);
  await expect.poll(() => keptSetting(page, 'theme')).toBe(other.toLowerCase());
  await page.reload();
  await page.getByRole('heading', { name: 'Settings', level: 1 }).waitFor();
  await expect.poll(() => page.evaluate(() => document.documentElement.dataset['theme'])).toBe(other.toLowerCase());
  app?.assertQuiet();
});
