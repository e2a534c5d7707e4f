import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { mod37Check } from '../../src/domain/label.ts';
import { axeViolations } from '../support/axe.ts';
import { makeProfile, type OpenApp, openApp, removeProfile } from '../support/browser.ts';
import { chance } from '../support/chance.ts';
import { pngOf } from '../support/label-png.ts';
import { workshopView, writeLabelVideo } from '../support/label-video.ts';

interface Recorded {
  readonly id: string;
  readonly kind: string;
  readonly noun: string;
  readonly fields: { readonly code?: string; readonly kind?: string };
}

/** The demo studio's records, with a label. */
function demoThing(fits: (entry: Recorded) => boolean): { id: string; code: string } {
  const lines = readFileSync(new URL('../../demo-data/tern-quay.jsonl', import.meta.url), 'utf8')
    .trim()
    .split('\n')
    .slice(1);
  for (const line of lines) {
    const entry = JSON.parse(line) as Recorded;
    if (entry.kind === 'recorded' && entry.fields.code && fits(entry)) return { id: entry.id, code: entry.fields.code };
  }
  throw new Error('the demo studio has no such thing');
}

const mould = demoThing(({ noun }) => noun === 'mould');
const drawer = demoThing(({ noun, fields }) => noun === 'place' && fields.kind === 'drawer');
const UNUSED = `M000000${mod37Check('M000000')}`;

let app: OpenApp | undefined;
let folder = '';
beforeEach(() => {
  folder = makeProfile();
});
afterEach(async () => {
  await app?.close();
  app = undefined;
  removeProfile(folder);
});

function filmOfLabel(code: string): string {
  const path = join(folder, 'label.y4m');
  writeLabelVideo(path, code);
  return path;
}

async function opened(page: Page, address: string): Promise<void> {
  await page.waitForURL((url) => url.hash === address);
}

/** Whether any video on the page still shows a live camera. */
function isCameraOn(page: Page): Promise<boolean> {
  return page.evaluate(() => {
    const streams = (window as unknown as { cameras?: MediaStream[] }).cameras ?? [];
    return streams.some((stream) => stream.getTracks().some((track) => track.readyState === 'live'));
  });
}

/** Keeps hold of every camera the page opens, so that a test can see whether it was turned off. */
async function watchCameras(page: Page): Promise<void> {
  await page.evaluate(() => {
    const cameras: MediaStream[] = [];
    Object.assign(window, { cameras });
    const ask = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices);
    navigator.mediaDevices.getUserMedia = async (wish) => {
      const stream = await ask(wish);
      cameras.push(stream);
      return stream;
    };
  });
}

/** Counts how often the page asks for a camera. */
function countAsked(): void {
  const page = Object.assign(window, { asked: 0 });
  navigator.mediaDevices.getUserMedia = () => {
    page.asked += 1;
    return Promise.reject(new DOMException('', 'NotFoundError'));
  };
}

/** A phone's camera with a lamp that comes closer, and a screen that can be kept lit; what is asked of them can be looked at. */
interface Phone {
  readonly asked: object[];
  readonly locks: { released: boolean }[];
  refuses: boolean;
}

function bePhone(): void {
  const phone: Phone = { asked: [], locks: [], refuses: false };
  Object.assign(window, { phone });
  Object.assign(MediaStreamTrack.prototype, {
    getCapabilities: () => ({ torch: true, zoom: { min: 1, max: 3, step: 0.1 } }),
    applyConstraints: async (wish: MediaTrackConstraints) => {
      if (phone.refuses) throw new DOMException('', 'OverconstrainedError');
      phone.asked.push(...(wish.advanced ?? []));
    },
  });
  const request = async () => {
    const lock = { released: false, release: async () => void Object.assign(lock, { released: true }) };
    phone.locks.push(lock);
    return lock;
  };
  Object.defineProperty(navigator, 'wakeLock', { configurable: true, value: { request } });
}

/** A platform that has none of them. */
function beBare(): void {
  Object.defineProperty(navigator, 'wakeLock', { configurable: true, value: undefined });
  Object.assign(MediaStreamTrack.prototype, { getCapabilities: undefined, applyConstraints: undefined });
}

/** As when another app comes to the front: headless browsers never hide a page by themselves. */
async function showPage(page: Page, state: 'hidden' | 'visible'): Promise<void> {
  await page.evaluate((now) => {
    Object.defineProperty(document, 'visibilityState', { configurable: true, get: () => now });
    document.dispatchEvent(new Event('visibilitychange'));
  }, state);
}

