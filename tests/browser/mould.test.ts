import { afterEach, expect, test } from 'vitest';
import { dayInWords } from '../../src/domain/day-words.ts';
import { pathText } from '../../src/domain/nesting.ts';
import { titleOf } from '../../src/domain/title.ts';
import { axeWhole } from '../support/axe-whole.ts';
import { type OpenApp, openApp } from '../support/browser.ts';
import { demoShelf, failedMould, titleOfMould, workingMould } from '../support/demo-moulds.ts';

let app: OpenApp | undefined;
afterEach(() => app?.close());

const path = pathText(demoShelf, workingMould.at);

test('a mould’s page says where it stands, how sound it is, what it has shot and with which wax, and reads its history', async () => {
  app = await openApp({ demo: true, path: `#/mould/${workingMould.id}` });
  const { page } = app;
  await page.getByRole('heading', { level: 1, name: titleOfMould(workingMould) }).waitFor();
  const main = page.getByRole('main');
  await main.getByText('sound', { exact: true }).first().waitFor();
  await expect.poll(() => main.locator('dt:text-is("Shots") + dd').textContent()).toBe(String(workingMould.shots));
  await expect
    .poll(() => main.textContent())
    .toContain(titleOf(demoShelf, demoShelf.things.wax.get(workingMould.wax ?? workingMould.runs?.at(-1)?.wax ?? ('' as never))));
  await expect
    .poll(() => main.textContent())
    .toContain(titleOf(demoShelf, demoShelf.things.master.get(workingMould.master ?? ('' as never))));
  const last = workingMould.runs?.at(-1);
  await page
    .locator('.history-line', { hasText: `${last?.good} good` })
    .filter({ hasText: dayInWords(last?.on ?? ('' as never)) })
    .first()
    .waitFor();
  expect(await axeWhole(page)).toEqual([]);
  await main.getByRole('link', { name: path }).first().click();
  await page.waitForURL((url) => url.hash.includes(`drawer=${workingMould.at}`) && url.hash.includes(`thing=${workingMould.id}`));
  app.assertQuiet();
});

test('the biggest button is the likely next action: a run for a sound mould, what to use instead for a failed one', async () => {
  app = await openApp({ demo: true, path: `#/mould/${workingMould.id}` });
  const { page } = app;
  await page.locator('.screen-actions .button-main', { hasText: 'Log a run' }).waitFor();
  await page.evaluate((hash) => Object.assign(window.location, { hash }), `#/mould/${failedMould.id}`);
  await page.locator('.screen-actions .button-main', { hasText: 'See what to use instead' }).click();
  await page.getByRole('heading', { name: 'What to use instead' }).waitFor();
});

test('retiring is one tap on the reason, and Undo brings it back; a line of the history can be taken back', async () => {
  app = await openApp({ demo: true, path: `#/mould/${workingMould.id}` });
  const { page } = app;
  await page.getByRole('button', { name: 'More about this mould' }).click();
  await page.getByRole('button', { name: 'Retire' }).click();
  await page.getByRole('button', { name: 'not wanted' }).click();
  await page.locator('[role=main] .mark', { hasText: 'not wanted' }).waitFor();
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.locator('[role=main] .mark', { hasText: 'not wanted' }).waitFor({ state: 'detached' });
  const shots = page.locator('dt:text-is("Shots") + dd');
  const run = page.locator('.history-line', { hasText: /\d+ shots? in/ }).first();
  const taken = Number(/(\d+) shots?/.exec((await run.textContent()) ?? '')?.[1]);
  await run.getByRole('button', { name: /^Take back/ }).click();
  const sure = page.getByRole('dialog');
  await sure.getByRole('button', { name: 'Take it back', exact: true }).click();
  const anyway = sure.getByRole('button', { name: 'Take it back all the same' });
  await expect.poll(async () => (await sure.count()) === 0 || (await anyway.isVisible())).toBe(true);
  if (await anyway.isVisible()) await anyway.click();
  await expect.poll(() => shots.textContent()).toBe(String(workingMould.shots - taken));

  // Long after its message: in Settings.
  await page.evaluate(() => Object.assign(window.location, { hash: '#/settings' }));
  await page.getByRole('button', { name: 'Show what was taken back lately' }).click();
  const again = page.getByRole('button', { name: /^Do it again: Mould “.+”: \d+ shots/ }).first();
  await again.waitFor();
  expect(await axeWhole(page)).toEqual([]);
  await again.click();
  await page.locator('.toast', { hasText: 'Done again.' }).waitFor();
  await page.evaluate((hash) => Object.assign(window.location, { hash }), `#/mould/${workingMould.id}`);
  await expect.poll(() => shots.textContent()).toBe(String(workingMould.shots));
  app.assertQuiet();
});
