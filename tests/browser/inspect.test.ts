import { afterEach, expect, test } from 'vitest';
import { axeWhole } from '../support/axe-whole.ts';
import { type OpenApp, openApp } from '../support/browser.ts';
import { workingMould } from '../support/demo-moulds.ts';

let app: OpenApp | undefined;
afterEach(() => app?.close());

test('a look: grade, fault, note and the next look, shown on the page and marked at once', async () => {
  app = await openApp({ demo: true, path: `#/mould/${workingMould.id}/inspect`, viewport: { width: 320, height: 640 } });
  const { page } = app;
  await page.getByRole('button', { name: 'Write it down' }).click();
  await page.locator('.field-problem', { hasText: 'choose one of the four' }).waitFor();
  await page.getByText('worn: replace it soon').click();
  await page.getByText('lost detail', { exact: true }).click();
  await page.getByLabel('Next look by').fill('2020-01-01');
  await page.getByRole('button', { name: 'Write down: worn' }).click();
  await page.locator('.field-problem', { hasText: '1 January 2020 has gone by already.' }).waitFor();
  await page.getByRole('button', { name: 'Next look in 1 month' }).click();
  await page.getByLabel('Note').fill('soft around the eyes');
  expect(await axeWhole(page)).toEqual([]);
  await page.getByRole('button', { name: 'Write down: worn' }).click();
  await page.waitForURL((url) => url.hash === `#/mould/${workingMould.id}`);
  await page.locator('[role=main] .mark', { hasText: 'worn' }).first().waitFor();
  await page.locator('.flag', { hasText: 'Graded worn' }).filter({ hasText: 'lost detail' }).waitFor();
  await page.locator('.history-line', { hasText: 'Looked at and found worn: lost detail.' }).waitFor();
  await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  app.assertQuiet();
});

test('a mould found sound with a fault ticked is asked about', async () => {
  app = await openApp({ demo: true, path: `#/mould/${workingMould.id}/inspect` });
  const { page } = app;
  await page.getByText('sound: use it freely').click();
  await page.getByText('torn keys', { exact: true }).click();
  await page.getByRole('button', { name: 'Write down: sound' }).click();
  await page.getByText('You call it sound, with').waitFor();
  await page.getByRole('button', { name: 'Write it down all the same' }).click();
  await page.waitForURL((url) => url.hash === `#/mould/${workingMould.id}`);
});
