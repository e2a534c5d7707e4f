import { afterEach, expect, test } from 'vitest';
import { axeWhole } from '../support/axe-whole.ts';
import { keptOffline, type OpenApp, openApp } from '../support/browser.ts';
import { workingMould } from '../support/demo-moulds.ts';

let app: OpenApp | undefined;
afterEach(() => app?.close());

const DEMO_DOOR = 'Look around the demo studio';
const LIST_DOOR = 'Bring in my list';
const EMPTY_DOOR = 'Start with an empty cabinet';

async function openDoors(): Promise<OpenApp['page']> {
  app = await openApp({ viewport: { width: 320, height: 640 } });
  await app.page.locator('.door').first().waitFor();
  return app.page;
}

test('the first opening shows three doors, and nothing is behind them that hinders anybody', async () => {
  const page = await openDoors();
  await expect.poll(() => page.locator('.door strong').allTextContents()).toEqual([DEMO_DOOR, LIST_DOOR, EMPTY_DOOR]);
  await expect.poll(() => page.locator('.bar').count()).toBe(0);
  expect(await axeWhole(page)).toEqual([]);
  await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  app?.assertQuiet();
});

/** A browser that takes longer to say what it keeps than it is waited for. */
const SLOW_TO_SAY = `
  const say = indexedDB.databases.bind(indexedDB);
  indexedDB.databases = () => new Promise((resolve) => setTimeout(() => resolve(say()), 1500));
`;

/** The doors' page with the app itself held back, until it is let come. */
async function openHeld(first?: string): Promise<{ page: OpenApp['page']; letCome: () => void }> {
  let letCome = (): void => undefined;
  const come = new Promise<void>((resolve) => {
    letCome = resolve;
  });
  app = await openApp({
    prepare: async (context) => {
      if (first) await context.addInitScript(first);
      await context.route('**/assets/app-*.js', (route) => come.then(() => route.continue()));
    },
  });
  return { page: app.page, letCome };
}

test('the doors stand before any of the app has come; the one tapped meanwhile is gone through when it has', async () => {
  const { page, letCome } = await openHeld();
  const door = page.getByRole('button', { name: EMPTY_DOOR });
  await door.waitFor();
  expect(await axeWhole(page)).toEqual([]);
  expect(await page.evaluate(async () => (await indexedDB.databases()).length)).toBe(0);
  await door.click();
  await page.getByText('Opening…').waitFor();
  letCome();
  await page.getByRole('dialog', { name: 'Add a cabinet' }).waitFor();
  await expect.poll(() => page.locator('#doors').count()).toBe(0);
  app?.assertQuiet();
});

test('the doors are not drawn again when the app has come: what the keyboard stands on stays', async () => {
  const { page, letCome } = await openHeld();
  const door = page.getByRole('button', { name: LIST_DOOR });
  await door.focus();
  letCome();
  await expect.poll(() => page.evaluate(async () => (await indexedDB.databases()).length)).toBeGreaterThan(0);
  await keptOffline(page);
  expect(await door.evaluate((element) => element === document.activeElement)).toBe(true);
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Use what I pasted' }).waitFor();
});

test('a browser that is slow to say what it keeps gets the doors too, before the app', async () => {
  const { page, letCome } = await openHeld(SLOW_TO_SAY);
  await page.getByRole('button', { name: EMPTY_DOOR }).click();
  letCome();
  await page.getByRole('dialog', { name: 'Add a cabinet' }).waitFor();
  app?.assertQuiet();
});

test('an app that cannot be fetched is told of', async () => {
  app = await openApp({ prepare: (context) => context.route('**/assets/app-*.js', (route) => route.abort()) });
  await app.page.getByText('Mouldkeep could not be loaded. Nothing was lost.').waitFor();
});

