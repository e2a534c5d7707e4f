import type { Page } from 'playwright-core';
import { afterEach, expect, test } from 'vitest';
import { axeViolations } from '../support/axe.ts';
import { type OpenApp, openApp } from '../support/browser.ts';

let app: OpenApp | undefined;
afterEach(() => app?.close());

async function openAttention(options: Parameters<typeof openApp>[0] = {}): Promise<Page> {
  app = await openApp({ demo: true, path: '#/attention', ...options });
  await app.page.locator('.attention-group').first().waitFor();
  return app.page;
}

const inBar = async (page: Page) => Number.parseInt((await page.locator('.bar-count').textContent()) ?? '', 10);
const group = (page: Page, kind: string) => page.locator(`.attention-group[data-kind="${kind}"]`);

test('one list by what to do, most pressing first, each with why and where', async () => {
  const page = await openAttention();
  const summed = async (word: string) => {
    const sums = await page.locator('.attention-sum span').allTextContents();
    return Number.parseInt(sums.find((each) => each.endsWith(word)) ?? '', 10);
  };
  // What is good to know is on the list and not in the bar's number, which the screen says.
  await page.locator('.bar-count').waitFor();
  await expect.poll(async () => (await summed('now')) + (await summed('before long')) - (await inBar(page))).toBe(0);
  await expect.poll(() => summed('good to know')).toBeGreaterThan(0);
  await page.getByText('what is good to know is not in it').waitFor();
  for (const kind of ['failed', 'worn', 'faults', 'old shots', 'rejects', 'look due', 'wax low', 'over-full', 'stray', 'out late']) {
    await expect.poll(() => group(page, kind).locator('.attention-item').count()).toBeGreaterThan(0);
  }
  const levels = await page
    .locator('.attention-group[data-kind]')
    .evaluateAll((groups) =>
      groups.map((each) => ['act', 'soon', 'note'].indexOf(each.querySelector('.attention-item')?.getAttribute('data-level') ?? '')),
    );
  expect(levels).toEqual([...levels].sort((a, b) => a - b));
  await expect
    .poll(() => group(page, 'over-full').locator('.attention-item p').first().textContent())
    .toMatch(/\d+ pieces where \d+ fit: \d+ too many\./);

  const first = group(page, 'failed').locator('.attention-item').first();
  const title = await first.locator('.attention-title').textContent();
  const place = await first.locator('.attention-place').getAttribute('href');
  expect(place).toMatch(/^#\/place\//);
  await first.locator('.attention-title').click();
  await page.waitForURL(/#\/mould\//);
  await page.getByText(String(title)).first().waitFor();
  app?.assertQuiet();
});

test('set aside until a day: off the list and the count, offline, undone, done again, brought back', async () => {
  const page = await openAttention({ offline: true });
  // The bar is counted a moment after the screen is there.
  await page.locator('.bar-count').waitFor();
  const before = await inBar(page);
  const item = group(page, 'out late').locator('.attention-item').first();
  const title = String(await item.locator('.attention-title').textContent());
  const items = await group(page, 'out late').locator('.attention-item').count();
  const aside = async () => {
    await page
      .getByRole('button', { name: `Set aside: ${title}` })
      .first()
      .click();
    await page.getByRole('button', { name: 'For a month' }).click();
    await page.getByText(`${title}: set aside until`).waitFor();
  };
  await aside();
  await expect.poll(() => inBar(page)).toBe(before - 1);
  await expect.poll(() => group(page, 'out late').locator('.attention-item').count()).toBe(items - 1);
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByText('Taken back.').waitFor();
  await expect.poll(() => inBar(page)).toBe(before);

  await aside();
  await page.reload();
  await page.locator('.attention-group').first().waitFor();
  await page.locator('.bar-count').waitFor();
  await expect.poll(() => inBar(page)).toBe(before - 1);
  await page.getByText(/^Set aside: \d+$/).click();
  await page.getByRole('button', { name: `Bring back: ${title}` }).click();
  await page.getByText(`${title} is back on the list.`).waitFor();
  await expect.poll(() => inBar(page)).toBe(before);
});

test('a day that has gone by is refused', async () => {
  const page = await openAttention();
  await page
    .getByRole('button', { name: /^Set aside: / })
    .first()
    .click();
  await page.getByLabel('Or until').waitFor();
  expect(await axeViolations(page)).toEqual([]);
  await page.getByLabel('Or until').fill('2020-02-29');
  await page.getByRole('button', { name: 'Set aside', exact: true }).click();
  await page.getByText('Choose a day to come.').first().waitFor();
});

test('an empty studio is told what would stand here', async () => {
  app = await openApp({ path: '' });
  await app.page.getByRole('button', { name: /Start with an empty cabinet/ }).click();
  await app.page.getByRole('dialog', { name: 'Add a cabinet' }).waitFor();
  await app.page.goto(`${app.url}#/attention`);
  await app.page.getByText('Nothing needs attention').waitFor();
  await expect.poll(() => app?.page.locator('.bar-count').count()).toBe(0);
});

test.each([
  ['light', 320],
  ['dark', 1280],
] as const)('nothing stands in anybody’s way, %s at %i px', async (colorScheme, width) => {
  const page = await openAttention({ colorScheme, viewport: { width, height: 800 } });
  expect(await axeViolations(page)).toEqual([]);
  await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth)).toBe(true);
});
