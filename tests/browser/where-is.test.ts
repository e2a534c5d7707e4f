import { afterEach, expect, test } from 'vitest';
import { axeViolations } from '../support/axe.ts';
import { type OpenApp, openApp } from '../support/browser.ts';
import { settled } from '../support/every-screen.ts';

let app: OpenApp | undefined;
afterEach(() => app?.close());

async function openSearch(options: { width?: number } = {}): Promise<OpenApp> {
  app = await openApp({ demo: true, ...(options.width ? { viewport: { width: options.width, height: 800 } } : {}) });
  await app.page.waitForSelector('.front');
  await app.page.getByRole('link', { name: 'Where is' }).click();
  // What is typed before is heard by nobody.
  await expect.poll(() => app?.page.evaluate(() => document.activeElement?.id)).toBe('where-query');
  return app;
}

test('from the first screen, two taps or four letters show the drawer of a period', async () => {
  const { page } = await openSearch();
  await page.getByRole('button', { name: /^Minoan/ }).click();
  const drawers = page.locator('.period-place');
  // The rest of the drawers follows once the letters stand still.
  await page.waitForURL((url) => url.hash === '#/where?q=Minoan');
  await expect.poll(() => drawers.count()).toBeGreaterThan(2);
  await settled(page);
  const tapped = await drawers.allTextContents();
  // Said as words, and not run together.
  await page.getByRole('heading', { name: 'Minoan 2700–1100 BC' }).waitFor();
  await page.getByRole('link', { name: /^B1 Card index \d+ pieces$/ }).waitFor();
  await page.getByRole('button', { name: 'Clear' }).click();
  await page.keyboard.type('mino');
  await expect.poll(() => drawers.allTextContents()).toEqual(tapped);
  // Written once the typing pauses.
  await page.waitForURL((url) => url.hash === '#/where?q=mino');
});

test('a tap on a result shows its drawer on the cabinet front, standing out, and Back comes to the results again', async () => {
  const { page, assertQuiet } = await openSearch();
  await page.keyboard.type('duck toggle');
  await page.waitForURL((url) => url.hash === '#/where?q=duck%20toggle');
  const row = page.locator('.found').first();
  const place = (await row.locator('.found-place').textContent()) ?? '';
  await row.locator('.row-link').click();
  const picked = page.locator('.front-picked');
  await picked.waitFor();
  expect(place.endsWith((await picked.locator('.front-label').textContent()) ?? '?')).toBe(true);
  await expect
    .poll(async () => {
      const box = await picked.boundingBox();
      return box !== null && box.y >= 0 && box.y + 20 < 844;
    })
    .toBe(true);
  await page.getByRole('button', { name: 'Open', exact: true }).click();
  await page.getByRole('dialog').getByText('this one').waitFor();
  await page.goBack();
  await page.goBack();
  await page.waitForSelector('#where-query');
  await expect.poll(() => page.locator('#where-query').inputValue()).toBe('duck toggle');
  assertQuiet();
});

test.each([
  ['150 BC', /Hellenistic/],
  ['-599', /Etruscan/],
  ['1250', /No period of yours holds 1250/],
  ['togle', /No “togle”; showing “toggle”/],
  ['la tene', /La Tène/],
  ['xyzzyq', /Nothing has “xyzzyq”/],
  ['<img src=x onerror=alert(1)>', /Nothing/],
])('“%s” is answered with %s', async (query, answer) => {
  const { page, assertQuiet } = await openSearch();
  await page.locator('#where-query').fill(query);
  await page.getByRole('main').getByText(answer).first().waitFor();
  assertQuiet();
});

test('the box has the keyboard at once, also at 320 px, and nothing hinders those who read it otherwise', async () => {
  const { page } = await openSearch({ width: 320 });
  await page.keyboard.type('seal');
  await page.locator('.found').first().waitFor();
  await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  expect(await axeViolations(page)).toEqual([]);
});

test('a place and a design can be opened from the results', async () => {
  const { page } = await openSearch();
  await page.locator('#where-query').fill('tall cabinet');
  await page.getByRole('link', { name: 'Open Tall cabinet', exact: true }).click();
  await page.getByRole('heading', { name: 'Tall cabinet', level: 1 }).waitFor();
  await page.getByRole('link', { name: 'Move things here' }).waitFor();
  expect(await axeViolations(page)).toEqual([]);
  await page.goto(`${app?.url}?demo#/where?q=duck%20toggle%20design`);
  await page.locator('.found .row-link').first().click();
  await page.getByRole('heading', { name: 'Moulds' }).waitFor();
  expect(await axeViolations(page)).toEqual([]);
});

test('a century is answered with the periods that overlap it', async () => {
  const { page } = await openSearch();
  await page.locator('#where-query').fill('4th century BC');
  await page.getByText(/^\d periods overlap the 4th century BC:$/).waitFor();
  await expect.poll(() => page.locator('.period').count()).toBeGreaterThan(1);
  await page.locator('#where-query').fill('the 1950s');
  await page.getByText(/the 1950s[.:]$/).waitFor();
});
