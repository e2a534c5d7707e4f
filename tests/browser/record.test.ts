import { afterEach, expect, test } from 'vitest';
import { pathText } from '../../src/domain/nesting.ts';
import { axeWhole } from '../support/axe-whole.ts';
import { type OpenApp, openApp } from '../support/browser.ts';
import { demoShelf, otherMould, workingMould } from '../support/demo-moulds.ts';

let app: OpenApp | undefined;
afterEach(() => app?.close());

const home = pathText(demoShelf, workingMould.at);

test('a new mould needs a name and a place; markup in it stays text; what was typed outlives a reload', async () => {
  app = await openApp({ demo: true, path: '#/new/mould' });
  const { page } = app;
  await page.getByRole('button', { name: 'Record the mould' }).click();
  await page.locator('.field-problem', { hasText: 'Give the mould a name.' }).waitFor();
  await page.getByLabel('Name', { exact: true }).fill('<img src=x onerror="document.title=1"> “Gull”');
  await page.reload();
  await expect.poll(() => page.getByLabel('Name', { exact: true }).inputValue()).toContain('Gull');
  await page.getByLabel('Where it stands').fill(home.replace(' › ', ' '));
  await page.locator('.picker-choice', { has: page.getByText(home, { exact: true }) }).click();
  await page.getByText('More about it').click();
  await page.getByLabel('Cavities').fill('0');
  await page.getByRole('button', { name: 'Record the mould' }).click();
  await page.locator('.field-problem', { hasText: '0 is outside 1 to 500.' }).waitFor();
  await page.getByLabel('Cavities').fill('2');
  expect(await axeWhole(page)).toEqual([]);
  await page.getByRole('button', { name: 'Record the mould' }).click();
  await page.getByRole('heading', { level: 1, name: '<img src=x onerror="document.title=1"> “Gull”' }).waitFor();
  await page.locator('[role=main] .place-link', { hasText: home }).waitFor();
  await page.locator('[role=main] .code', { hasText: /^M.{7}$/ }).waitFor();
  app.assertQuiet();
});

test('twelve moulds like this one are recorded in one go, and one Undo takes them all back', async () => {
  app = await openApp({ demo: true, path: `#/new/mould?like=${workingMould.id}` });
  const { page } = app;
  await page.getByText('More about it').waitFor();
  await page.getByLabel('How many moulds like this one', { exact: true }).fill('12');
  await page.getByRole('button', { name: 'Record 12 moulds' }).click();
  await page.getByText('12 moulds recorded, each with its own code.').waitFor();
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByRole('heading', { name: 'This mould is not recorded here' }).waitFor();
  app.assertQuiet();
});

test('editing writes down only what was changed; a code that is another mould’s is refused', async () => {
  app = await openApp({ demo: true, path: `#/edit/${workingMould.id}` });
  const { page } = app;
  await page.getByLabel('Label code').fill((otherMould.code ?? '').toLowerCase());
  await page.getByLabel('Shots it should last').fill('640');
  await page.getByRole('button', { name: 'Save' }).click();
  await page.locator('.field-problem', { hasText: `${otherMould.code} is on` }).waitFor();
  await page.getByLabel('Label code').fill(workingMould.code ?? '');
  expect(await axeWhole(page)).toEqual([]);
  await page.getByRole('button', { name: 'Save' }).click();
  await page.locator('.history-line', { hasText: 'Put right: shots it should last.' }).first().waitFor();
  await page.getByText('of about 640 shots (as set for this mould)').waitFor();
  app.assertQuiet();
});
