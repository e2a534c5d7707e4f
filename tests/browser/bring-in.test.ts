import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { sampleList } from '../../src/domain/csv/sample.ts';
import { axeViolations } from '../support/axe.ts';
import { type OpenApp, openApp } from '../support/browser.ts';

let app: OpenApp;
let page: Page;
beforeEach(async () => {
  app = await openApp({ path: '#/bring-in', viewport: { width: 320, height: 720 } });
  page = app.page;
});
afterEach(async () => {
  await app.close();
});

const button = (name: string | RegExp) => page.getByRole('button', { name });

async function choose(name: string, content: string | Buffer): Promise<void> {
  await page.locator('input[type=file]').setInputFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(content as string) });
}

async function preview(): Promise<void> {
  await button('See what each row becomes').click();
  await page.getByRole('heading', { name: 'What each row becomes' }).waitFor();
}

async function paste(cells: string): Promise<void> {
  await page.getByLabel(/Cells copied/).fill(cells);
  await button('Use what I pasted').click();
  await page.getByText(/^\d+ rows?$/).waitFor();
}

test('the worked sample: downloaded, chosen, looked at, brought in, taken back', async () => {
  const download = page.waitForEvent('download');
  await button('Download the sample list').click();
  const saved = await download;
  expect(saved.suggestedFilename()).toBe('mouldkeep-sample-list.csv');
  const text = readFileSync(await saved.path(), 'utf8');
  expect(text).toBe(sampleList());

  await choose('sample.csv', text);
  await page.getByText('9 rows').waitFor();
  await expect.poll(() => page.getByText('read as UTF-8').count()).toBe(1);
  await expect.poll(() => page.getByRole('radio', { name: 'Moulds' }).isChecked()).toBe(true);
  await expect.poll(() => page.getByLabel('Shots so far').inputValue()).toBe('shots');
  expect(await axeViolations(page)).toEqual([]);

  await preview();
  for (const count of ['6 new', '0 already there', '2 doubtful', '1 cannot be read'])
    await page.getByText(count, { exact: true }).waitFor();
  expect(await axeViolations(page)).toEqual([]);
  await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth)).toBe(true);

  await button('1 cannot be read').click();
  await expect.poll(() => page.locator('.import-row').count()).toBe(1);
  await expect.poll(() => page.locator('.import-row').textContent()).toMatch(/line 10[\s\S]*K-009[\s\S]*does not exist/);
  const rest = page.waitForEvent('download');
  await button('Download these rows as CSV').click();
  expect(readFileSync(await (await rest).path(), 'utf8')).toMatch(
    /^\ufeffMould no,Design.*Line,What is wrong\r\nK-009,Poppy signet ring,.*,10,.*does not exist/,
  );

  await button('Bring in 8').click();
  await page.getByText('8 rows are on the shelf').waitFor();
  await button('Undo').click();
  await page.getByText('All of it is taken back').waitFor();
  app.assertQuiet();
});

test('pasted cells parted by tabs; a second look finds everything there, and writes nothing', async () => {
  const cells = 'Drawer\tCabinet\tTopic\nQ1\tCabinet Q\tCoptic\nQ2\tCabinet Q\tOttoman\n';
  await paste(cells);
  await expect.poll(() => page.getByRole('radio', { name: 'Places' }).isChecked()).toBe(true);
  await preview();
  await button('Bring in 2').click();
  await page.getByText('2 rows are on the shelf').waitFor();
  await page.reload();
  await paste(cells);
  await preview();
  await page.getByText('2 already there').waitFor();
  await expect.poll(() => button('Bring in 0').isDisabled()).toBe(true);
  app.assertQuiet();
});

