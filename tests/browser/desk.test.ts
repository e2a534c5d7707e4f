import type { Page } from 'playwright-core';
import { afterEach, expect, test } from 'vitest';
import { pathText } from '../../src/domain/nesting.ts';
import type { Place } from '../../src/domain/shelf.ts';
import { axeViolations } from '../support/axe.ts';
import { axeWhole } from '../support/axe-whole.ts';
import { type OpenApp, openApp } from '../support/browser.ts';
import { demoShelf, otherMould, titleOfMould, workingMould } from '../support/demo-moulds.ts';
import { settled } from '../support/every-screen.ts';

let app: OpenApp | undefined;
afterEach(() => app?.close());

const DESK = { width: 1280, height: 800 };
const drawer = demoShelf.things.place.get(workingMould.at as Place['id']) as Place;
const cabinet = drawer.in as string;
const roomy = [...demoShelf.things.place.values()].find(
  (place) =>
    place.kind === 'drawer' && place.id !== drawer.id && (place.capacity ?? 0) > (demoShelf.contents.get(place.id)?.size ?? 0) + 40,
) as Place;
const OPENED = `#/shelves/${cabinet}?drawer=${drawer.id}&open=yes`;

async function opened(page: Page, address: string): Promise<void> {
  await page.waitForURL((url) => url.hash === address);
}

/** The keyboard is heard once the screen is on the glass. */
async function heardKeys(page: Page): Promise<void> {
  const keys = page.getByRole('dialog', { name: 'Keys' });
  await expect
    .poll(async () => {
      // Pressed again only where nothing came of it: what comes of a second press would open the keys once more, after they were closed.
      if (!(await keys.isVisible())) await page.keyboard.press('?');
      return keys.waitFor({ timeout: 4000 }).then(
        () => true,
        () => false,
      );
    })
    .toBe(true);
}

/** Keys as a scanner sends them, so many ms apart by the browser's own clock, however busy the machine is; they begin `pauseMs` from now, behind what a slow hand wrote. */
async function scan(page: Page, text: string, gapMs = 8, pauseMs = 0): Promise<void> {
  const session = await page.context().newCDPSession(page);
  const start = (Date.now() + pauseMs) / 1000;
  const keys = [...text].map((character) => ({
    key: character,
    code: /\d/.test(character) ? `Digit${character}` : /[A-Z]/i.test(character) ? `Key${character.toUpperCase()}` : '',
    text: character,
    windowsVirtualKeyCode: character.toUpperCase().charCodeAt(0),
  }));
  const enter = { key: 'Enter', code: 'Enter', text: '\r', windowsVirtualKeyCode: 13 };
  const sent = [...keys, enter].flatMap(({ text: written, ...key }, index) => {
    const timestamp = start + (index * gapMs) / 1000;
    return [
      session.send('Input.dispatchKeyEvent', { type: 'keyDown', timestamp, text: written, unmodifiedText: written, ...key }),
      session.send('Input.dispatchKeyEvent', { type: 'keyUp', timestamp: timestamp + 0.001, ...key }),
    ];
  });
  await Promise.all(sent);
  await session.detach();
}

