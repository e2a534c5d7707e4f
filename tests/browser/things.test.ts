import { afterEach, expect, test } from 'vitest';
import { pathText } from '../../src/domain/nesting.ts';
import { titleOf } from '../../src/domain/title.ts';
import { axeWhole } from '../support/axe-whole.ts';
import { type OpenApp, openApp } from '../support/browser.ts';
import { demoShelf, titleOfMould, workingMould } from '../support/demo-moulds.ts';

let app: OpenApp | undefined;
afterEach(() => app?.close());

const { wax, master, place } = demoShelf.things;
const titled = titleOf.bind(undefined, demoShelf);

async function openPage(path: string) {
  app = await openApp({ demo: true, path });
  return app.page;
}

test('a wax that is sold no more is retired for that reason, and Undo brings it back', async () => {
  const [first] = [...wax.values()].filter(
    (each) => !each.retired && ![...demoShelf.things.injector.values()].some(({ holds }) => holds === each.id),
  );
  const page = await openPage(`#/thing/${first?.id}`);
  await page.getByRole('button', { name: 'More about this wax' }).click();
  await page.getByRole('dialog').waitFor();
  expect(await axeWhole(page)).toEqual([]);
  await page.getByRole('button', { name: 'Retire' }).click();
  await page.getByRole('button', { name: 'discontinued' }).click();
  await page.locator('[role=main] .mark', { hasText: 'discontinued' }).waitFor();
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.locator('[role=main] .mark', { hasText: 'discontinued' }).waitFor({ state: 'detached' });
  app?.assertQuiet();
});

test('removing a drawer that still holds moulds is asked about; an empty one goes from its cabinet', async () => {
  const drawers = [...place.values()].filter(({ kind }) => kind === 'drawer');
  const full = drawers.find(({ id }) => id === workingMould.at);
  const page = await openPage(`#/place/${full?.id}`);
  await page.getByRole('button', { name: 'More about this place' }).click();
  await page.getByRole('button', { name: 'Retire' }).click();
  await page.getByRole('button', { name: 'removed' }).click();
  await page.getByText(/^Still in .*: \d+ moulds?/).waitFor();
  await page.getByRole('button', { name: 'Retire it all the same' }).click();
  await page.locator('[role=main] .mark', { hasText: 'removed' }).waitFor();
  await page.evaluate((hash) => Object.assign(window.location, { hash }), `#/place/${full?.in}`);
  await page
    .getByText(full?.label ?? '', { exact: true })
    .first()
    .waitFor();
  app?.assertQuiet();
});

test('a master is inspected, and a mould of it recorded with design, size and master filled in', async () => {
  const of = [...master.values()].find((each) => each.design && each.size && !each.retired);
  const page = await openPage(`#/thing/${of?.id}`);
  await page.getByRole('link', { name: 'Inspect' }).click();
  await page.getByText('watch: look at it before each new mould').click();
  await expect.poll(() => page.getByText('torn gate').count()).toBe(0);
  await page.getByText('lost detail').click();
  await page.getByRole('button', { name: 'Write down: watch' }).click();
  await page.locator('[role=main] .mark', { hasText: 'watch' }).first().waitFor();
  await page.getByRole('link', { name: 'Make a mould from this' }).click();
  await page.getByRole('button', { name: 'Record the mould' }).waitFor();
  await expect.poll(() => page.getByLabel('Size').inputValue()).toBe(of?.size);
  await expect
    .poll(() => page.locator('.picker-chosen .row-title').allTextContents())
    .toEqual([titled(demoShelf.things.design.get(of?.design as never)), titled(of)]);
  app?.assertQuiet();
});

test('injected waxes nobody logged are recorded from the shelves, and counted again later', async () => {
  const page = await openPage('');
  await page.getByRole('button', { name: 'Add', exact: true }).click();
  await page.getByRole('link', { name: 'Anything else…' }).click();
  await page.getByRole('link', { name: 'An injected wax' }).click();
  await page.getByLabel('Name', { exact: true }).fill('Gull, old stock');
  await page.getByLabel('Pieces').fill('37');
  await page.getByRole('button', { name: 'Record the injected wax' }).click();
  await page.getByRole('heading', { level: 1, name: 'Gull, old stock' }).waitFor();
  await page.getByRole('button', { name: 'Count', exact: true }).click();
  await page.getByRole('button', { name: 'Pieces there now: 10 less' }).click();
  await page.getByRole('button', { name: 'Pieces there now: one less' }).click();
  expect(await axeWhole(page)).toEqual([]);
  await page.getByRole('button', { name: 'Write down 26 pieces' }).click();
  await page.locator('.history-line', { hasText: 'Counted: 26 pieces.' }).waitFor();
  await expect.poll(() => page.locator('dt:text-is("Pieces") + dd').textContent()).toBe('26');
  app?.assertQuiet();
});

test('things are lent from the page of who has some already, chosen by typing a few letters', async () => {
  const away = [...place.values()].find(({ kind, retired }) => kind === 'away' && !retired);
  const holder = away?.holder ?? titled(away);
  const page = await openPage(`#/place/${away?.id}`);
  await page.getByRole('link', { name: 'Lend things here' }).click();
  await page.getByRole('button', { name: 'Choose what to lend' }).click();
  await page.locator('.field-problem', { hasText: 'Say what goes' }).waitFor();
  await expect.poll(() => page.getByLabel('To whom?').inputValue()).toBe(holder);
  await page.getByLabel('What goes?').fill(workingMould.code ?? '');
  await page.locator('.picker-choice').first().click();
  expect(await axeWhole(page)).toEqual([]);
  await page.getByRole('button', { name: `Lend ${titleOfMould(workingMould)}` }).click();
  await page.getByText(`${titleOfMould(workingMould)} lent to ${holder}.`).waitFor();
  await page
    .locator('[role=main] .row-title', { hasText: titleOfMould(workingMould) })
    .first()
    .waitFor();
  app?.assertQuiet();
});

test('a place is moved into another one from its own page', async () => {
  const boxes = [...place.values()].filter(({ kind }) => kind === 'drawer' || kind === 'box');
  const box = boxes.find(({ in: within }) => within !== undefined && place.get(within)?.kind === 'cabinet');
  const cabinet = [...place.values()].find(({ kind, id }) => kind === 'cabinet' && id !== box?.in);
  const page = await openPage(`#/place/${box?.id}`);
  await page.getByRole('button', { name: 'More about this place' }).click();
  await page.getByRole('link', { name: 'Move this place' }).click();
  await page.getByLabel('Place', { exact: true }).fill(cabinet?.name ?? '');
  await page
    .locator('.picker-choice', { has: page.getByText(pathText(demoShelf, cabinet?.id), { exact: true }) })
    .first()
    .click();
  await page.getByRole('button', { name: /^Move / }).click();
  await page.locator('[role=main] .where-step', { hasText: cabinet?.name ?? '' }).waitFor();
  app?.assertQuiet();
});