describe('with a camera', () => {
  test('a turned, dim, smeared label opens its mould, without a network, and the camera goes off', async () => {
    app = await openApp({ demo: true, video: filmOfLabel(mould.code), offline: true });
    const { page } = app;
    await page.waitForSelector('.bar');
    await watchCameras(page);
    await page.click('.bar-scan');
    await opened(page, `#/mould/${mould.id}`);
    await expect.poll(() => page.evaluate(() => (window as unknown as { cameras: MediaStream[] }).cameras.length)).toBe(1);
    await expect.poll(() => isCameraOn(page)).toBe(false);
    app.assertQuiet();
  });

  test('a drawer’s label opens the drawer', async () => {
    app = await openApp({ demo: true, video: filmOfLabel(drawer.code), path: '#/scan' });
    await opened(app.page, `#/place/${drawer.id}`);
    app.assertQuiet();
  });

  test('a sound label that nothing carries says so, and can be put on a mould', async () => {
    app = await openApp({ demo: true, video: filmOfLabel(UNUSED), path: '#/scan' });
    const { page } = app;
    await page.getByText(`Nothing here carries ${UNUSED}`).waitFor();
    expect(await axeViolations(page)).toEqual([]);
    await expect
      .poll(() => page.getByRole('link', { name: 'Record a new mould with this label' }).getAttribute('href'))
      .toBe(`#/new/mould?code=${UNUSED}`);
    await page.getByRole('button', { name: 'Put this label on a mould that is here' }).click();
    await page.getByLabel('Its name, or a part of it').fill(mould.code);
    await page
      .getByRole('dialog')
      .getByRole('button', { name: `instead of ${mould.code}` })
      .click();
    await opened(page, `#/mould/${mould.id}`);
    await page.getByText(`now carries ${UNUSED}`).waitFor();
    await page.goto(`${app.url}?demo#/scan`);
    await opened(page, `#/mould/${mould.id}`);
    app.assertQuiet();
  });

  test('the camera is off while a code is typed, while the page is hidden, and after leaving', async () => {
    app = await openApp({ demo: true, video: filmOfLabel('WORKSHOP RADIO') });
    const { page } = app;
    await page.waitForSelector('.bar');
    await watchCameras(page);
    await page.click('.bar-scan');
    await page.getByText('Hold a label in the frame.').waitFor();
    await expect.poll(() => isCameraOn(page)).toBe(true);
    // A symbol that is no label of the studio's is told, and scanning goes on.
    await page.getByText('is not a shelf label').waitFor();
    expect(await axeViolations(page)).toEqual([]);
    await page.getByRole('button', { name: 'Type the code' }).click();
    await expect.poll(() => isCameraOn(page)).toBe(false);
    await page.getByRole('button', { name: 'Use the camera' }).click();
    await page.getByText('Hold a label in the frame.').waitFor();
    await expect.poll(() => isCameraOn(page)).toBe(true);
    await showPage(page, 'hidden');
    await expect.poll(() => isCameraOn(page)).toBe(false);
    await showPage(page, 'visible');
    await expect.poll(() => isCameraOn(page)).toBe(true);
    await page.click('.bar-stop:first-child');
    await expect.poll(() => isCameraOn(page)).toBe(false);
    app.assertQuiet();
  });
});

test('a phone’s lamp and zoom are at hand, and its screen stays lit while labels are scanned one after another; elsewhere nothing is missed', async () => {
  app = await openApp({ demo: true, video: filmOfLabel(mould.code), path: '#/move', prepare: (context) => context.addInitScript(bePhone) });
  const { page } = app;
  const phone = () => page.evaluate(() => (window as unknown as { phone: Phone }).phone);
  const lit = async () => (await phone()).locks.map(({ released }) => !released);
  const button = (name: string) => page.getByRole('button', { name, exact: true });
  await button('Scan a label').click();
  await page.getByText('is on the list. Scan the next one').waitFor();
  expect(await lit()).toEqual([true]);
  await button('Torch on').click();
  await button('Torch off').click();
  await button('Torch on').waitFor();
  expect(await axeViolations(page)).toEqual([]);
  // No more than this camera can.
  await expect.poll(() => page.getByRole('radio', { name: '×' }).count()).toBe(2);
  await page.getByText('2 ×').click();
  await expect.poll(() => page.getByRole('radio', { name: '2 ×' }).isChecked()).toBe(true);
  expect((await phone()).asked).toEqual([{ torch: true }, { torch: false }, { zoom: 2 }]);
  await button('Torch on').click();
  await button('Torch off').waitFor();
  await page.evaluate(() => Object.assign((window as unknown as { phone: Phone }).phone, { refuses: true }));
  await button('Torch off').click();
  await page.getByText('The phone did not switch its torch. Scanning goes on without it.').waitFor();
  await button('Torch off').waitFor();
  await page.evaluate(() => Object.assign((window as unknown as { phone: Phone }).phone, { refuses: false }));

  await showPage(page, 'hidden');
  await expect.poll(lit).toEqual([false]);
  await showPage(page, 'visible');
  await expect.poll(lit).toEqual([false, true]);
  // The camera that was switched off and on again is dark, and as far away as at first.
  await button('Torch on').waitFor();
  await expect.poll(() => page.getByRole('radio', { name: '1 ×' }).isChecked()).toBe(true);
  await button('Back').click();
  await page.getByRole('heading', { name: 'Move or put away' }).waitFor();
  await expect.poll(lit).toEqual([false, false]);

  const bare = await app.context.newPage();
  await bare.addInitScript(beBare);
  await bare.goto(`${app.url}?demo#/move`);
  await bare.getByRole('button', { name: 'Scan another' }).click();
  await bare.getByText('is on the list. Scan the next one').waitFor();
  await bare.getByRole('button', { name: 'Type the code' }).waitFor();
  await expect.poll(() => bare.getByRole('button', { name: /^Torch/ }).count()).toBe(0);
  await expect.poll(() => bare.getByRole('radio').count()).toBe(0);
  await showPage(bare, 'hidden');
  await showPage(bare, 'visible');
  await bare.getByRole('button', { name: 'Back', exact: true }).click();
  await bare.getByRole('heading', { name: 'Move or put away' }).waitFor();
  app.assertQuiet();
});

