import type { Locator } from 'playwright-core';
import { afterEach, expect, test } from 'vitest';
import { axeWhole } from '../support/axe-whole.ts';
import { type OpenApp, openApp } from '../support/browser.ts';
import { keptSetting } from '../support/kept-setting.ts';

let app: OpenApp | undefined;
afterEach(() => app?.close());

/**
 * Seconds of a keystroke-level estimate (Card, Moran and Newell's operators, figures from memory): making up one's mind 1.35, pointing 1.1,
 * a key of an average typist 0.28. Twice that for a thumb, and a second for each character written on a label by hand, are common practice,
 * no source.
 */
const SECONDS = { mind: 1.35, point: 1.1, key: 0.56, written: 1 };

const FRONT = '.pager-page:not([inert]) .front';

test('from the doors to the first labelled mould in its drawer: five taps, a name, and well under two minutes', async () => {
  app = await openApp({ viewport: { width: 390, height: 844 } });
  const { page } = app;
  let taps = 0;
  let typed = 0;
  const tap = async (what: Locator) => {
    await what.click();
    taps += 1;
  };
  const type = async (text: string) => {
    await page.keyboard.type(text);
    typed += text.length;
  };
  const hint = page.getByRole('note', { name: 'Next step' });

  await tap(page.getByRole('button', { name: 'Start with an empty cabinet' }));
  await page.getByRole('dialog', { name: 'Add a cabinet' }).waitFor();
  expect(await axeWhole(page)).toEqual([]);
  await tap(page.getByRole('button', { name: 'Add it, with 12 drawers' }));

  await hint.filter({ hasText: 'tap the drawer that your first mould lies in' }).waitFor();
  expect(await axeWhole(page)).toEqual([]);
  await tap(page.locator(FRONT).nth(3));

  const drawer = page.getByRole('dialog');
  await hint.filter({ hasText: 'record the mould that lies here' }).waitFor();
  await tap(drawer.getByRole('link', { name: 'Record a mould here' }));

  await page.getByText('Cabinet 1 › A4').waitFor();
  await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).toBe('INPUT');
  await type('Toggle 7');
  await tap(page.getByRole('button', { name: 'Record the mould' }));

  await page.getByRole('heading', { level: 1, name: 'Toggle 7' }).waitFor();
  await page.locator('[role=main] .place-link', { hasText: 'Cabinet 1 › A4' }).waitFor();
  const code = (await page.locator('[role=main] .mould-head .code').textContent()) ?? '';
  expect(code).toMatch(/^M.{7}$/);
  await hint.filter({ hasText: `write ${code} on the mould’s label` }).waitFor();
  expect(await axeWhole(page)).toEqual([]);

  const seconds = taps * (SECONDS.mind + SECONDS.point) + typed * SECONDS.key + code.length * SECONDS.written;
  expect({ taps, typed }).toEqual({ taps: 5, typed: 8 });
  // Some 25 s of doing; even thrice that, for reading every word on the way, is under two minutes.
  expect(3 * seconds).toBeLessThan(120);

  // The record is thin; its page says what could be added, and asks nothing.
  await page.getByText(/^Not said yet: design, size, purpose, rubber, master\./).waitFor();

  // A hint that is put away stays away, and those of steps done do not come again.
  await hint.getByRole('button', { name: 'Got it' }).click();
  await hint.waitFor({ state: 'detached' });
  await expect.poll(() => keptSetting(page, 'hint:label:mouldkeep')).toBe(true);
  await page.reload();
  await page.getByRole('heading', { level: 1, name: 'Toggle 7' }).waitFor();
  await page.getByText(/^Not said yet/).waitFor();
  await expect.poll(() => hint.count()).toBe(0);
  await page.getByRole('navigation', { name: 'Main screens' }).getByRole('link', { name: 'Shelves' }).click();
  await page.locator(FRONT).first().waitFor();
  await expect.poll(() => hint.count()).toBe(0);
  app.assertQuiet();
});

test('twelve more like it get the next numbers, in the same drawer, and one Undo takes them all back', async () => {
  app = await openApp({ viewport: { width: 390, height: 844 } });
  const { page } = app;
  await page.getByRole('button', { name: 'Start with an empty cabinet' }).click();
  await page.getByRole('button', { name: 'Add it, with 12 drawers' }).click();
  await page.locator(FRONT).first().click();
  await page.getByRole('link', { name: 'Record a mould here' }).click();
  await page.getByLabel('Name', { exact: true }).fill('Toggle 07');
  await page.getByRole('button', { name: 'Record the mould' }).click();
  await page.getByRole('button', { name: 'More about this mould' }).click();
  await page.getByRole('link', { name: 'Several more like it' }).click();
  await page.getByText('Toggle 08 … Toggle 19').waitFor();
  await page.getByText('stands in Cabinet 1 › A1').waitFor();
  expect(await axeWhole(page)).toEqual([]);
  await page.getByRole('button', { name: 'Record 12 more' }).click();
  await page.getByText('12 moulds recorded, each with its own code.').waitFor();
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByText('Taken back.').waitFor();
  await page.getByRole('navigation', { name: 'Main screens' }).getByRole('link', { name: 'Where is' }).click();
  await page.locator('#where-query').fill('toggle 07');
  await page.locator('.found', { hasText: 'Cabinet 1 › A1' }).waitFor();
  await page.locator('#where-query').fill('toggle 19');
  await expect.poll(() => page.locator('.found').count()).toBe(0);
  await page.locator('#where-query').fill('toggle 07');
  await page.locator('.found .row-link').click();
  await page.getByRole('button', { name: 'Open', exact: true }).click();
  const rows = page.getByRole('dialog').locator('.row-title');
  await expect.poll(() => rows.allTextContents()).toEqual(['Toggle 07']);
  app.assertQuiet();
});
