import type { Page } from 'playwright-core';
import { afterEach, describe, expect, test } from 'vitest';
import { axeWhole } from '../support/axe-whole.ts';
import { type OpenApp, openApp } from '../support/browser.ts';
import { demoShelf, workingMould } from '../support/demo-moulds.ts';
import { cutText, smallText } from '../support/text-seen.ts';

let app: OpenApp | undefined;
afterEach(() => app?.close());

const wax = [...demoShelf.things.wax.keys()][0];
const SCREENS = [
  '#/shelves',
  `#/shelves?drawer=${workingMould.at}`,
  '#/where',
  '#/where?q=owl',
  '#/wax',
  '#/attention',
  `#/mould/${workingMould.id}`,
  `#/mould/${workingMould.id}/run`,
  `#/mould/${workingMould.id}/inspect`,
  `#/mould/${workingMould.id}/failed`,
  `#/place/${workingMould.at}`,
  `#/thing/${wax}`,
  `#/move?things=${workingMould.id}`,
  '#/new',
  '#/new/mould',
  `#/edit/${workingMould.id}`,
  '#/draw/new',
  `#/draw/${demoShelf.things.place.get(workingMould.at as never)?.in}`,
  '#/rooms',
  '#/settings',
  '#/bring-in',
  '#/scan',
];

async function goTo(page: Page, hash: string): Promise<void> {
  await page.evaluate((address) => Object.assign(window.location, { hash: address }), hash);
  await page.waitForTimeout(50);
  await page.locator('main, [role=main], .label-reader').first().waitFor();
  await page.waitForTimeout(250);
}

/** Phones and browsers let people set twice the letters; the page is told by its root’s size. */
function letters(page: Page, size: string): Promise<void> {
  return page.evaluate((fontSize) => void Object.assign(document.documentElement.style, { fontSize }), size);
}

describe.each([
  ['letters of twice the size', 390, 844, '200%'],
  ['the narrowest phone', 320, 640, '100%'],
  ['a phone on its side', 844, 390, '100%'],
] as const)('with %s', (_, width, height, size) => {
  test('nothing is cut, and nothing has to be scrolled sideways', async () => {
    app = await openApp({ demo: true, viewport: { width, height } });
    const { page } = app;
    const wrong: string[] = [];
    for (const hash of SCREENS) {
      await goTo(page, hash);
      await letters(page, size);
      await page.waitForTimeout(100);
      for (const each of await cutText(page)) wrong.push(`${hash}: ${each}`);
      if (size === '100%') for (const each of await smallText(page)) wrong.push(`${hash}: ${each}`);
    }
    await goTo(page, `#/draw/${demoShelf.things.place.get(workingMould.at as never)?.in}`);
    await page.locator('.draw-one').first().click();
    await page.getByRole('button', { name: 'Size', exact: true }).click();
    for (const each of await cutText(page)) wrong.push(`sizes of fronts: ${each}`);
    expect(wrong).toEqual([]);
    app.assertQuiet();
  });

  test('the doors too', async () => {
    app = await openApp({ viewport: { width, height } });
    await app.page.waitForSelector('.doors');
    await letters(app.page, size);
    expect(await cutText(app.page)).toEqual([]);
  });
});

// Nineteen screens, each looked at whole.
const AXE_MS = 180_000;
test.each(['light', 'dark'] as const)(
  'axe finds nothing wrong on any screen, %s',
  async (colorScheme) => {
    app = await openApp({ demo: true, colorScheme });
    const wrong: string[] = [];
    for (const hash of SCREENS) {
      await goTo(app.page, hash);
      for (const each of await axeWhole(app.page)) wrong.push(`${hash}: ${each}`);
    }
    expect(wrong).toEqual([]);
  },
  AXE_MS,
);
