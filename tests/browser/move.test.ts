import { afterEach, expect, test } from 'vitest';
import { pathText } from '../../src/domain/nesting.ts';
import type { Place } from '../../src/domain/shelf.ts';
import { axeWhole } from '../support/axe-whole.ts';
import { type OpenApp, openApp } from '../support/browser.ts';
import { demoShelf, otherMould, titleOfMould, workingMould } from '../support/demo-moulds.ts';
import { typeCode } from '../support/type-code.ts';

let app: OpenApp | undefined;
afterEach(() => app?.close());

const places = [...demoShelf.things.place.values()];
/** A drawer with room left, elsewhere. */
const roomy = places.find(
  (place) =>
    place.kind === 'drawer' && place.id !== workingMould.at && (place.capacity ?? 0) > (demoShelf.contents.get(place.id)?.size ?? 0) + 40,
) as Place;
const home = pathText(demoShelf, workingMould.at);

test('two things go to a drawer in one go, chosen by typing a few letters, and Undo puts both back', async () => {
  app = await openApp({ demo: true, path: `#/mould/${workingMould.id}` });
  const { page } = app;
  await page.getByRole('link', { name: 'Move or put away' }).waitFor();
  await page.evaluate((hash) => Object.assign(window.location, { hash }), `#/move?things=${workingMould.id},${otherMould.id}`);
  await page.getByRole('button', { name: 'Move 2 things' }).click();
  await page.locator('.field-problem', { hasText: 'Say where it goes' }).waitFor();
  const path = pathText(demoShelf, roomy.id);
  await page.getByLabel('Place', { exact: true }).fill(path.replace(' › ', ' '));
  expect(await axeWhole(page)).toEqual([]);
  await page.locator('.picker-choice', { has: page.getByText(path, { exact: true }) }).click();
  await page.getByRole('button', { name: 'Move 2 things' }).click();
  await page.waitForURL((url) => url.hash === `#/mould/${workingMould.id}`);
  await page.locator('[role=main] .place-link', { hasText: path }).click();
  await page.locator('.here').waitFor();
  await page.getByRole('button', { name: 'Undo' }).waitFor();
  // A tap meant for Open must not undo the move.
  const topOf = async (part: string) => (await page.locator(part).boundingBox())?.y ?? 0;
  const bottomOf = async (part: string) => (await topOf(part)) + ((await page.locator(part).boundingBox())?.height ?? 0);
  await expect.poll(async () => (await bottomOf('.toast')) <= (await topOf('.here'))).toBe(true);
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.goBack();
  await page.locator('[role=main] .place-link', { hasText: home }).first().waitFor();
  await page.evaluate((hash) => Object.assign(window.location, { hash }), `#/mould/${otherMould.id}`);
  await page.getByRole('heading', { level: 1, name: titleOfMould(otherMould) }).waitFor();
  await page.locator('[role=main] .place-link', { hasText: home }).first().waitFor();
  app.assertQuiet();
});

test('lent with to whom and until when; its page says so, and one tap puts it back', async () => {
  app = await openApp({ demo: true, path: `#/mould/${workingMould.id}` });
  const { page } = app;
  await page.getByRole('button', { name: 'More about this mould' }).click();
  await page.getByRole('link', { name: 'Lend it' }).click();
  await page.getByRole('button', { name: /^Lend / }).click();
  await page.locator('.field-problem', { hasText: 'Say who has it.' }).waitFor();
  await page.getByLabel('To whom?').fill('The harbour museum');
  await page.getByLabel('Back by').fill('2099-05-06');
  await page.getByRole('button', { name: /^Lend / }).click();
  await page.getByText('With The harbour museum').waitFor();
  await page.getByText('Due back by 6 May 2099.').waitFor();
  await page.getByText('Usual place:').waitFor();
  await page.locator('[role=main] .mark', { hasText: 'away' }).waitFor();
  await page.getByRole('button', { name: 'It is back' }).click();
  await page.locator('[role=main] .place-link', { hasText: home }).first().waitFor();
  await expect.poll(() => page.getByText('Due back by').count()).toBe(0);
  app.assertQuiet();
});

test('a place cannot go inside itself, and says so', async () => {
  const drawer = places.find((place) => place.kind === 'drawer' && place.in) as Place;
  app = await openApp({ demo: true, path: `#/move?things=${drawer.in}&to=${drawer.id}` });
  const { page } = app;
  await page.getByRole('button', { name: /^Move / }).click();
  await page.locator('.note-problem', { hasText: 'which stands in it. Nothing has been moved.' }).waitFor();
});

test('a thing is scanned, then a place; the list outlives the camera', async () => {
  app = await openApp({ demo: true, path: '#/move' });
  const { page } = app;
  await page.getByRole('button', { name: 'Scan a label' }).click();
  await typeCode(page, workingMould.code);
  await page.getByText('is on the list. Scan the next one, or the place they go to.').waitFor();
  await typeCode(page, otherMould.code);
  await page.getByText(`${titleOfMould(otherMould)} is on the list.`).waitFor();
  await typeCode(page, roomy.code);
  await page.getByRole('button', { name: 'Move 2 things' }).click();
  await page.getByText(`2 things moved to ${pathText(demoShelf, roomy.id)}.`).waitFor();
  app.assertQuiet();
});
