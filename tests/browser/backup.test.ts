import { readFileSync } from 'node:fs';
import type { BrowserContext, Page } from 'playwright-core';
import { afterEach, expect, test } from 'vitest';
import { axeWhole } from '../support/axe-whole.ts';
import { type OpenApp, openApp } from '../support/browser.ts';

let app: OpenApp | undefined;
afterEach(() => app?.close());

/** As on a phone: no browser dialog to choose a file to write into. */
const withoutPicker = (context: BrowserContext) => context.addInitScript(() => Reflect.deleteProperty(window, 'showSaveFilePicker'));
/** As on a desk, with a file of the browser's own in the place of the one a person would choose. */
const withPicker = (context: BrowserContext) =>
  context.addInitScript(() =>
    Reflect.set(window, 'showSaveFilePicker', async ({ suggestedName }: { suggestedName: string }) =>
      (await navigator.storage.getDirectory()).getFileHandle(suggestedName, { create: true }),
    ),
  );

const fact = (page: Page, name: string) => page.locator('dt', { hasText: name }).locator('+ dd');
const sheet = (page: Page, name: string | RegExp) => page.getByRole('dialog', { name });

async function go(page: Page, hash: string): Promise<void> {
  await page.evaluate((next) => {
    window.location.hash = next;
  }, hash);
}

async function downloaded(page: Page, button: string): Promise<{ name: string; bytes: Buffer }> {
  // A whole studio is packed and read back first, which a busy machine takes its time for.
  const download = page.waitForEvent('download', { timeout: 200_000 });
  await page.getByRole('button', { name: button }).click();
  const file = await download;
  return { name: file.suggestedFilename(), bytes: readFileSync(await file.path()) };
}

async function choose(page: Page, buffer: Buffer, name = 'backup.zip'): Promise<void> {
  await page.locator('input[type=file]').setInputFiles({ name, mimeType: 'application/octet-stream', buffer });
}

async function openDemoBackup(): Promise<{ zip: Buffer; text: Buffer }> {
  app = await openApp({ demo: true, path: '#/backup', prepare: withoutPicker });
  const { page } = app;
  await page.getByRole('heading', { name: 'Make a backup' }).waitFor();
  expect(await axeWhole(page)).toEqual([]);
  const { name, bytes } = await downloaded(page, 'Make a backup');
  expect(name).toMatch(/^mouldkeep-demo-backup-\d{4}-\d\d-\d\d\.zip$/);
  await page.getByText(/^The backup was made and read back: [\d\u202f]+ entries and \d+ pictures, [\d.]+ MB\.$/).waitFor();
  await expect.poll(() => fact(page, 'Since then').textContent()).toBe('nothing new');
  // Kindly: it would be mixed with an invented studio.
  await choose(page, bytes);
  await page.getByText('A backup is not opened in the demo').waitFor();
  const text = await downloaded(page, 'Save the journal as text');
  expect(text.name).toMatch(/^mouldkeep-journal-\d{4}-\d\d-\d\d\.txt$/);
  app.assertQuiet();
  await app.close();
  return { zip: bytes, text: text.bytes };
}

