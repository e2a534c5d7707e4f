import type { Page } from 'playwright-core';
import { afterEach, expect, test } from 'vitest';
import { axeWhole } from '../support/axe-whole.ts';
import { kill, makeProfile, type OpenApp, openApp, removeProfile } from '../support/browser.ts';
import { demoShelf, otherMould, workingMould } from '../support/demo-moulds.ts';
import { keptSetting } from '../support/kept-setting.ts';

let app: OpenApp | undefined;
afterEach(() => app?.close());

async function open(path: string): Promise<Page> {
  app = await openApp({ demo: true, path });
  await app.page.getByRole('main').waitFor();
  return app.page;
}

function goTo(page: Page, hash: string): Promise<void> {
  return page.evaluate((address) => void Object.assign(window.location, { hash: address }), hash);
}

const [here, there] = [...demoShelf.things.place.values()].filter(({ kind }) => kind === 'drawer').map(({ id }) => id);

test('what was typed for one place is still there after the form was opened, and typed into, for another', async () => {
  const page = await open(`#/new/mould?at=${here}`);
  const name = page.getByLabel('Name', { exact: true });
  await name.fill('Gull, for the first drawer');
  await goTo(page, `#/new/mould?at=${there}`);
  await expect.poll(() => name.inputValue()).toBe('');
  await name.fill('Tern, for the second');
  await goTo(page, `#/new/mould?at=${here}`);
  await expect.poll(() => name.inputValue()).toBe('Gull, for the first drawer');
  await goTo(page, `#/new/mould?at=${there}`);
  await expect.poll(() => name.inputValue()).toBe('Tern, for the second');
});

test('a list of things to move outlives another one', async () => {
  const page = await open(`#/move?things=${workingMould.id}`);
  const note = page.getByLabel('Note');
  await note.fill('to the plater');
  await goTo(page, `#/move?things=${otherMould.id}`);
  await expect.poll(() => note.inputValue()).toBe('');
  await note.fill('back from the plater');
  await goTo(page, `#/move?things=${workingMould.id}`);
  await expect.poll(() => note.inputValue()).toBe('to the plater');
});

test('cells pasted and not yet used are there after a reload', async () => {
  const page = await open('#/bring-in');
  const cells = page.getByLabel(/Cells copied/);
  await cells.fill('Wax\tStock\nAmber\t500 g');
  await page.reload();
  await expect.poll(() => cells.inputValue()).toBe('Wax\tStock\nAmber\t500 g');
});

test('a form left half filled on an earlier day says so, and can be started afresh', async () => {
  const page = await open(`#/mould/${workingMould.id}/run`);
  await page.getByLabel('Note').fill('pot low');
  await page.reload();
  await page.getByLabel('Note').waitFor();
  await expect.poll(() => page.locator('.kept-draft').count()).toBe(0);
  await page.evaluate(() => {
    const key = Object.keys(localStorage).find((each) => each.includes(':run:')) ?? '';
    localStorage.setItem(key, (localStorage.getItem(key) ?? '').replace(/"on":"[\d-]+"/, '"on":"2024-11-03"'));
  });
  await page.reload();
  await page.getByText('Kept from 3 November 2024').waitFor();
  await expect.poll(() => page.getByLabel('Note').inputValue()).toBe('pot low');
  expect(await axeWhole(page)).toEqual([]);
  await page.getByRole('button', { name: 'Start afresh' }).click();
  await expect.poll(() => page.getByLabel('Note').inputValue()).toBe('');
  await expect.poll(() => page.locator('.kept-draft').count()).toBe(0);
  await page.reload();
  await page.getByLabel('Note').waitFor();
  await expect.poll(() => page.getByLabel('Note').inputValue()).toBe('');
});

test('a run half typed is there after the browser was killed, and says nothing of an earlier day', async () => {
  const profile = makeProfile();
  try {
    const path = `#/mould/${workingMould.id}/run`;
    const first = await openApp({ demo: true, path, profile });
    await first.page.getByLabel('Shots', { exact: true }).fill('7');
    await first.page.getByLabel('Note').fill('pot low');
    // The browser writes its storage when it pleases: what outlives the kill is the copy.
    await expect.poll(async () => JSON.stringify(await keptSetting(first.page, 'drafts:mouldkeep-demo'))).toMatch(/pot low/);
    await kill(first);
    app = await openApp({ demo: true, path, profile, url: first.url });
    const { page } = app;
    await expect.poll(() => page.getByLabel('Note').inputValue()).toBe('pot low');
    await expect.poll(() => page.getByLabel('Shots', { exact: true }).inputValue()).toBe('7');
    expect(await page.locator('.kept-draft').count()).toBe(0);
    await app.close();
    app = undefined;
  } finally {
    removeProfile(profile);
  }
});
