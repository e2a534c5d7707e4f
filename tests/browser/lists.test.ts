import { readFileSync, writeFileSync } from 'node:fs';
import { strFromU8, unzipSync } from 'fflate';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { axeWhole } from '../support/axe-whole.ts';
import { type OpenApp, openApp } from '../support/browser.ts';
import { tableOf } from '../support/import.ts';
import { pdfTexts } from '../support/pdf-texts.ts';

let app: OpenApp;
let page: Page;

beforeAll(async () => {
  app = await openApp({
    demo: true,
    prepare: (context) => context.addInitScript(() => Object.assign(window, { print: () => Object.assign(window, { hasPrinted: true }) })),
  });
  page = app.page;
});
afterAll(() => app?.close());

async function go(hash: string, heading: string | RegExp): Promise<void> {
  await page.evaluate((next) => {
    window.location.hash = next;
  }, hash);
  await page.getByRole('heading', { level: 1, name: heading }).waitFor();
}

async function takeAsTable(button: string | RegExp): Promise<readonly (readonly string[])[]> {
  await page.getByRole('button', { name: button }).first().click();
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'As a table (CSV)' }).click();
  const file = await download;
  expect(file.suggestedFilename()).toMatch(/^mouldkeep-[a-z0-9-]+-\d{4}-\d\d-\d\d\.csv$/);
  const text = readFileSync(await file.path(), 'utf8');
  expect(text.charCodeAt(0)).toBe(0xfeff);
  await page.getByText('The list was handed over.').waitFor();
  return tableOf(text).rows.map(({ cells }) => cells);
}

test('what each list shows is what goes out', async () => {
  await go('#/where?q=seal', 'Where is…');
  await page.getByRole('textbox').fill('seal');
  await page.locator('.list .row-title').first().waitFor();
  const [head, ...found] = await takeAsTable('Take this list…');
  expect(head).toEqual(['Name', 'What it is', 'State', 'Stands in']);
  const titles = await page.locator('.list .row-title').allTextContents();
  expect(titles.length).toBeGreaterThan(3);
  for (const title of titles) expect(found.map(([name]) => name)).toContain(title);

  await go('#/attention', /attention/);
  const [, ...flags] = await takeAsTable('Take this list…');
  const says = await page.locator('.attention-item p').first().textContent();
  expect(flags.map(([, , , why, todo]) => `${why} ${todo}`)).toContain(says);

  await go('#/shelves', 'Shelves');
  await page.locator('.shelves .row .front-label').first().waitFor();
  const [, ...drawers] = await takeAsTable('Take this list…');
  expect(drawers.map(([label]) => label)).toEqual(await page.locator('.shelves .row .front-label').allTextContents());
  await expect.poll(() => page.locator('.shelves .row-detail').first().textContent()).toBe(`${drawers[0]?.[3]} · ${drawers[0]?.[4]} fit`);

  await go('#/wax', 'Wax for today');
  const [, ...waxes] = await takeAsTable('Take this list…');
  const names = await page.locator('.wax-card h2').allTextContents();
  expect(waxes.map(([name]) => name)).toEqual(names);
  const heat = await page.locator('.wax-card dt', { hasText: 'Inject at' }).first().locator('+ dd').textContent();
  expect(waxes.flat()).toContain(heat);
  await page.locator('.wax-card h2 a').first().click();
  await page.getByRole('heading', { name: 'History' }).waitFor();
  await page.locator('.history-line').first().waitFor();
  const lines = await page.locator('.history-line').count();
  expect((await takeAsTable('Take the history…')).length).toBeGreaterThan(lines);
});

test('a list on paper has its title, the studio, the day and the page’s number, and nothing else of the screen', async () => {
  await go('#/where', 'Where is…');
  await page.getByRole('textbox').fill('mould');
  await page.locator('.list .row-title').first().waitFor();
  await page.getByRole('button', { name: 'Take this list…' }).first().click();
  await page.getByRole('dialog').getByRole('button', { name: 'On paper' }).waitFor();
  expect(await axeWhole(page)).toEqual([]);
  await page.emulateMedia({ colorScheme: 'dark' });
  expect(await axeWhole(page)).toEqual([]);
  const title = (await page.getByRole('dialog').locator('p').first().textContent())?.split(':')[0] ?? '';
  await page.getByRole('dialog').getByRole('button', { name: 'On paper' }).click();
  await expect.poll(() => page.evaluate(() => 'hasPrinted' in window)).toBe(true);
  const pdf = await page.pdf({ format: 'A4', preferCSSPageSize: true });
  if (process.env['KEEP_PDF']) writeFileSync(process.env['KEEP_PDF'], pdf);
  const sheets = await pdfTexts(pdf);
  expect(sheets[0]).toContain(title);
  expect(sheets[0]).toMatch(/Tern Quay Foundry · \d+ \w+ 2\d{3} · \d+ lines?/);
  expect(sheets.length).toBeGreaterThan(1);
  for (const [i, sheet] of sheets.entries()) {
    expect(sheet).toContain(`Page ${i + 1} of ${sheets.length}`);
    expect(sheet).toContain('What it is');
    expect(sheet).not.toContain('Shelves');
  }
  await page.evaluate(() => window.dispatchEvent(new Event('afterprint')));
  await expect.poll(() => page.locator('.paper').count()).toBe(0);
  await page.emulateMedia({ colorScheme: 'light' });
});

test('the whole studio goes out as one zip of lists, and one of them comes back as it is', async () => {
  await go('#/settings', 'Settings');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Take the whole studio as lists' }).click();
  const file = await download;
  expect(file.suggestedFilename()).toMatch(/^mouldkeep-lists-\d{4}-\d\d-\d\d\.zip$/);
  const files = unzipSync(readFileSync(await file.path()));
  expect(Object.keys(files).sort()).toEqual(
    [
      '1-places.csv',
      '2-designs.csv',
      '3-masters.csv',
      '4-waxes.csv',
      '5-moulds.csv',
      'castings.csv',
      'flasks.csv',
      'injected-waxes.csv',
      'injectors.csv',
      'periods.csv',
      'read-me.txt',
      'wants.csv',
    ].sort(),
  );
  const moulds = files['5-moulds.csv'] as Uint8Array;
  const count = tableOf(strFromU8(moulds)).rows.length - 1;
  await go('#/bring-in', 'Bring in my list');
  await page.locator('input[type=file]').setInputFiles({ name: '5-moulds.csv', mimeType: 'text/csv', buffer: Buffer.from(moulds) });
  await page.getByRole('button', { name: 'See what each row becomes' }).click();
  await page
    .getByText(new RegExp(`${count}\\b.*on the shelf already`))
    .first()
    .waitFor();
  await expect.poll(() => page.getByRole('button', { name: /^Bring in [1-9]/ }).count()).toBe(0);
  app.assertQuiet();
});