test('whoever has a studio never sees the doors, with or without a service worker', async () => {
  const page = await openDoors();
  await page.getByRole('button', { name: EMPTY_DOOR }).click();
  await page.getByRole('button', { name: /^Add it/ }).click();
  await page.locator('.front').first().waitFor();
  await keptOffline(page);
  await page.addInitScript(() => {
    Object.assign(window, { sawDoors: false, isControlled: navigator.serviceWorker.controller !== null });
    const look = () => {
      if (document.querySelector('#ways:not([hidden])')) Object.assign(window, { sawDoors: true });
    };
    new MutationObserver(look).observe(document, { childList: true, subtree: true, attributes: true });
  });
  const opened = async () => {
    await page.reload();
    await page.locator('.bar').waitFor();
    return page.evaluate(() => {
      const { sawDoors, isControlled } = window as unknown as { sawDoors: boolean; isControlled: boolean };
      return { sawDoors, isControlled };
    });
  };
  expect(await opened()).toMatchObject({ sawDoors: false, isControlled: true });
  await page.evaluate(async () => {
    // The app registers its own when it has nothing else to do, which may be only now.
    navigator.serviceWorker.register = () => Promise.reject(new Error('none'));
    await (await navigator.serviceWorker.getRegistration())?.unregister();
  });
  expect(await opened()).toMatchObject({ sawDoors: false, isControlled: false });
});

test('the list’s door opens the list, the empty cabinet’s an empty room, and neither door comes again', async () => {
  const page = await openDoors();
  await page.getByRole('button', { name: LIST_DOOR }).click();
  await page.waitForURL((url) => url.hash === '#/bring-in');
  await page.getByRole('button', { name: 'Use what I pasted' }).waitFor();
  await page.goto(app?.url ?? '');
  await page.getByRole('heading', { name: 'Your cabinets belong here' }).waitFor();
  await expect.poll(() => page.locator('.door').count()).toBe(0);
  app?.assertQuiet();
});

test('the empty cabinet’s door shows where the first one is drawn', async () => {
  const page = await openDoors();
  await page.getByRole('button', { name: EMPTY_DOOR }).click();
  await page.getByRole('dialog', { name: 'Add a cabinet' }).waitFor();
  await page.getByRole('button', { name: 'Close' }).click();
  await page.getByRole('heading', { name: 'Your cabinets belong here' }).waitFor();
  await page.getByRole('button', { name: 'Add a cabinet' }).waitFor();
});

test('what is done in the demo stays in the demo; leaving it leads to the doors, and the own studio is empty', async () => {
  const page = await openDoors();
  await page.getByRole('link', { name: DEMO_DOOR }).click();
  await page.locator('.front').first().waitFor();
  expect(new URL(page.url()).search).toBe('?demo');
  await page.evaluate((hash) => Object.assign(window.location, { hash }), `#/mould/${workingMould.id}/run`);
  await page.getByRole('button', { name: 'Shots: 5 more' }).click();
  await page.getByRole('button', { name: 'Log 5 shots' }).click();
  await page.waitForURL((url) => url.hash === `#/mould/${workingMould.id}`);

  await page.getByRole('link', { name: 'Leave the demo' }).click();
  await page.locator('.door').first().waitFor();
  await page.getByRole('button', { name: EMPTY_DOOR }).click();
  await page.getByRole('heading', { name: 'Your cabinets belong here' }).waitFor();
  await page.evaluate((hash) => Object.assign(window.location, { hash }), '#/settings');
  await page.locator('dt:text-is("Entries") + dd:text-is("0")').waitFor();
  await page.evaluate((hash) => Object.assign(window.location, { hash }), `#/mould/${workingMould.id}`);
  await page.getByRole('heading', { name: 'This mould is not recorded here' }).waitFor();
  await expect.poll(() => page.locator('dt:text-is("Shots") + dd').count()).toBe(0);

  await page.goto(`${app?.url}?demo#/mould/${workingMould.id}`);
  await page.locator('dt:text-is("Shots") + dd', { hasText: String(workingMould.shots + 5) }).waitFor();
  app?.assertQuiet();
});

test('what is recorded in the own studio is not in the demo', async () => {
  const page = await openDoors();
  await page.getByRole('button', { name: EMPTY_DOOR }).click();
  await page.getByLabel('What you call it').fill('Chest under the stairs');
  await page.getByRole('button', { name: /^Add it/ }).click();
  await page.locator('.front').first().waitFor();
  await page.goto(`${app?.url}?demo`);
  await page.getByText('Demo: Tern Quay Foundry').waitFor();
  await page.locator('.front').first().waitFor();
  await expect.poll(() => page.getByText('Chest under the stairs').count()).toBe(0);
  await page.getByRole('link', { name: 'Leave the demo' }).click();
  await page.getByText('Chest under the stairs').first().waitFor();
  await expect.poll(() => page.locator('.door').count()).toBe(0);
});
