import { afterEach, beforeEach, expect, test } from 'vitest';
import { axeWhole } from '../support/axe-whole.ts';
import { type OpenApp, openApp } from '../support/browser.ts';
import { codeOf } from '../support/builders.ts';
import { aRecorded } from '../support/entry-builders.ts';
import { layIn } from '../support/lay-in.ts';
import { typeCode } from '../support/type-code.ts';

/** Two phones drew the same code before their journals were joined. */
const code = codeOf('mould', 41);
const heron = aRecorded('mould', { name: 'Heron 1', code });
const otter = aRecorded('mould', { name: 'Otter 4', code });
const otterPage = `#/mould/${otter.id}`;

let app: OpenApp;
beforeEach(async () => {
  app = await openApp();
  await app.page.locator('.door').first().waitFor();
  await layIn(app.page, [heron, otter]);
  await app.page.locator('.bar').waitFor();
});
afterEach(() => app.close());

const visit = (hash: string) => app.page.evaluate((next) => Object.assign(window.location, { hash: next }), hash);

test('a scan of a code that two things carry asks which of them it is', async () => {
  const { page } = app;
  await visit('#/scan');
  await typeCode(page, code);
  await page.getByRole('heading', { name: `${code} is on several things. Which one do you hold?` }).waitFor();
  await expect.poll(() => page.locator('.bearer strong').allTextContents()).toEqual(['Heron 1', 'Otter 4']);
  expect(await axeWhole(page)).toEqual([]);
  await page.getByRole('button', { name: /^Otter 4/ }).click();
  await page.waitForURL((url) => url.hash === otterPage);
  await page.getByRole('heading', { level: 1, name: 'Otter 4' }).waitFor();
  app.assertQuiet();
});

test('a label’s link to such a code asks too', async () => {
  await visit(`#/c/${code}`);
  await app.page.getByRole('button', { name: /^Heron 1/ }).waitFor();
});

test('a list to be moved takes the one that was picked', async () => {
  const { page } = app;
  await visit('#/move');
  await page.getByRole('button', { name: 'Scan a label' }).click();
  await typeCode(page, code);
  await page.getByRole('button', { name: /^Otter 4/ }).click();
  await page.getByText('Otter 4 is on the list.').waitFor();
});
