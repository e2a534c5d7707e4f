import type { Page } from 'playwright-core';
import { afterEach, expect, test } from 'vitest';
import { type OpenApp, openApp } from '../support/browser.ts';
import { keptSetting } from '../support/kept-setting.ts';

let app: OpenApp | undefined;
afterEach(() => app?.close());

const DAY = 'rgb(246, 242, 233)';
const NIGHT = 'rgb(22, 32, 28)';
const paper = (page: Page) => page.evaluate(() => getComputedStyle(document.body).backgroundColor);

test.each([
  ['light', DAY, 'Dark', NIGHT],
  ['dark', NIGHT, 'Light', DAY],
] as const)(
  'on a %s phone the app is so too, until told otherwise; that holds after a reload, and can be taken back',
  async (colorScheme, asPhone, other, told) => {
    app = await openApp({ demo: true, path: '#/settings', colorScheme });
    const { page } = app;
    await page.getByText(other, { exact: true }).waitFor();
    await expect.poll(() => paper(page)).toBe(asPhone);
    await page.getByText(other, { exact: true }).click();
    await expect.poll(() => paper(page)).toBe(told);
    await expect.poll(() => keptSetting(page, 'theme')).toBe(other.toLowerCase());
    await page.reload();
    await expect.poll(() => paper(page)).toBe(told);
    await page.getByText('As the phone', { exact: true }).click();
    await expect.poll(() => paper(page)).toBe(asPhone);
    // The phone's evening comes while the app is open.
    await page.emulateMedia({ colorScheme: colorScheme === 'light' ? 'dark' : 'light' });
    await expect.poll(() => paper(page)).toBe(told);
  },
);
