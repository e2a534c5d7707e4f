import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { appDir } from '../../.config/build.mjs';
import { type Served, serveApp } from '../../.config/server.mjs';
import { insteadOf } from '../../src/domain/instead.ts';
import { pathText } from '../../src/domain/nesting.ts';
import type { Mould, Place } from '../../src/domain/shelf.ts';
import { keptOffline, kill, makeProfile, type OpenApp, openApp, removeProfile } from '../support/browser.ts';
import { demoMould, demoShelf, otherMould, titleOfMould, workingMould } from '../support/demo-moulds.ts';
import { writeLabelVideo } from '../support/label-video.ts';
import { typeCode } from '../support/type-code.ts';

/** One phone, its server gone for good after the first visit; each test is a part of the same day. */
let profile = '';
let server: Served;
let app: OpenApp | undefined;

const busy = [workingMould.id, otherMould.id];
/** In its drawer, sound, with another to use instead, and not used elsewhere in this day. */
const spare = (besides: readonly string[]): Mould =>
  demoMould(
    'to spare',
    (mould) =>
      !mould.retired &&
      mould.grade === 'sound' &&
      demoShelf.things.place.get(mould.at ?? ('' as never))?.kind === 'drawer' &&
      !besides.includes(mould.id) &&
      insteadOf(demoShelf, mould.id).moulds.length > 0,
  );
const toFail = spare(busy);
const toLend = spare([...busy, toFail.id]);
const roomy = [...demoShelf.things.place.values()].find(
  ({ id, kind, capacity = 0 }) =>
    kind === 'drawer' && id !== workingMould.at && id !== otherMould.at && capacity > (demoShelf.contents.get(id)?.size ?? 0) + 40,
) as Place;
const roomyPath = pathText(demoShelf, roomy.id);

beforeAll(async () => {
  profile = makeProfile();
  server = await serveApp({ dir: appDir });
  writeLabelVideo(join(profile, 'label.y4m'), workingMould.code ?? '');
  const visit = await openApp({ url: server.url, demo: true, profile });
  await visit.page.waitForSelector('.front');
  await keptOffline(visit.page);
  await server.stop();
  await kill(visit);
});
afterEach(async () => {
  // As the phone would: nothing is told that it will end.
  if (app) await kill(app);
  app = undefined;
});
afterAll(async () => {
  await app?.close();
  removeProfile(profile);
});

async function open(path: string, video = false): Promise<Page> {
  app = await openApp({ url: server.url, demo: true, profile, path, ...(video ? { video: join(profile, 'label.y4m') } : {}) });
  await app.page.waitForSelector('[role=main]');
  return app.page;
}

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name });
const shotsOf = (page: Page) => page.locator('dt:text-is("Shots") + dd').textContent();
const at = (page: Page, hash: string) => page.waitForURL((url) => url.hash === hash);
const visit = (page: Page, hash: string) => page.evaluate((next) => Object.assign(window.location, { hash: next }), hash);

test('where it is, its label before the camera, and its page', async () => {
  const page = await open('#/where', true);
  await page.locator('#where-query').fill(titleOfMould(workingMould));
  await page.locator('.found').first().waitFor();
  await page.click('.bar-scan');
  await at(page, `#/mould/${workingMould.id}`);
  await page.getByRole('heading', { level: 1, name: titleOfMould(workingMould) }).waitFor();
  await expect.poll(() => shotsOf(page)).toBe(String(workingMould.shots));
  await page.locator('.history-line').first().waitFor();
  await visit(page, '#/where?q=minoan');
  await page.locator('.period-place').first().waitFor();
});

test('a code is typed where the phone has no camera to look with', async () => {
  const page = await open('#/scan');
  await typeCode(page, roomy.code);
  await at(page, `#/place/${roomy.id}`);
});

test('a run is logged', async () => {
  const page = await open(`#/mould/${workingMould.id}/run`);
  await button(page, 'Shots: 5 more').click();
  await button(page, 'Log 5 shots').click();
  await at(page, `#/mould/${workingMould.id}`);
  await expect.poll(() => shotsOf(page)).toBe(String(workingMould.shots + 5));
});

test('a mould fails, and what to use instead is said', async () => {
  const page = await open(`#/mould/${toFail.id}/failed`);
  await page.getByText('torn gate', { exact: true }).click();
  await button(page, 'Mark failed').click();
  await page.getByRole('heading', { name: 'What to use instead' }).waitFor();
  await expect.poll(() => page.locator('.instead').count()).toBe(insteadOf(demoShelf, toFail.id).moulds.length);
});

test('a look', async () => {
  const page = await open(`#/mould/${otherMould.id}/inspect`);
  await page.getByText('worn: replace it soon').click();
  await page.getByText('lost detail', { exact: true }).click();
  await button(page, 'Write down: worn').click();
  await at(page, `#/mould/${otherMould.id}`);
  await page.locator('.flag', { hasText: 'Graded worn' }).waitFor();
});