test('two panes: the list stays beside what is opened from it, Back and a reload keep both, and keys do all of it', async () => {
  app = await openApp({ demo: true, path: OPENED, viewport: DESK });
  const { page } = app;
  const contents = page.getByRole('complementary', { name: 'Contents' });
  const list = page.getByRole('region', { name: 'List' });
  await contents.locator('.row-link').first().waitFor();
  await heardKeys(page);
  await expect
    .poll(() => page.locator('.keys kbd').allTextContents())
    .toEqual(expect.arrayContaining(['1', '5', '/', '↓', 'Enter', 'Space', 'n', 'e', 'm', 'l', 'u', 'Esc', '?']));
  expect(await axeViolations(page)).toEqual([]);
  await page.keyboard.press('Escape');
  await page.getByRole('dialog').waitFor({ state: 'detached' });

  const line = contents.locator(`.row-link[href="#/mould/${workingMould.id}"]`);
  await line.focus();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowUp');
  await expect.poll(() => line.evaluate((element) => element === document.activeElement)).toBe(true);
  await page.keyboard.press('Enter');
  await opened(page, `#/mould/${workingMould.id}`);
  const main = page.getByRole('main');
  await main.getByText('Shots and rejects').waitFor();
  await expect.poll(() => page.title()).toBe(`${titleOfMould(workingMould)} – Mouldkeep`);
  const [left, right] = [await list.boundingBox(), await main.boundingBox()];
  expect((left?.x ?? 0) + (left?.width ?? 0)).toBeLessThanOrEqual(right?.x ?? 0);
  // It ends where the window does, whatever stands above the screens: what is done with several things sticks to its end.
  expect((left?.y ?? 0) + (left?.height ?? 0)).toBeLessThanOrEqual(DESK.height);
  // The list was only moved aside: it still has the focus, and its line says what is shown.
  const shown = list.locator('.row-link[aria-current]');
  await expect.poll(() => shown.evaluate((element) => element === document.activeElement)).toBe(true);
  await expect.poll(() => shown.getAttribute('href')).toBe(`#/mould/${workingMould.id}`);
  expect(await axeWhole(page)).toEqual([]);
  await page.emulateMedia({ colorScheme: 'dark' });
  expect(await axeWhole(page)).toEqual([]);
  await page.emulateMedia({ colorScheme: 'light' });

  await page.keyboard.press('ArrowRight');
  await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).toBe('H1');
  await page.keyboard.press('ArrowLeft');
  await expect.poll(() => shown.evaluate((element) => element === document.activeElement)).toBe(true);

  await page.keyboard.press('e');
  await opened(page, `#/edit/${workingMould.id}`);
  // In a field the keys are letters.
  await page.getByLabel('Size', { exact: true }).focus();
  await page.keyboard.type('5emu');
  await expect.poll(() => page.getByLabel('Size', { exact: true }).inputValue()).toContain('5emu');
  await page.keyboard.press('Escape');
  await page.keyboard.press('Escape');
  await opened(page, OPENED);
  await expect.poll(() => list.count()).toBe(0);
  await page.goBack();
  await page.goBack();
  await opened(page, `#/mould/${workingMould.id}`);
  await list.locator('.row-link[aria-current]').waitFor();
  await page.reload();
  await list.locator('.row-link[aria-current]').waitFor();
  await page.goBack();
  await opened(page, OPENED);
  await contents.locator('.row-link').first().waitFor();

  // After the reload the keys are heard a moment later than the list is seen; pressed again only where nothing came of it.
  await expect
    .poll(
      async () => {
        const at = await page.evaluate(() => document.activeElement?.id);
        if (at !== 'where-query') await page.keyboard.press('/');
        return at;
      },
      { timeout: 30_000, interval: 3000 },
    )
    .toBe('where-query');
  await page.keyboard.type('duck');
  // What is found for fewer letters gives way to this, and with it the line in focus.
  await opened(page, '#/where?q=duck');
  await settled(page);
  await page.locator('.found').first().waitFor();
  await page.keyboard.press('ArrowDown');
  await expect.poll(() => page.evaluate(() => document.activeElement?.classList.contains('row-link'))).toBe(true);
  await page.keyboard.press('Enter');
  await list.locator('#where-query').waitFor();
  await expect.poll(() => page.getByRole('heading', { level: 1 }).count()).toBe(1);
  await page.goBack();
  await expect.poll(() => page.locator('#where-query').inputValue()).toBe('duck');
  await page.keyboard.press('Escape');
  await page.keyboard.press('5');
  await opened(page, '#/attention');
  await page.keyboard.press('2');
  await opened(page, '#/where');
  app.assertQuiet();
});

test.each(['light', 'dark'] as const)(
  'several are chosen with Shift and the keys, moved in one go and taken back with u, %s',
  async (colorScheme) => {
    app = await openApp({ demo: true, path: OPENED, viewport: DESK, colorScheme });
    const { page } = app;
    const contents = page.getByRole('complementary', { name: 'Contents' });
    await contents.locator('.row-link').first().waitFor();
    const titles = await contents.locator('.row-title').allTextContents();
    await heardKeys(page);
    await page.keyboard.press('Escape');
    await contents
      .locator('.row-link')
      .nth(1)
      .click({ modifiers: ['Shift'] });
    const picks = contents.locator('.pick-row');
    await picks.first().waitFor();
    await expect.poll(() => picks.nth(1).locator('input').isChecked()).toBe(true);
    await picks.nth(3).click({ modifiers: ['Shift'] });
    await contents.getByText('3 chosen').waitFor();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Space');
    await contents.getByText('4 chosen').waitFor();
    await page.keyboard.press('Space');
    await contents.getByText('3 chosen').waitFor();
    expect(await axeWhole(page)).toEqual([]);
    await page.keyboard.press('m');
    const main = page.getByRole('main');
    await main
      .getByRole('heading', { name: 'Move or put away' })
      .or(page.getByRole('heading', { level: 1, name: 'Move or put away' }))
      .waitFor();
    await expect.poll(() => main.locator('.picker-chosen .row-title').allTextContents()).toEqual(titles.slice(1, 4));
    await scan(page, roomy.code ?? '');
    await page.getByRole('button', { name: 'Move 3 things' }).click();
    await page.getByText(`3 things moved to ${pathText(demoShelf, roomy.id)}.`).waitFor();
    await contents.locator('.pick-row, .row-link').first().waitFor();
    await expect.poll(() => contents.locator('.row-title').count()).toBe(titles.length - 3);
    await page.keyboard.press('u');
    await expect.poll(() => contents.locator('.row-title').count()).toBe(titles.length);
    await page.locator('.toast').getByRole('button', { name: 'Close' }).click();
    await page.keyboard.press('u');
    await page.getByText('Nothing was done a moment ago.').waitFor();
    app.assertQuiet();
  },
);

