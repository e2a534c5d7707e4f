import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { NOUNS } from '../../src/domain/noun.ts';
import type { Thing } from '../../src/domain/shelf.ts';
import { entries, shelf } from '../demo-data/read-demo.ts';
import { axeWhole } from '../support/axe-whole.ts';
import { type OpenApp, openApp } from '../support/browser.ts';
import { keptSetting } from '../support/kept-setting.ts';

let app: OpenApp;
let page: Page;
beforeAll(async () => {
  app = await openApp({ demo: true, path: '#/settings' });
  page = app.page;
  await page.getByRole('heading', { name: 'Settings', level: 1 }).waitFor();
});
afterAll(() => app?.close());

/** Everything the demo's people wrote themselves, longest first. */
const own = (() => {
  const texts = new Set<string>();
  const take = (value: unknown): void => {
    if (typeof value === 'string' && /\s|ould|olour/.test(value)) texts.add(value);
    else if (Array.isArray(value)) value.forEach(take);
    else if (typeof value === 'object' && value !== null)
      for (const [key, each] of Object.entries(value)) if (!['noun', 'for', 'kind'].includes(key)) take(each);
  };
  for (const entry of entries) take(entry);
  return [...texts].filter((text) => !/^(?:moulds?|colours?)$/.test(text)).sort((a, b) => b.length - a.length);
})();

const first = (noun: (typeof NOUNS)[number]) =>
  [...(shelf.things[noun] as ReadonlyMap<string, Thing>).values()].find((thing) => !thing.retired)?.id ?? '';
const mould = first('mould');
/** Every screen, with what it shows of the demo. */
const SCREENS = [
  '',
  'where',
  'where?q=seal',
  'scan',
  'wax',
  'attention',
  'settings',
  'bring-in',
  'backup',
  'labels',
  'shared',
  'move',
  `move?things=${mould}`,
  `mould/${mould}`,
  `mould/${mould}/run`,
  `mould/${mould}/failed`,
  `mould/${mould}/inspect`,
  `edit/${mould}`,
  `place/${first('place')}`,
  'place/nowhere',
  ...NOUNS.map((noun) => `thing/${first(noun)}`),
  ...NOUNS.map((noun) => `new/${noun}`),
  ...(['wax', 'injector', 'master', 'design', 'flask', 'place'] as const).map((noun) => `edit/${first(noun)}`),
];

/** What a screen says in words of ours: its text, names and titles, without what the demo's people wrote. */
async function said(screen: string): Promise<string> {
  await page.evaluate(async (next) => {
    if (window.location.hash === next) return;
    const drawn = new Promise((resolve) =>
      window.addEventListener('hashchange', () => requestAnimationFrame(() => requestAnimationFrame(resolve)), { once: true }),
    );
    window.location.hash = next;
    await drawn;
  }, `#/${screen}`);
  await expect.poll(() => page.locator('.wait').count()).toBe(0);
  await page.getByRole('heading', { level: 1 }).first().waitFor();
  const texts = await page.evaluate(() => {
    const marks = ['aria-label', 'placeholder', 'title', 'alt'].flatMap((name) =>
      [...document.querySelectorAll(`[${name}]`)].map((each) => each.getAttribute(name)),
    );
    const said: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walker.nextNode())
      if (!walker.currentNode.parentElement?.closest('[translate=no], script')) said.push(walker.currentNode.textContent ?? '');
    return [...said, ...marks, document.title].join('\n');
  });
  return own.reduce((text, each) => text.split(each).join('·'), texts);
}

test('each choice of this device holds at once and after a reload', async () => {
  const size = () => page.evaluate(() => Number.parseFloat(getComputedStyle(document.documentElement).fontSize));
  await expect.poll(() => size()).toBe(16);
  await page.getByRole('radio', { name: 'Larger', exact: true }).check();
  await expect.poll(() => size()).toBeCloseTo(21.6);
  await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth)).toBe(true);
  await page.getByLabel('This device’s name').fill('Bench phone');
  await expect.poll(() => keptSetting(page, 'device-name')).toBe('Bench phone');
  await page.reload();
  await page.getByRole('heading', { name: 'Settings', level: 1 }).waitFor();
  await expect.poll(size).toBeCloseTo(21.6);
  await expect.poll(() => page.getByLabel('This device’s name').inputValue()).toBe('Bench phone');
  await page.getByRole('radio', { name: 'Normal', exact: true }).check();
  await expect.poll(() => size()).toBe(16);
});