describe('without a camera', () => {
  test('says there is none and what to do, and reads a typed code', async () => {
    app = await openApp({ demo: true, path: '#/scan', viewport: { width: 320, height: 640 } });
    const { page } = app;
    await page.getByRole('alert').getByText('Type the code, or use a picture of the label.').waitFor();
    await page.getByRole('button', { name: 'Type the code' }).click();
    const input = page.getByLabel('The code on the label');
    const wrongCheck = mould.code.slice(0, 7) + (mould.code.endsWith('A') ? 'B' : 'A');
    for (const key of wrongCheck) await page.getByRole('button', { name: key, exact: true }).click();
    await page.getByRole('alert').getByText('slip').waitFor();
    expect(page.url()).toContain('#/scan');
    await page.getByRole('button', { name: 'Delete' }).click();
    await page.getByText('1 more character.').waitFor();
    const tooWide = await page.evaluate(() => document.documentElement.scrollWidth > document.documentElement.clientWidth);
    expect(tooWide).toBe(false);
    const small = await page.$$eval(
      'button',
      (all) =>
        all
          .filter((each) => each.checkVisibility({ visibilityProperty: true }))
          .map((each) => each.getBoundingClientRect())
          .filter((box) => box.width < 48 || box.height < 48).length,
    );
    expect(small).toBe(0);
    expect(await axeViolations(page)).toEqual([]);
    await input.fill(mould.code.toLowerCase());
    await opened(page, `#/mould/${mould.id}`);
    app.assertQuiet();
  });

  test('reads a picture, and says when there is nothing to read in one', async () => {
    app = await openApp({ demo: true, path: '#/scan' });
    const { page } = app;
    const picture = page.locator('input[type=file]');
    await picture.setInputFiles({ name: 'notes.png', mimeType: 'image/png', buffer: Buffer.from('<script>alert(1)</script>') });
    await page.getByText('not a picture this phone can open').waitFor();
    const blank = { width: 300, height: 200, data: new Float32Array(60_000).fill(200) };
    await picture.setInputFiles({ name: 'blank.png', mimeType: 'image/png', buffer: pngOf(blank) });
    await page.getByText('no label to be read in that picture').waitFor();
    await picture.setInputFiles({ name: 'label.png', mimeType: 'image/png', buffer: pngOf(workshopView(mould.code, chance(4))) });
    await opened(page, `#/mould/${mould.id}`);
    app.assertQuiet();
  });

  test('a label’s link opens its thing, and one with a slip says so', async () => {
    app = await openApp({ demo: true, path: `#/c/${mould.code}`, prepare: (context) => context.addInitScript(countAsked) });
    await opened(app.page, `#/mould/${mould.id}`);
    // Nobody is asked for the camera when the address has said it all.
    await expect.poll(() => app?.page.evaluate(() => (window as unknown as { asked: number }).asked)).toBe(0);
    await app.page.goto(`${app.url}?demo#/c/${mould.code.slice(0, 7)}*`);
    await app.page.getByRole('alert').first().waitFor();
    app.assertQuiet();
  });

  test('says what to do when the camera is refused', async () => {
    app = await openApp({ demo: true, refusesCamera: true, path: '#/scan' });
    const { page } = app;
    await page.getByRole('alert').getByText('The camera was refused.').waitFor();
    await page.getByText('permissions').waitFor();
    app.assertQuiet();
  });
});