test('on a phone several are chosen by tapping whole lines, retired for one reason, or left as they are', async () => {
  app = await openApp({ demo: true, path: OPENED });
  const { page } = app;
  const sheet = page.getByRole('dialog').first();
  await sheet.getByRole('button', { name: 'Choose several' }).click();
  await sheet.locator('.pick-row').nth(0).click();
  await sheet.locator('.pick-row').nth(2).click();
  await sheet.getByText('2 chosen').waitFor();
  for (const box of await sheet
    .locator('.pick-row')
    .evaluateAll((rows) => rows.slice(0, 3).map((row) => row.getBoundingClientRect().toJSON())))
    expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(48);
  expect(await axeViolations(page)).toEqual([]);
  await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  // They are at home: nothing about their usual place is asked.
  await expect.poll(() => sheet.getByRole('button', { name: 'This is their usual place' }).count()).toBe(0);
  await sheet.getByRole('button', { name: 'Retire…' }).click();
  await page.getByRole('dialog', { name: 'Retire 2 things: why?' }).getByRole('button', { name: 'not wanted' }).click();
  await page.getByText('2 things retired: not wanted.').waitFor();
  await sheet.getByRole('button', { name: 'Choose several' }).waitFor();
  app.assertQuiet();
});

test('a scanner that types is understood on any screen, and what it typed into a field is taken out again', async () => {
  app = await openApp({ demo: true, path: '#/wax', viewport: DESK });
  const { page } = app;
  await page.getByRole('heading', { level: 1 }).waitFor();
  await heardKeys(page);
  await page.keyboard.press('Escape');
  const mould = `#/mould/${workingMould.id}`;

  // With nothing in focus, in small letters as with the capitals locked.
  await scan(page, (workingMould.code ?? '').toLowerCase());
  await opened(page, mould);

  // In the search, which keeps what was typed by hand.
  await page.keyboard.press('2');
  await page.locator('#where-query').fill('duck');
  await scan(page, drawer.code ?? '');
  await opened(page, `#/place/${drawer.id}`);
  await page.goBack();
  await opened(page, '#/where?q=duck');
  await expect.poll(() => page.locator('#where-query').inputValue()).toBe('duck');

  // In a form: a picker takes what it can choose, its other fields stay as they were, and the draft outlives the label.
  await page.evaluate((hash) => Object.assign(window.location, { hash }), '#/new/mould');
  await page.getByLabel('Name', { exact: true }).fill('Half written');
  await page.getByLabel('Where it stands').focus();
  await scan(page, drawer.code ?? '');
  await page.locator('.picker-chosen', { hasText: pathText(demoShelf, drawer.id) }).waitFor();
  await page.getByLabel('Name', { exact: true }).focus();
  await scan(page, otherMould.code ?? '');
  await opened(page, `#/mould/${otherMould.id}`);
  await page.goBack();
  await opened(page, '#/new/mould');
  await expect.poll(() => page.getByLabel('Name', { exact: true }).inputValue()).toBe('Half written');

  // At a hand's pace the same keys are letters; in the field for codes a code stays.
  await page.getByLabel('Name', { exact: true }).focus();
  await scan(page, otherMould.code ?? '', 90);
  await expect.poll(() => page.getByLabel('Name', { exact: true }).inputValue()).toBe(`Half written${otherMould.code}`);
  await page.getByText('More about it').click();
  await page.getByLabel('Label code').focus();
  await scan(page, otherMould.code ?? '', 8, 2000);
  await expect.poll(() => page.getByLabel('Label code').inputValue()).toBe(otherMould.code);

  // On the move screen it joins the list, and a place is where the list goes.
  await page.evaluate((hash) => Object.assign(window.location, { hash }), '#/move');
  await page.getByText('Nothing is on the list yet.').waitFor();
  await scan(page, workingMould.code ?? '', 8, 4000);
  await page.getByText('is on the list. Scan the next one').waitFor();
  await scan(page, otherMould.code ?? '', 8, 6000);
  await page.getByRole('button', { name: 'Move 2 things' }).waitFor();
  await scan(page, roomy.code ?? '', 8, 8000);
  await page.locator('.picker-chosen', { hasText: pathText(demoShelf, roomy.id) }).waitFor();

  // The keys can be switched off; the scanner is understood all the same, and what nothing carries is asked about.
  await page.evaluate((hash) => Object.assign(window.location, { hash }), '#/settings');
  await page.getByRole('group', { name: 'Single keys' }).getByLabel('Off').check();
  await page.getByRole('heading', { level: 1 }).click();
  await page.keyboard.press('5');
  await scan(page, workingMould.code ?? '', 8, 20_000);
  await opened(page, mould);
  app.assertQuiet();
});
