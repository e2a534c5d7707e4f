import { afterEach, expect, test } from 'vitest';
import type { PlaceId } from '../../src/domain/brand.ts';
import { type OpenApp, openApp } from '../support/browser.ts';
import { dialogsOf } from '../support/dialogs.ts';
import { aRecorded, aStudioCorrected } from '../support/entry-builders.ts';
import { settled } from '../support/every-screen.ts';
import { layIn } from '../support/lay-in.ts';
import { keptAs, NASTIEST } from '../support/naughty.ts';

let app: OpenApp | undefined;
afterEach(() => app?.close());

const names = NASTIEST.map((text) => keptAs(text) ?? '');
const cabinet = aRecorded('place', { name: names[0] ?? '', kind: 'cabinet', widthMm: 600 as never, heightMm: 600 as never });
const drawer = aRecorded('place', { name: names[1] ?? '', kind: 'drawer', in: cabinet.id as string as PlaceId });
const things = names.map((name) => aRecorded('mould', { name, note: name }, { at: drawer.id as string as PlaceId, note: name, by: name }));

test('names and notes that would run as scripts or markup are shown as they were typed, on screen after screen', async () => {
  app = await openApp();
  const { page } = app;
  const opened = dialogsOf(page);
  await page.locator('.door').first().waitFor();
  await layIn(page, [aStudioCorrected({ name: names[2] }), cabinet, drawer, ...things]);
  await page.locator('.bar').waitFor();
  for (const [at, thing] of things.entries()) {
    await page.evaluate((hash) => Object.assign(window.location, { hash }), `#/mould/${thing.id}`);
    await expect.poll(() => page.locator('h1').first().textContent()).toBe(names[at]);
  }
  for (const hash of [
    '#/',
    `#/place/${drawer.id}`,
    `#/place/${cabinet.id}`,
    '#/where?q=script',
    '#/attention',
    '#/wax',
    '#/settings',
    '#/labels',
    '#/rooms',
  ]) {
    await page.evaluate((address) => Object.assign(window.location, { hash: address }), hash);
    await page.waitForURL((url) => (url.hash || '#/') === hash);
    await page.locator('main, [role=main]').first().waitFor();
    await settled(page);
    // None of them may have become anything but text.
    expect(
      await page
        .locator(':is(main, [role=main]) :is(script, iframe, object, embed, base, marquee, a[href^="javascript" i], [onerror], [onload])')
        .count(),
      hash,
    ).toBe(0);
  }
  await page.evaluate((hash) => Object.assign(window.location, { hash }), `#/place/${drawer.id}`);
  await expect.poll(() => page.locator('.row-title').count()).toBe(names.length);
  for (const title of await page.locator('.row-title').allTextContents()) expect(names).toContain(title);
  expect(opened).toEqual([]);
  app.assertQuiet();
});
