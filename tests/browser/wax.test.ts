import type { Page } from 'playwright-core';
import { afterEach, expect, test } from 'vitest';
import { axeViolations } from '../support/axe.ts';
import { type OpenApp, openApp } from '../support/browser.ts';

let app: OpenApp | undefined;
afterEach(() => app?.close());

async function openWax(options: Parameters<typeof openApp>[0] = {}): Promise<Page> {
  app = await openApp({ demo: true, path: '#/wax', ...options });
  await app.page.locator('.wax-card').first().waitFor();
  return app.page;
}

const card = (page: Page, name: string) => page.locator('.wax-card', { has: page.getByRole('heading', { name, exact: true }) });
const verdict = (page: Page, name: string) => card(page, name).locator('.mark').first().textContent();
const left = async (page: Page, name: string) =>
  Number((await card(page, name).locator('dd').first().textContent())?.replace(/[\u202f\s]/g, '').match(/^−?[\d.]+/)?.[0]);

test('each wax is judged for the room typed in, with its reason; emptied, the month is taken again', async () => {
  const page = await openWax();
  await expect.poll(() => page.locator('.wax-card').count()).toBe(5);
  const room = page.getByLabel('The room is at');
  await room.fill('30');
  await expect.poll(() => verdict(page, 'Grey')).toBe('yes');
  await expect.poll(() => verdict(page, 'Violet')).toBe('no');
  await expect.poll(() => card(page, 'Violet').textContent()).toContain('Too soft above 20 °C');
  await expect.poll(() => verdict(page, 'White sticky')).toBe('no');
  await room.fill('12,5');
  await expect.poll(() => verdict(page, 'Grey')).toBe('no');
  await expect.poll(() => card(page, 'Grey').textContent()).toContain('Brittle below 22 °C');
  await expect.poll(() => verdict(page, 'Violet')).toBe('yes');
  await page.getByRole('button', { name: 'One degree warmer' }).click();
  await expect.poll(() => room.inputValue()).toBe('13.5');
  // What is typed outlives a reload; taking the month's figure clears it.
  await page.reload();
  await page.locator('.wax-card').first().waitFor();
  await expect.poll(() => room.inputValue()).toBe('13.5');
  await page.getByRole('button', { name: /^Take (?!this)/ }).click();
  await expect.poll(() => room.inputValue()).toBe('');
  await room.fill('warm');
  await expect.poll(() => page.getByText('“warm” is not a number.').count()).toBe(1);
  await room.fill('150');
  await expect.poll(() => page.getByText('150 °C is hardly a workshop.').count()).toBe(1);
  app?.assertQuiet();
});

test('wax is received, weighed and discarded, offline, and taken back', async () => {
  const page = await openWax({ offline: true });
  const before = await left(page, 'Amber');
  await page.getByRole('button', { name: 'Receive: Amber' }).click();
  await page.getByRole('button', { name: 'Write it down' }).click();
  await page.getByText('Say how much, as a number.').first().waitFor();
  await page.getByLabel('Came in').fill('-5');
  await page.getByRole('button', { name: 'Write it down' }).click();
  await page.getByText('Wax cannot weigh less than nothing.').first().waitFor();
  await page.getByLabel('Came in').fill('1200');
  await page.getByRole('button', { name: 'Write it down' }).click();
  await page.getByText('Amber: 1\u202f200 g came in.').waitFor();
  await expect.poll(() => left(page, 'Amber')).toBe(before + 1200);
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByText('Taken back.').waitFor();
  await expect.poll(() => left(page, 'Amber')).toBe(before);

  await page.getByRole('button', { name: 'Discard: Amber' }).click();
  await page.getByLabel('Thrown out').fill(String(before + 50));
  await page.getByRole('button', { name: 'Write it down' }).click();
  await page.getByText(/The tub will then stand at nothing/).waitFor();
  await expect.poll(() => left(page, 'Amber')).toBe(before);
  await page.getByLabel('Thrown out').fill('100');
  await page.getByRole('button', { name: 'Write it down', exact: true }).click();
  await page.getByText('Amber: 100 g thrown out.').waitFor();

  await page.getByRole('button', { name: 'Weigh: Amber' }).click();
  await page.getByLabel('The scale says, without the tub').fill('777');
  await page.getByRole('button', { name: 'Write it down' }).click();
  await page.getByText('Amber: 777 g in the tub.').waitFor();
  await expect.poll(() => left(page, 'Amber')).toBe(777);
});

test('an injector is filled, after a warning where the wax does not belong in it', async () => {
  const page = await openWax();
  await page.getByRole('button', { name: 'Fill injector: Amber' }).click();
  expect(await axeViolations(page)).toEqual([]);
  const press = page.locator('.fill-row', { hasText: 'Tall press' });
  await press.getByRole('button', { name: 'Fill it' }).click();
  await page.getByText(/empty and clean it first/).waitFor();
  await page.getByRole('button', { name: 'Fill it all the same' }).click();
  await page.getByText('Tall press holds Amber.').waitFor();
  await expect.poll(() => card(page, 'Amber').textContent()).toContain('Tall press');
  await expect.poll(() => card(page, 'Green').textContent()).toContain('none holds it');
});

test('the months are the studio’s to change, and turn over with the hemisphere', async () => {
  const page = await openWax({ viewport: { width: 320, height: 640 } });
  await page.getByText('The workshop through the year').click();
  await page.getByLabel('July, low').fill('40');
  await page.getByLabel('July, high').fill('30');
  await page.getByRole('button', { name: 'Keep these months' }).click();
  await page.getByText('July: the low is higher than the high.').first().waitFor();
  await page.getByLabel('July, low').fill('22');
  await page.getByRole('button', { name: 'Keep these months' }).click();
  await page.getByText('The workshop’s months are written down.').waitFor();
  await expect.poll(() => page.getByLabel('July, low').inputValue()).toBe('22');
  await page.getByText('south', { exact: true }).click();
  await page.getByText('Seasons of the south.').waitFor();
  await expect.poll(() => page.getByRole('row', { name: /^July/ }).textContent()).toContain('winter');
  await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth)).toBe(true);
});

test.each(['light', 'dark'] as const)('nothing stands in anybody’s way, %s', async (colorScheme) => {
  const page = await openWax({ colorScheme });
  expect(await axeViolations(page)).toEqual([]);
  app?.assertQuiet();
});
