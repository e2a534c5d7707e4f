import type { CDPSession, Page } from 'playwright-core';
import { afterEach, expect, test } from 'vitest';
import { axeWhole } from '../support/axe-whole.ts';
import { makeProfile, type OpenApp, openApp, removeProfile } from '../support/browser.ts';
import { codeOf } from '../support/builders.ts';
import { workingMould } from '../support/demo-moulds.ts';
import { aRecorded } from '../support/entry-builders.ts';
import { layIn, putRow } from '../support/lay-in.ts';

let app: OpenApp | undefined;
afterEach(() => app?.close());

const heron = aRecorded('mould', { name: 'Heron 1', code: codeOf('mould', 17) });
const NEWER = 'These shelves were written by a newer Mouldkeep.';

/** The own studio with one mould in it. */
async function openOwn(): Promise<Page> {
  app = await openApp();
  await app.page.locator('.door').first().waitFor();
  await layIn(app.page, [heron]);
  await app.page.locator('.bar').waitFor();
  return app.page;
}

/** As a later version would: raises the version the browser itself keeps. */
function raiseVersion(page: Page, name: string): Promise<void> {
  return page.evaluate(
    (database) =>
      new Promise<void>((resolve, reject) => {
        const open = indexedDB.open(database, 990);
        open.onerror = () => reject(open.error);
        open.onsuccess = () => {
          open.result.close();
          resolve();
        };
      }),
    name,
  );
}

function tailRows(page: Page): Promise<number> {
  return page.evaluate(
    () =>
      new Promise<number>((resolve, reject) => {
        const open = indexedDB.open('mouldkeep');
        open.onerror = () => reject(open.error);
        open.onsuccess = () => {
          const count = open.result.transaction('tail').objectStore('tail').count();
          count.onsuccess = () => {
            open.result.close();
            resolve(count.result);
          };
        };
      }),
  );
}

async function fillRun(page: Page, note: string): Promise<void> {
  await page.evaluate((hash) => Object.assign(window.location, { hash }), `#/mould/${workingMould.id}/run`);
  await page.getByRole('button', { name: 'Shots: 5 more' }).click();
  await page.getByLabel('Note').fill(note);
}

test.each(['refuses', 'has no'])('a browser that %s storage: it says so, that nothing can be saved, and what to do', async (how) => {
  app = await openApp({
    prepare: (context) =>
      context.addInitScript((isThere) => {
        const open = () => {
          throw new DOMException('denied', 'SecurityError');
        };
        if (isThere) IDBFactory.prototype.open = open;
        else Object.defineProperty(window, 'indexedDB', { value: undefined });
      }, how === 'refuses'),
  });
  const { page } = app;
  await page.getByRole('heading', { name: 'Mouldkeep could not open your shelves' }).waitFor();
  await page.getByText('This browser does not let Mouldkeep keep anything here.').waitFor();
  await page.getByText('Nothing was lost, and nothing can be saved. Open Mouldkeep in an ordinary window').waitFor();
  await page.getByRole('button', { name: 'Try again' }).waitFor();
  expect(await axeWhole(page)).toEqual([]);
  app.assertQuiet();
});

test('shelves that a newer Mouldkeep wrote are not opened and not touched', async () => {
  const page = await openOwn();
  await putRow(page, 'meta', { key: 'guard', value: { lowest: 99 } });
  await raiseVersion(page, 'mouldkeep');
  await page.reload();
  await page.getByText(NEWER).waitFor();
  await page.getByText('Nothing was changed. Load this page again while online to get the newer one.').waitFor();
  await expect.poll(() => tailRows(page)).toBe(1);
  // The guard let down again, the same shelves open.
  await putRow(page, 'meta', { key: 'guard', value: { lowest: 1 } });
  await page.getByRole('button', { name: 'Try again' }).click();
  await page.locator('.bar').waitFor();
  await page.evaluate((hash) => Object.assign(window.location, { hash }), `#/mould/${heron.id}`);
  await page.getByRole('heading', { level: 1, name: 'Heron 1' }).waitFor();
});

test('a tab left open while a newer version takes the database over says so, and keeps what was typed', async () => {
  app = await openApp({ demo: true });
  const { page } = app;
  await page.locator('.front').first().waitFor();
  await fillRun(page, 'the pot ran cool');
  await raiseVersion(page, 'mouldkeep-demo');
  await page.getByRole('button', { name: 'Log 5 shots' }).click();
  await page.locator('.save-problem', { hasText: 'These shelves were closed, because Mouldkeep was brought up to date' }).waitFor();
  await page.locator('.save-problem', { hasText: 'What you typed is still in the form' }).waitFor();
  await expect.poll(() => page.getByLabel('Note').inputValue()).toBe('the pot ran cool');
  await page.reload();
  await page.getByRole('button', { name: 'Log 5 shots' }).waitFor();
  await expect.poll(() => page.getByLabel('Note').inputValue()).toBe('the pot ran cool');
});

test('a full device: the run is not written, the form still holds it, and it is saved once there is room', async () => {
  const profile = makeProfile();
  app = await openApp({ demo: true, profile });
  await app.page.locator('.front').first().waitFor();
  await app.close();
  const { origin } = new URL(app.url);
  let quota: CDPSession | undefined;
  // In a browser that has not looked yet how much room there is: it believes its last look for half a minute.
  app = await openApp({
    demo: true,
    profile,
    path: `#/mould/${workingMould.id}/run`,
    prepare: async (context) => {
      quota = await context.newCDPSession(context.pages()[0] as Page);
      await quota.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 });
    },
  });
  const { page } = app;
  await page.getByRole('button', { name: 'Shots: 5 more' }).click();
  await page.getByLabel('Note').fill('the pot ran cool');
  await page.getByRole('button', { name: 'Log 5 shots' }).click();
  const says = page.locator('.save-problem');
  await says.getByText('This device has no room left, so it could not be saved.').waitFor();
  await says.getByText('What you typed is still in the form, and everything saved before is untouched.').waitFor();
  await expect.poll(() => page.getByLabel('Note').inputValue()).toBe('the pot ran cool');
  await expect.poll(() => page.getByLabel('Shots', { exact: true }).inputValue()).toBe('5');
  expect(await axeWhole(page)).toEqual([]);
  await quota?.send('Storage.overrideQuotaForOrigin', { origin });
  await page.getByRole('button', { name: 'Log 5 shots' }).click();
  const shots = page.locator('dt:text-is("Shots") + dd', { hasText: String(workingMould.shots + 5) });
  await shots.waitFor();
  await page.reload();
  await shots.waitFor();
  await app.close();
  app = undefined;
  removeProfile(profile);
});