test('two things go to a drawer, another is lent', async () => {
  const page = await open(`#/move?things=${workingMould.id},${otherMould.id}&to=${roomy.id}`);
  await button(page, 'Move 2 things').click();
  await page.getByText(`2 things moved to ${roomyPath}.`).waitFor();
  await visit(page, `#/mould/${toLend.id}`);
  await button(page, 'More about this mould').click();
  await page.getByRole('link', { name: 'Lend it' }).click();
  await page.getByLabel('To whom?').fill('The harbour museum');
  await button(page, /^Lend /).click();
  await page.getByText('With The harbour museum').waitFor();
});

test('the wax for a room of 30 °C, and a tub weighed', async () => {
  const page = await open('#/wax');
  await page.getByLabel('The room is at').fill('30');
  const violet = page.locator('.wax-card', { has: page.getByRole('heading', { name: 'Violet', exact: true }) });
  await violet.getByText('Too soft above 20 °C').first().waitFor();
  await button(page, 'Weigh: Amber').click();
  await page.getByLabel('The scale says, without the tub').fill('777');
  await button(page, 'Write it down').click();
  await page.getByText('Amber: 777 g in the tub.').waitFor();
});

let setAside = '';
let attentionLeft = 0;
const inBar = async (page: Page) => Number.parseInt((await page.locator('.bar-count').textContent()) ?? '', 10);

test('what needs attention, and one of them set aside', async () => {
  const page = await open('#/attention');
  await page.locator('.attention-group').first().waitFor();
  // The bar is counted a moment after the screen is there.
  await page.locator('.bar-count').waitFor();
  const before = await inBar(page);
  const item = page.locator('.attention-group[data-kind="out late"] .attention-item').first();
  setAside = (await item.locator('.attention-title').textContent()) ?? '';
  await item.getByRole('button', { name: /^Set aside/ }).click();
  await button(page, 'For a month').click();
  await page.getByText(`${setAside}: set aside until`).waitFor();
  attentionLeft = before - 1;
  await expect.poll(() => inBar(page)).toBe(attentionLeft);
});

test('a small list is brought in, and a run is taken back', async () => {
  const page = await open('#/bring-in');
  await page.getByLabel(/Cells copied/).fill('Drawer\tCabinet\tTopic\nQ1\tCabinet Q\tCoptic\nQ2\tCabinet Q\tOttoman\n');
  await button(page, 'Use what I pasted').click();
  await page.getByText('2 rows', { exact: true }).waitFor();
  await button(page, 'See what each row becomes').click();
  await button(page, 'Bring in 2').click();
  await page.getByText('2 rows are on the shelf').waitFor();
  await visit(page, `#/mould/${toFail.id}/run`);
  await button(page, 'Shots: 10 more').click();
  await button(page, 'Log 10 shots').click();
  await button(page, 'Log it all the same').click();
  await at(page, `#/mould/${toFail.id}`);
  await expect.poll(() => shotsOf(page)).toBe(String(toFail.shots + 10));
  await button(page, 'Undo').click();
  await page.getByText('Taken back.').waitFor();
});

test('killed and opened again, all that was shown as saved is there', async () => {
  const page = await open(`#/mould/${workingMould.id}`);
  await page.locator('[role=main] .place-link', { hasText: roomyPath }).first().waitFor();
  await expect.poll(() => shotsOf(page)).toBe(String(workingMould.shots + 5));
  await visit(page, `#/mould/${toFail.id}`);
  await page.getByRole('heading', { level: 1, name: titleOfMould(toFail) }).waitFor();
  await page.locator('[role=main] .mark', { hasText: 'failed' }).first().waitFor();
  await expect.poll(() => shotsOf(page)).toBe(String(toFail.shots));
  await visit(page, `#/mould/${otherMould.id}`);
  await page.locator('.history-line', { hasText: 'found worn: lost detail.' }).waitFor();
  await page.locator('[role=main] .place-link', { hasText: roomyPath }).first().waitFor();
  await visit(page, `#/mould/${toLend.id}`);
  await page.getByText('With The harbour museum').waitFor();
  await visit(page, '#/wax');
  const amber = page.locator('.wax-card', { has: page.getByRole('heading', { name: 'Amber', exact: true }) });
  await amber.locator('dd', { hasText: '777' }).first().waitFor();
  await visit(page, '#/attention');
  await page.getByText(/^Set aside: \d+$/).click();
  await button(page, `Bring back: ${setAside}`).waitFor();
  await visit(page, '#/where?q=cabinet%20q');
  await page.getByRole('link', { name: 'Open Cabinet Q', exact: true }).waitFor();
});