test('labels say the code or a link, and only an address a phone can open is taken', async () => {
  const card = page.locator('.card', { has: page.getByRole('heading', { name: 'Labels', exact: true }) });
  await card.getByText('A link to the address').click();
  await card.getByLabel('Address of this app').fill('http://example.org/shelves');
  await card.getByRole('button', { name: 'Save' }).click();
  await card.locator('.field-problem', { hasText: 'The address has to begin with https' }).waitFor();
  await card.getByLabel('Address of this app').fill('example.org/shelves');
  await card.getByText(/https:\/\/example\.org\/shelves\/#\/c\/M[0-9A-Z]{7}/).waitFor();
  await card.getByRole('button', { name: 'Save' }).click();
  await page.getByText('Written down. Labels printed before stay good.').waitFor();
  await card.getByText('The bare code').click();
  await card.getByRole('button', { name: 'Save' }).click();
  await card.getByText(/A label then says M[0-9A-Z]{7}$/).waitFor();
});

test('tells what is stored, by kind', async () => {
  const card = page.locator('.card', { has: page.getByRole('heading', { name: 'What is stored' }) });
  await expect.poll(() => card.textContent()).toMatch(/\d+ places, \d+ periods, \d+ designs, \d+ masters, \d+ moulds/);
  await card.getByRole('button', { name: 'Count how much room it takes' }).click();
  await card
    .getByText(/^[\d\u202f]+, [\d.]+ MB$/)
    .first()
    .waitFor();
  await expect.poll(() => card.locator('dd').last().textContent()).toMatch(/^\d+, [\d.]+ (kB|MB)/);
  expect(await axeWhole(page)).toEqual([]);
  await page.emulateMedia({ colorScheme: 'dark' });
  expect(await axeWhole(page)).toEqual([]);
  await page.emulateMedia({ colorScheme: 'light' });
});

test('every figure on every screen is in the units chosen', async () => {
  for (const unit of ['oz t (troy ounce)', 'in', '°F', 'psi']) await page.getByRole('radio', { name: unit, exact: true }).check();
  const wrong: string[] = [];
  let right = 0;
  for (const screen of SCREENS) {
    if (screen === 'settings' || screen === 'labels') continue;
    const text = await said(screen);
    right += text.match(/\d\s+(?:oz t|in|°F|psi)(?!\w)/g)?.length ?? 0;
    for (const [found] of text.matchAll(/.{0,40}\d\s{0,3}(?:g|mm|°C|kPa)(?![\w/]).{0,10}|.*\((?:g|mm|°C|kPa)\).*/g))
      wrong.push(`${screen}: ${found}`);
  }
  expect(wrong).toEqual([]);
  expect(right).toBeGreaterThan(20);
});

test('with “mold” chosen no screen says mould or colour, but for what somebody wrote', async () => {
  await page.evaluate(() => {
    window.location.hash = '#/settings';
  });
  await page.getByRole('heading', { name: 'Settings', level: 1 }).waitFor();
  await page.getByText('As in America').click();
  const wrong: string[] = [];
  let right = 0;
  for (const screen of SCREENS) {
    const text = await said(screen);
    right += text.match(/mold|color/gi)?.length ?? 0;
    for (const [found] of text.matchAll(/.{0,40}(?:mould(?!keep)|colour).{0,20}/gi)) wrong.push(`${screen}: ${found}`);
  }
  expect(wrong).toEqual([]);
  expect(right).toBeGreaterThan(20);
  // And no list taken away says them.
  await page.evaluate(() => {
    window.location.hash = '#/wax';
  });
  await page
    .getByRole('button', { name: /^Take this list/ })
    .first()
    .click();
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'As a table (CSV)' }).click();
  const list = readFileSync(await (await download).path(), 'utf8');
  expect(list).toMatch(/^\ufeff?Wax,Color,/);
  expect(list).not.toMatch(/mould(?!keep)|colour/i);
});

test('start again empties the shelves only when it is meant, and keeps aside what was there', async () => {
  await page.evaluate(() => {
    window.location.hash = '#/settings';
  });
  await page.getByRole('button', { name: 'Start again…' }).click();
  const empty = page.getByRole('button', { name: 'Empty the shelves' });
  await expect.poll(() => empty.isDisabled()).toBe(true);
  await page.getByLabel('Type “start again”').fill('Start again');
  await empty.click();
  await page.getByText('The shelves are empty. What was there is kept aside').waitFor();
  await page.evaluate(() => {
    window.location.hash = '#/backup';
  });
  await page
    .getByRole('button', { name: /bring .*back/i })
    .first()
    .waitFor();
  app.assertQuiet();
});