test('a backup brings the whole studio to another device, can replace what is there, and that can be brought back', async () => {
  const { zip, text } = await openDemoBackup();
  app = await openApp({ colorScheme: 'dark', prepare: withoutPicker });
  const { page } = app;
  await page.getByRole('button', { name: 'I have a backup' }).click();

  // What is damaged, cut short or something else is refused whole, with the reason.
  for (const [file, says] of [
    [zip.subarray(0, zip.length - 2000), 'This backup is cut short'],
    [Buffer.from(zip).fill(0, 4000, 4040), 'This backup is damaged'],
    [Buffer.from('Bull seal; 2 pieces\n'), 'not a Mouldkeep journal'],
    [Buffer.alloc(0), 'That file is empty.'],
  ] as const) {
    await choose(page, file);
    await page.locator('.note-problem', { hasText: says }).waitFor();
    await page.locator('.note-problem', { hasText: 'Nothing was changed.' }).waitFor();
  }

  await choose(page, zip);
  const preview = sheet(page, 'What this backup would bring');
  await preview.waitFor();
  await expect.poll(() => preview.textContent()).toMatch(/Tern Quay Foundry[\s\S]*entries, \d{1,2} \w+ \d{4} to [\s\S]*; \d+ pictures/);
  await expect
    .poll(() => fact(page, 'New here').textContent())
    .toMatch(/entries: \d+ places, \d+ periods, [\d\u202f]+ designs.*; \d+ pictures$/);
  await expect.poll(() => fact(page, 'Only here').textContent()).toBe('0 entries');
  expect(await axeWhole(page)).toEqual([]);
  // A tablet turned to the desk's two panes and back keeps what is open.
  await page.setViewportSize({ width: 1280, height: 800 });
  await page.locator('.app-screen').waitFor();
  await page.setViewportSize({ width: 390, height: 844 });
  await preview.getByRole('button', { name: /^Join .+ entries$/ }).click();
  await page.getByText(/^Joined: [\d\u202f]+ entries were new here\.$/).waitFor();
  await go(page, '#/wax');
  await expect.poll(() => page.locator('.wax-card').count()).toBe(5);
  await go(page, '#/where?q=bull');
  await page.locator('.row-picture img').first().waitFor();

  // Something of its own, and the backup again: what is only here is told, and can be put aside for it.
  await go(page, '#/settings');
  await page.getByText('south', { exact: true }).click();
  await expect.poll(() => fact(page, 'In no backup yet').textContent()).toMatch(/entries/);
  await go(page, '#/backup');
  await choose(page, zip);
  await preview.waitFor();
  await expect.poll(() => fact(page, 'Only here').textContent()).toBe('1 entry');
  await expect.poll(() => preview.getByRole('button', { name: /^Join/ }).count()).toBe(0);
  await preview.getByRole('button', { name: 'Replace these shelves…' }).click();
  await page.setViewportSize({ width: 320, height: 640 });
  const sure = sheet(page, 'Replace these shelves?');
  await sure.getByText('1 entry that is only here will be off the shelves.').waitFor();
  expect(await axeWhole(page)).toEqual([]);
  await sure.getByRole('button', { name: 'Replace these shelves' }).click();
  await page.getByText('The backup is on the shelves now.').waitFor();
  await page.getByRole('heading', { name: 'Kept aside' }).waitFor();
  expect(await axeWhole(page)).toEqual([]);
  await page.reload();
  await page.getByRole('button', { name: 'Bring them back' }).click();
  await page.getByText('Brought back. What was here is kept aside now.').waitFor();
  await go(page, '#/settings');
  await page.getByRole('radio', { name: 'south' }).waitFor();
  await expect.poll(() => page.getByRole('radio', { name: 'south' }).isChecked()).toBe(true);
  await go(page, '#/backup');
  await page.getByRole('button', { name: 'Let them go…' }).click();
  await sheet(page, 'Let them go?').getByRole('button', { name: 'Let them go' }).click();
  await page.getByText('Let go.', { exact: true }).waitFor();
  await expect.poll(() => page.getByRole('heading', { name: 'Kept aside' }).count()).toBe(0);

  // The journal as text comes through the same door, and brings nothing new.
  await choose(page, text, 'journal.txt');
  await preview.waitFor();
  await expect.poll(() => fact(page, 'New here').textContent()).toBe('0 entries');
  app.assertQuiet();
});

test('where the browser lets a page write into a chosen file, the backup goes straight into it', async () => {
  app = await openApp({ demo: true, path: '#/backup', prepare: withPicker, viewport: { width: 1280, height: 800 } });
  const { page } = app;
  await page.getByRole('button', { name: 'Make a backup' }).click();
  await page.getByText(/^The backup was made and read back/).waitFor();
  const [name, head, bytes] = await page.evaluate(async () => {
    for await (const handle of (await navigator.storage.getDirectory()).values()) {
      const file = await (handle as FileSystemFileHandle).getFile();
      return [file.name, [...new Uint8Array(await file.slice(0, 2).arrayBuffer())], file.size] as const;
    }
    return ['', [], 0] as const;
  });
  expect(name).toMatch(/^mouldkeep-demo-backup-.*\.zip$/);
  expect([head, bytes > 100_000]).toEqual([[0x50, 0x4b], true]);
  app.assertQuiet();
});
