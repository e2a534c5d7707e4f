import { readFileSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { appDir } from '../../.config/build.mjs';
import { type Served, serveApp } from '../../.config/server.mjs';
import { axeWhole } from '../support/axe-whole.ts';
import { keptOffline, makeProfile, type OpenApp, openApp, removeProfile } from '../support/browser.ts';
import { dialogsOf } from '../support/dialogs.ts';
import { aRecorded } from '../support/entry-builders.ts';
import { layIn } from '../support/lay-in.ts';

interface Icon {
  readonly src: string;
  readonly sizes: string;
  readonly purpose?: string;
}
interface Manifest {
  readonly id: string;
  readonly icons: readonly Icon[];
  readonly shortcuts: readonly { readonly name: string; readonly url: string; readonly icons: readonly Icon[] }[];
  readonly share_target: {
    readonly action: string;
    readonly method: string;
    readonly params: { readonly files: readonly { readonly name: string }[] };
  };
  readonly screenshots: readonly { readonly src: string; readonly sizes: string; readonly form_factor: string; readonly label: string }[];
  readonly file_handlers: readonly { readonly accept: Readonly<Record<string, readonly string[]>> }[];
}

const manifest = JSON.parse(readFileSync(join(appDir, 'manifest.webmanifest'), 'utf8')) as Manifest;
/** In a folder of its own, as the README says. */
const base = '/tools/shelves/';
let server: Served;
let app: OpenApp;

beforeEach(async () => {
  server = await serveApp({ dir: appDir, base });
});
afterEach(async () => {
  await app.close();
  await server.stop();
});

const heading = (page: Page, name: string | RegExp) => page.getByRole('heading', { level: 1, name }).waitFor();

/** Another app shares these, as the system does it: a form is posted to the address the manifest names. */
function share(
  page: Page,
  files: readonly { readonly name: string; readonly type: string; readonly bytes: readonly number[] }[],
): Promise<void> {
  const { action, params } = manifest.share_target;
  return page.evaluate(
    async ({ to, field, sent }) => {
      const body = new FormData();
      body.append('title', 'Gallery');
      for (const { name, type, bytes } of sent) body.append(field, new File([new Uint8Array(bytes)], name, { type }));
      const answer = await fetch(to, { method: 'POST', body });
      if (!answer.ok) throw new Error(`not taken: ${answer.status}`);
    },
    { to: action, field: params.files[0]?.name ?? '', sent: files },
  );
}

const png = [...readFileSync(join(appDir, 'icon-192.png'))];

test('the manifest tells the truth: its icons are there and of their size, its shortcuts open, and the system takes it', async () => {
  app = await openApp({ url: server.url, path: '?demo' });
  const { page } = app;
  const sizes = await page.evaluate(async (icons) => {
    const found: string[] = [];
    for (const { src } of icons.filter((icon) => icon.src.endsWith('.png'))) {
      const image = await createImageBitmap(await (await fetch(src)).blob());
      const canvas = new OffscreenCanvas(image.width, image.height);
      const context = canvas.getContext('2d') as OffscreenCanvasRenderingContext2D;
      context.drawImage(image, 0, 0);
      const alpha = (x: number, y: number) => context.getImageData(x, y, 1, 1).data[3];
      found.push(
        `${image.width}x${image.height} ${alpha(2, 2) === 255 ? 'filled' : 'clear'} corner, ${alpha(image.width / 2, 40) === 255 ? 'filled' : 'clear'} edge`,
      );
    }
    return found;
  }, manifest.icons);
  const pngs = manifest.icons.filter(({ src }) => src.endsWith('.png'));
  // A maskable icon's ground reaches its corners; a monochrome one's ground is clear.
  expect(sizes).toEqual(
    pngs.map(
      ({ sizes: size, purpose }) =>
        `${size} ${purpose === 'maskable' ? 'filled' : 'clear'} corner, ${purpose === 'monochrome' ? 'clear' : 'filled'} edge`,
    ),
  );
  expect(pngs.map(({ purpose }) => purpose)).toEqual(['any', 'any', 'maskable', 'monochrome']);
  // What an install dialog shows, on a phone and on a desk.
  const shown = await page.evaluate(async (pictures) => {
    const sizesOf = pictures.map(async ({ src }) => {
      const { width, height } = await createImageBitmap(await (await fetch(src)).blob());
      return `${width}x${height}`;
    });
    return Promise.all(sizesOf);
  }, manifest.screenshots);
  expect(shown).toEqual(manifest.screenshots.map(({ sizes: size }) => size));
  expect(new Set(manifest.screenshots.map((each) => each.form_factor))).toEqual(new Set(['narrow', 'wide']));
  const session = await app.context.newCDPSession(page);
  expect((await session.send('Page.getAppManifest')).errors).toEqual([]);
  expect(
    (await session.send('Page.getInstallabilityErrors')).installabilityErrors.filter(({ errorId }) => errorId !== 'in-incognito'),
  ).toEqual([]);
  expect(manifest.file_handlers.flatMap(({ accept }) => Object.values(accept).flat())).toEqual(['.zip', '.txt']);
  for (const { url } of manifest.shortcuts) {
    await page.goto(new URL(url.replace('./', './?demo'), server.url).href);
    await page.getByRole('navigation').locator('[aria-current=page]').waitFor();
    await expect.poll(() => page.getByRole('heading', { level: 1 }).textContent()).toMatch(/Scan a label|Where is…|needs attention/);
  }
});

test('a shared picture is asked about offline, waits while the app is closed, and ends with its thing', async () => {
  app = await openApp({ url: server.url, demo: true });
  const { page } = app;
  await keptOffline(page);
  await server.stop();
  await share(page, [
    { name: 'a.png', type: 'image/png', bytes: png },
    { name: 'b.csv', type: 'text/csv', bytes: [1] },
  ]);
  await share(page, [{ name: 'broken.jpg', type: 'image/jpeg', bytes: [1, 2, 3] }]);
  // Closed midway, and opened again.
  await page.close();
  const again = await app.context.newPage();
  await again.goto(`${server.url}?demo#/shared?kind=1&kept=1`);
  await heading(again, 'What is on this picture?');
  await again.getByText('1 file is no picture.').waitFor();
  await again.getByText('1 more picture after this one.').waitFor();
  await again.getByAltText('What was shared').waitFor();
  expect(await axeWhole(again)).toEqual([]);
  await again.emulateMedia({ colorScheme: 'dark' });
  expect(await axeWhole(again)).toEqual([]);
  await expect.poll(() => again.getByRole('button', { name: 'Add the photo' }).isDisabled()).toBe(true);
  await again.locator('.picker-choice').first().click();
  const title = (await again.locator('.picker-chosen .row-title').textContent()) ?? '';
  await again.getByRole('button', { name: 'Add the photo' }).click();
  await again.getByText(`Photo added to ${title}.`).waitFor();
  // The other one is no picture any device can read: said, kept where it is, and let go.
  await again.getByText('This device cannot read that picture.').waitFor();
  await again.locator('.picker-choice').first().click();
  await again.getByRole('button', { name: 'Add the photo' }).click();
  await again.getByText('That file is no picture this device can read.').waitFor();
  await again.getByRole('button', { name: 'Do not keep it' }).click();
  await again.getByText('No picture waits here').waitFor();
});

test('pictures that wait are told of in the studio’s own shelves, and can be scanned to their thing', async () => {
  app = await openApp({ url: server.url });
  const { page } = app;
  await page.getByRole('button', { name: /empty cabinet/i }).click();
  await page.getByRole('dialog', { name: 'Add a cabinet' }).waitFor();
  await keptOffline(page);
  await share(page, [{ name: 'a.png', type: 'image/png', bytes: png }]);
  await page.goto(`${server.url}#/wax`);
  await page.reload();
  await page.getByText('1 shared picture still waits for you to say what it is of.').waitFor();
  await page.getByRole('link', { name: 'Look at it' }).click();
  await heading(page, 'What is on this picture?');
  await page.getByRole('button', { name: 'Scan its label' }).click();
  await heading(page, 'Scan what is on the picture');
  await page.goBack();
  await heading(page, 'What is on this picture?');
  await page.getByAltText('What was shared').waitFor();
});

/** Shared as the system does it: the page is led there by a form, from somewhere else. */
async function shareAway(page: Page, files: readonly (string | { name: string; mimeType: string; buffer: Buffer })[]): Promise<void> {
  const { action, params } = manifest.share_target;
  await page.goto('about:blank');
  const field = files.length > 0 ? `<input type="file" multiple name="${params.files[0]?.name}">` : '';
  await page.setContent(
    `<form method="post" enctype="multipart/form-data" action="${new URL(action, server.url)}"><input name="title" value="<b>Gallery</b>">${field}<button>Share</button></form>`,
  );
  const [onDisk, made] = [files.filter((file) => typeof file === 'string'), files.filter((file) => typeof file !== 'string')];
  if (files.length > 0) await page.locator('[type=file]').setInputFiles(onDisk.length > 0 ? onDisk : made);
  await page.getByRole('button', { name: 'Share' }).click();
  await heading(page, 'What is on this picture?');
}

test('odd things that are shared are each told, with what was kept, and none is half kept', async () => {
  const mould = aRecorded('mould', { name: 'Heron seal' });
  app = await openApp({ url: server.url });
  const { page } = app;
  const opened = dialogsOf(page);
  await page.locator('.door').first().waitFor();
  await layIn(page, [mould]);
  await keptOffline(page);
  const note = page.locator('.note-problem').first();
  const left = 'What was not taken is still where it was shared from.';

  // Words alone, as a browser shares an address.
  await shareAway(page, []);
  await expect.poll(() => note.textContent()).toBe('No picture came with what was shared. Nothing was changed.');
  await page.getByText('No picture waits here').waitFor();

  const folder = makeProfile();
  const onDisk = (name: string, bytes: Buffer | string, size?: number) => {
    const path = join(folder, name);
    writeFileSync(path, bytes);
    if (size !== undefined) truncateSync(path, size);
    return path;
  };
  const picture = Buffer.from(png);
  const odd = [
    onDisk('notes.txt', 'pot low'),
    onDisk('empty.png', ''),
    onDisk('long.jpg', picture, 61 * 1024 * 1024),
    onDisk('a <img src=x onerror=alert(1)>.png', picture),
    onDisk('broken.jpg', 'pot low'),
  ];
  await shareAway(page, odd);
  await expect
    .poll(() => note.textContent())
    .toBe(`1 file is no picture. 1 file is empty. 1 picture is larger than 60 MB. ${left} 2 pictures were taken.`);
  await page.getByAltText('What was shared').waitFor();
  await page.getByText('1 more picture after this one.').waitFor();
  expect(await axeWhole(page)).toEqual([]);
  await page.locator('.picker-choice', { hasText: 'Heron seal' }).click();
  await page.getByRole('button', { name: 'Add the photo' }).click();
  await page.getByText('Photo added to Heron seal.').waitFor();
  await page.getByRole('button', { name: 'Close', exact: true }).click();
  await page.getByText('This device cannot read that picture.').waitFor();
  await page.locator('.picker-choice', { hasText: 'Heron seal' }).click();
  await page.getByRole('button', { name: 'Add the photo' }).click();
  await page.getByText('That file is no picture this device can read.').waitFor();
  expect(await axeWhole(page)).toEqual([]);
  await page.getByRole('button', { name: 'Do not keep it' }).click();
  await page.getByText('No picture waits here').waitFor();
  await page.evaluate((hash) => Object.assign(window.location, { hash }), `#/mould/${mould.id}`);
  await heading(page, 'Heron seal');
  await page.locator('.thumb[aria-label^="Picture 1 of 1"] img').first().waitFor();
  await expect.poll(() => page.locator('.thumb[aria-label*=" of 2"]').count()).toBe(0);

  // A whole gallery by a slip of the thumb.
  await shareAway(
    page,
    Array.from({ length: 22 }, (_, i) => ({ name: `${i}.png`, mimeType: 'image/png', buffer: picture })),
  );
  await expect.poll(() => note.textContent()).toBe(`2 pictures are too many: 20 can be taken at once. ${left} 20 pictures were taken.`);
  await page.getByText('19 more pictures after this one.').waitFor();
  removeProfile(folder);
  expect(opened).toEqual([]);
  app.assertQuiet();
});

test('a deep link opened cold leads back to the shelves, and Back goes one step at a time', async () => {
  app = await openApp({ url: server.url, path: '?demo#/attention' });
  const { page } = app;
  await heading(page, /needs attention/);
  await page.locator('.attention-title').first().click();
  await page.getByRole('button', { name: 'Back', exact: true }).waitFor();
  const thing = page.url();
  // Cold: a fresh tab at the thing's own address.
  const cold = await app.context.newPage();
  await cold.goto(thing);
  await cold.getByRole('button', { name: 'Back', exact: true }).click();
  await expect.poll(() => new URL(cold.url()).hash).toBe('#/');
  await page.getByRole('button', { name: 'Back', exact: true }).click();
  await heading(page, /needs attention/);
  await page.goBack().catch(() => undefined);
  expect(page.url()).not.toContain('#/thing');
});

test('a file opened with the app leads to where backups are opened; where files open no apps nothing is missed', async () => {
  app = await openApp({
    url: server.url,
    prepare: (context) =>
      context.addInitScript(() => {
        const file = new File(['not ours'], 'backup.zip', { type: 'application/zip' });
        const queue = {
          setConsumer: (hear: (params: object) => void) => setTimeout(() => hear({ files: [{ getFile: async () => file }] }), 300),
        };
        Object.defineProperty(window, 'launchQueue', { value: queue });
      }),
  });
  await expect.poll(() => new URL(app.page.url()).hash).toMatch(/^#\/backup/);
  await heading(app.page, 'Backup');
  await app.page.getByText('Nothing was changed', { exact: false }).first().waitFor();
});