test('5,000 rows from an old spreadsheet: a progress bar, and the app answers meanwhile', async () => {
  const lines = Array.from(
    { length: 5000 },
    (_, i) => `K-${i};Motif ${i % 900};${i % 7};Période ${i % 12};${'ABCDEF'[i % 6]}${i % 60};natural;${i % 300};12,5`,
  );
  const text = ['Mould no;Design;Size;Period;Drawer;Rubber;Shots;Wax g', ...lines].join('\r\n');
  // 96 is a dash in Windows-1252.
  await choose('old.csv', Buffer.concat([Buffer.from(text, 'latin1'), Buffer.from([0x0d, 0x0a, 0x4b, 0x20, 0x96])]));
  await page.getByText('5 001 rows').waitFor();
  await expect.poll(() => page.getByText('read as Windows-1252').count()).toBe(1);
  await page.evaluate(() => {
    // Counted in the page, so that it counts only when the page gets its turn while the list is worked through.
    const seen = { bars: 0 };
    Object.assign(window, { seen });
    setInterval(() => {
      const bar = document.querySelector('progress');
      if (bar && bar.value > 0 && bar.value < bar.max) seen.bars += 1;
    }, 5);
  });
  await preview();
  expect(await page.evaluate(() => (window as unknown as { seen: { bars: number } }).seen.bars)).toBeGreaterThan(2);
  await page.getByText('1 doubtful', { exact: true }).click();
  await page.getByText('K –', { exact: true }).waitFor();
  // Big enough for a waxy thumb.
  expect((await page.locator('label', { hasText: 'Bring it in' }).boundingBox())?.height).toBeGreaterThanOrEqual(48);
  await page.getByRole('checkbox', { name: 'Bring it in' }).uncheck();
  await button(/^Bring in 5\s000$/).click();
  await page.getByText('5 000 rows are on the shelf').waitFor();
  await expect.poll(() => page.getByText(/5.000 moulds/).count()).toBe(1);
  await page.reload();
  await paste('Mould no,Design,Size,Period\nK-4999,Motif 499,1,Période 7\nK-5000,Motif 499,1,Période 7\n');
  await preview();
  for (const count of ['1 already there', '1 new']) await page.getByText(count, { exact: true }).waitFor();
  await page.getByText('It brings 1 mould.').waitFor();
  app.assertQuiet();
});

test('what is no list is refused with a sentence, and nothing is changed', async () => {
  await choose('cells.xlsx', Buffer.from([0x50, 0x4b, 3, 4, 0, 0]));
  await expect.poll(() => page.getByRole('alert').textContent()).toMatch(/spreadsheet’s own file.*Nothing was changed/);
  await choose('empty.csv', '');
  await expect.poll(() => page.getByRole('alert').textContent()).toContain('empty');
  // A file of 100 MB is made in the page: sending one takes longer than refusing it.
  await page.evaluate(() => {
    const input = document.querySelector<HTMLInputElement>('input[type=file]');
    const files = new DataTransfer();
    files.items.add(new File([new Uint8Array(100_000_000)], 'huge.csv'));
    if (input) input.files = files.files;
    input?.dispatchEvent(new Event('change', { bubbles: true }));
  });
  await page.getByText('That file is 100 MB; a list may have 20 MB.').waitFor();
  app.assertQuiet();
});

test('a list half worked on is there again after the page was loaded anew', async () => {
  await paste('Wax,Stock\nAmber,500 g\n');
  await page.getByLabel('Stock').selectOption('keepGrams');
  await page.reload();
  await page.getByText('1 row').waitFor();
  await expect.poll(() => page.getByLabel('Stock').inputValue()).toBe('keepGrams');
});

test('a row left out in the preview is still left out after the page was loaded anew', async () => {
  await choose('sample.csv', sampleList());
  await page.getByText('9 rows').waitFor();
  await preview();
  await button('Bring in 8').waitFor();
  await page.getByRole('checkbox', { name: 'Bring it in' }).first().uncheck();
  await button('Bring in 7').waitFor();
  await page.reload();
  await page.getByText('9 rows').waitFor();
  await preview();
  await button('Bring in 7').waitFor();
});
