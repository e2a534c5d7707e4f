import { existsSync, readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { axeWhole } from '../support/axe-whole.ts';
import { makeProfile, type OpenApp, openApp, removeProfile } from '../support/browser.ts';
import { damageDatabase, tearLog } from '../support/damage-database.ts';
import { aJournal } from '../support/entry-builders.ts';
import { layIn } from '../support/lay-in.ts';

const entries = aJournal();
let profile = '';
beforeEach(() => {
  profile = makeProfile();
});
afterEach(() => removeProfile(profile));

/** What the second copy holds, as text. */
function copied(page: Page): Promise<string> {
  return page.evaluate(async () => {
    const cache = await caches.open('mouldkeep-second-copy:mouldkeep');
    const texts = await Promise.all((await cache.keys()).map(async (key) => (await cache.match(key))?.text()));
    return texts.join('\n');
  });
}

/** A first good visit: a journal, a wax, and the copy of both. */
async function visit(): Promise<OpenApp> {
  const app = await openApp({ profile, path: '#/shelves' });
  await layIn(app.page, entries);
  await receive(app, 'Kelp green');
  await expect.poll(() => copied(app.page)).toMatch(/Kelp green/);
  await app.close();
  return app;
}

async function receive(app: OpenApp, name: string): Promise<void> {
  await app.page.goto(`${app.url}#/new/wax`);
  await app.page.getByLabel('Name').fill(name);
  await app.page.locator('.screen-actions .button-main').click();
  await app.page.locator('.toast').waitFor();
}

/** As Chromium answers when it cannot read the files of a database: only the studio's own. */
function failToOpen(): void {
  const open = IDBFactory.prototype.open;
  IDBFactory.prototype.open = function (name, version) {
    if (name !== 'mouldkeep') return open.call(this, name, version);
    const error = new DOMException('Internal error opening backing store for indexedDB.open.', 'UnknownError');
    const request = { error, onerror: (_: unknown) => undefined };
    setTimeout(() => request.onerror({ target: request, preventDefault: () => undefined, stopPropagation: () => undefined }));
    return request as unknown as IDBOpenDBRequest;
  };
}

test('the browser throws its damaged database away: everything but pictures is put back, and that is said until it is read', async () => {
  const first = await visit();
  damageDatabase(profile);

  const again = await openApp({ profile, path: '#/where?q=kelp', url: first.url });
  await again.page.getByText('The browser found its database damaged').waitFor();
  await again.page.getByText(`${entries.length + 1} entries, up to`).waitFor();
  await again.page.getByText('Kelp green').first().waitFor();
  expect(await axeWhole(again.page)).toEqual([]);
  await again.page.getByRole('button', { name: 'I have read it' }).click();
  await again.page.reload();
  await again.page.getByText('Kelp green').first().waitFor();
  await expect.poll(() => again.page.getByText('The browser found its database damaged').count()).toBe(0);
  again.assertQuiet();
  await again.close();
});

test('a browser killed in the midst of a write has nothing thrown away, neither at the next opening nor at the one after that', async () => {
  const { url } = await visit();
  for (const name of ['Shingle grey', 'Gorse amber']) {
    const torn = tearLog(profile);
    const app = await openApp({ profile, url });
    await receive(app, name);
    // The browser does it when it has time, which it has not on a busy machine.
    await expect.poll(() => torn.filter((log) => existsSync(log))).toEqual([]);
    await app.close();
  }
  const last = await openApp({ profile, path: '#/wax', url });
  for (const name of ['Gorse amber', 'Shingle grey', 'Kelp green']) await last.page.getByText(name).first().waitFor();
  await last.page.goto(`${url}#/shelves`);
  await last.page.locator('.front').first().waitFor();
  expect(await last.page.getByText('The browser found its database damaged').count()).toBe(0);
  await last.close();
});

test('a database that cannot be opened at all: the second copy is offered as a file, which another device reads back in', async () => {
  const { url } = await visit();
  const shut = await openApp({ profile, url, prepare: (context) => context.addInitScript(failToOpen) });
  await shut.page.getByText('The browser could not open what it keeps here (UnknownError: Internal error').waitFor();
  await shut.page.getByText(`can still be read: ${entries.length + 1} entries, up to`).waitFor();
  await shut.page.getByText('Pictures are not in it').waitFor();
  expect(await axeWhole(shut.page)).toEqual([]);
  const download = shut.page.waitForEvent('download');
  await shut.page.getByRole('button', { name: 'Save the journal from the second copy' }).click();
  const buffer = readFileSync(await (await download).path());
  await shut.page.getByText(`A journal of ${entries.length + 1} entries was handed over.`).waitFor();
  await shut.close();

  const other = await openApp({ path: '#/backup' });
  await other.page.locator('input[type=file]').setInputFiles({ name: 'journal.txt', mimeType: 'text/plain', buffer });
  await other.page.getByRole('button', { name: /^Join .+ entries$/ }).click();
  await other.page.getByText(/^Joined: /).waitFor();
  // No door was gone through on the way here, and none stands in it now.
  await other.page.evaluate(() => Object.assign(window.location, { hash: '#/where?q=kelp' }));
  await other.page.getByText('Kelp green').first().waitFor();
  await other.close();
});
