import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type OpenApp, openApp } from '../support/browser.ts';
import { workingMould } from '../support/demo-moulds.ts';
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

type Rows = readonly (readonly string[])[];

async function go(hash: string, heading: string): Promise<void> {
  await page.evaluate((next) => Object.assign(window.location, { hash: next }), hash);
  await page.getByRole('heading', { level: 1, name: heading }).waitFor();
}

/** The table as it was handed over, read back. */
async function taken(button: RegExp): Promise<Rows> {
  await page.getByRole('button', { name: button }).first().click();
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'As a table (CSV)' }).click();
  const file = await download;
  return tableOf(readFileSync(await file.path(), 'utf8')).rows.map(({ cells }) => cells);
}

/** The same on paper: each cell of the table is on some sheet. */
async function onPaper(button: RegExp, rows: Rows): Promise<void> {
  await page.getByRole('button', { name: button }).first().click();
  await page.getByRole('dialog').getByRole('button', { name: 'On paper' }).click();
  await expect.poll(() => page.evaluate(() => 'hasPrinted' in window)).toBe(true);
  const sheets = (await pdfTexts(await page.pdf({ format: 'A4', preferCSSPageSize: true }))).join(' ').replace(/\s+/g, '');
  const missing = rows.flat().filter((cell) => !sheets.includes(cell.replace(/\s+/g, '')));
  expect(missing).toEqual([]);
  await page.evaluate(() => {
    Reflect.deleteProperty(window, 'hasPrinted');
    window.dispatchEvent(new Event('afterprint'));
  });
  await expect.poll(() => page.locator('.paper').count()).toBe(0);
}

test('how long moulds last, what to make again and a trace go out as tables that read back, and on paper', async () => {
  await go('#/life', 'How long moulds last');
  await page.locator('.curve-steps').first().waitFor();
  const lives = await taken(/^Take these figures/);
  for (const rubber of await page.locator('.life-card h2').allTextContents()) expect(lives.flat()).toContain(rubber);
  expect(lives.length).toBeGreaterThan(10);
  await onPaper(/^Take these figures/, lives);

  await go('#/remake', 'Make again first');
  await page.locator('.remake-item').first().waitFor();
  const again = await taken(/^Take this list/);
  const titles = await page.locator('.remake-item h2').allTextContents();
  expect(titles.length).toBeGreaterThan(2);
  expect(again.flat()).toEqual(expect.arrayContaining(titles));
  const last = await page.locator('section .row-title').allTextContents();
  expect(last.length).toBeGreaterThan(0);
  await expect.poll(() => page.getByRole('button', { name: /^Take this list/ }).count()).toBe(1);
  for (const [title, , , , , , , , isLast] of again.slice(1 + titles.length))
    expect([last.includes(title ?? ''), isLast]).toEqual([true, 'yes']);
  await onPaper(/^Take this list/, again);

  await go(`#/trace/${workingMould.id}`, 'Trace its waxes');
  await page
    .getByRole('button', { name: 'All of them' })
    .or(page.getByText('All of them', { exact: true }))
    .first()
    .click();
  await page.locator('.list .row-title').first().waitFor();
  const traced = await taken(/^Take this list/);
  expect(traced[0]).toEqual(['What', 'Name', 'Pieces', 'How sure', 'Where']);
  expect(traced.slice(1).map(([, name]) => name)).toEqual(await page.locator('.list .row-title').allTextContents());
  await onPaper(/^Take this list/, traced);
  app.assertQuiet();
});
