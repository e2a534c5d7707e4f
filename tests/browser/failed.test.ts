import { afterEach, expect, test } from 'vitest';
import type { Day } from '../../src/domain/brand.ts';
import { insteadOf } from '../../src/domain/instead.ts';
import { pathText } from '../../src/domain/nesting.ts';
import { axeWhole } from '../support/axe-whole.ts';
import { type OpenApp, openApp } from '../support/browser.ts';
import { demoShelf, loneMould, workingMould } from '../support/demo-moulds.ts';
import { pngOf } from '../support/label-png.ts';

let app: OpenApp | undefined;
afterEach(() => app?.close());

const grey = { width: 3000, height: 1500, data: new Float32Array(3000 * 1500).fill(190) };

test('a failed mould: faults, a photo, done; then what to use instead and where it stands; Undo brings the form back', async () => {
  app = await openApp({ demo: true, path: `#/mould/${workingMould.id}` });
  const { page } = app;
  await page.getByRole('link', { name: 'Failed', exact: true }).click();
  await page.getByRole('button', { name: 'Mark failed' }).click();
  await page.locator('.field-problem', { hasText: 'choose at least one fault' }).waitFor();
  await page.getByText('torn gate', { exact: true }).click();
  await page.getByText('curled', { exact: true }).click();
  const file = page.locator('input[type=file]');
  await file.setInputFiles({ name: 'holiday.jpg', mimeType: 'image/jpeg', buffer: Buffer.from('<html>no picture</html>') });
  await page.getByText('That file is no picture this device can read.').waitFor();
  await file.setInputFiles({ name: 'torn.png', mimeType: 'image/png', buffer: pngOf(grey) });
  await page.locator('.photos .thumb img').waitFor();
  expect(await axeWhole(page)).toEqual([]);
  await page.getByRole('button', { name: 'Mark failed' }).click();
  const today = (await page.evaluate(() => new Intl.DateTimeFormat('en-CA').format())) as Day;
  const [best] = insteadOf(demoShelf, workingMould.id, today).moulds;
  await page.getByRole('heading', { name: 'What to use instead' }).waitFor();
  await expect.poll(() => page.locator('.instead').count()).toBe(insteadOf(demoShelf, workingMould.id).moulds.length);
  await page.getByText(`It still stands in ${pathText(demoShelf, workingMould.at)}.`).waitFor();
  const show = page
    .locator('.instead')
    .first()
    .getByRole('link', { name: `Show ${pathText(demoShelf, best?.at)}` });
  await expect.poll(() => show.getAttribute('href')).toContain(`drawer=${best?.at}`);
  expect(await axeWhole(page)).toEqual([]);
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByRole('heading', { name: 'Mark it failed' }).waitFor();
  app.assertQuiet();
});

test('a kept photo is redrawn: at most 2048 px, and shown whole on a tap in the history', async () => {
  app = await openApp({ demo: true, path: `#/mould/${loneMould.id}/failed` });
  const { page } = app;
  await page.getByText('brittle', { exact: true }).click();
  await page.locator('input[type=file]').setInputFiles({ name: 'cracked.png', mimeType: 'image/png', buffer: pngOf(grey) });
  await page.locator('.photos .thumb img').waitFor();
  await page.getByRole('button', { name: 'Mark failed' }).click();
  // Nothing else to use: the master is named.
  await page.getByText('No other mould of').waitFor();
  await expect.poll(() => page.locator('.instead').count()).toBe(insteadOf(demoShelf, loneMould.id).masters.length);
  await page.getByRole('link', { name: 'Its page' }).click();
  await page.locator('.history-line .thumb').first().click();
  const whole = page.getByRole('dialog').locator('img.picture-whole');
  await whole.waitFor();
  await expect
    .poll(() => whole.evaluate((image) => [(image as HTMLImageElement).naturalWidth, (image as HTMLImageElement).naturalHeight]))
    .toEqual([2048, 1024]);
  app.assertQuiet();
});
