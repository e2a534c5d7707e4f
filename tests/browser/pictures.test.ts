import type { Page } from 'playwright-core';
import { afterEach, expect, test } from 'vitest';
import { axeWhole } from '../support/axe-whole.ts';
import { type OpenApp, openApp } from '../support/browser.ts';
import { loneMould } from '../support/demo-moulds.ts';
import { asPhotographed, SECRET } from '../support/photo.ts';

let app: OpenApp | undefined;
afterEach(() => app?.close());

/** A JPEG of four colours: red, green in the upper row, blue, white in the lower. */
async function fourColours(page: Page, width: number, height: number): Promise<Buffer> {
  const bytes = await page.evaluate(
    async ([w, h]) => {
      const canvas = Object.assign(document.createElement('canvas'), { width: w, height: h });
      const context = canvas.getContext('2d') as CanvasRenderingContext2D;
      for (const [i, colour] of ['#f00', '#0f0', '#00f', '#fff'].entries()) {
        context.fillStyle = colour;
        context.fillRect((i % 2) * (w / 2), Math.floor(i / 2) * (h / 2), w / 2, h / 2);
      }
      const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/jpeg', 0.95));
      return [...new Uint8Array((await blob?.arrayBuffer()) ?? new ArrayBuffer(0))];
    },
    [width, height] as const,
  );
  return Buffer.from(bytes);
}

/** What is kept: each picture's size, whether anything a camera wrote is in it, and its four corners as letters, row by row. */
function kept(page: Page): Promise<{ size: string; hasExif: boolean; corners: string }[]> {
  return page.evaluate(
    (secret) =>
      new Promise((resolve) => {
        const open = indexedDB.open('mouldkeep-demo');
        open.onsuccess = () => {
          const read = open.result.transaction('pictures').objectStore('pictures').getAll();
          read.onsuccess = async () => {
            open.result.close();
            const photos = (read.result as { type: string; bytes: ArrayBuffer }[]).filter(({ type }) => type === 'image/jpeg');
            const looked = photos.map(async ({ type, bytes }) => {
              const bitmap = await createImageBitmap(new Blob([bytes], { type }), { imageOrientation: 'none' });
              const { width, height } = bitmap;
              const context = new OffscreenCanvas(width, height).getContext('2d') as OffscreenCanvasRenderingContext2D;
              context.drawImage(bitmap, 0, 0);
              const corners = [0.25, 0.75].flatMap((y) =>
                [0.25, 0.75].map((x) => {
                  const [r = 0, g = 0, b = 0] = context.getImageData(Math.floor(width * x), Math.floor(height * y), 1, 1).data;
                  return r > 128 && g > 128 ? 'W' : r > 128 ? 'R' : g > 128 ? 'G' : b > 128 ? 'B' : '?';
                }),
              );
              const text = new TextDecoder('latin1').decode(bytes);
              return { size: `${width}×${height}`, hasExif: text.includes('Exif') || text.includes(secret), corners: corners.join('') };
            });
            resolve(await Promise.all(looked));
          };
        };
      }),
    SECRET,
  );
}

const files = (photos: readonly Buffer[]) => photos.map((buffer, i) => ({ name: `IMG_${i}.jpg`, mimeType: 'image/jpeg', buffer }));

/** Corners of what is shown for each orientation (CIPA DC-008): how rows and columns of the stored picture lie in the scene. */
const UPRIGHT: Readonly<Record<number, string>> = {
  1: 'RGBW',
  2: 'GRWB',
  3: 'WBGR',
  4: 'BWRG',
  5: 'RBGW',
  6: 'BRWG',
  7: 'WGBR',
  8: 'GWRB',
};

test('photos are turned upright however the camera was held, several at once, at most 2,048 px, without what the camera wrote', async () => {
  app = await openApp({ demo: true, path: `#/pictures/${loneMould.id}` });
  const { page } = app;
  await page.getByText('No pictures yet').waitFor();
  expect(await axeWhole(page)).toEqual([]);
  // Sizes all different, so that each can be told.
  const photos = await Promise.all(
    Object.keys(UPRIGHT).map(async (held) => asPhotographed(await fourColours(page, 200 + 20 * Number(held), 100), Number(held))),
  );
  await page.locator('input[type=file]').setInputFiles(files([...photos, await fourColours(page, 4000, 1000)]));
  await page.getByText('9 photos added.').waitFor();
  const found = new Map((await kept(page)).map((each) => [each.size, each]));
  for (const [held, corners] of Object.entries(UPRIGHT)) {
    const long = 200 + 20 * Number(held);
    const size = Number(held) > 4 ? `100×${long}` : `${long}×100`;
    expect([held, found.get(size)]).toEqual([held, { size, hasExif: false, corners }]);
  }
  expect(found.get('2048×512')?.corners).toBe('RGBW');
  app.assertQuiet();
});

test('pictures stand side by side by date, move and grow together, can be chosen, taken off, and put back', async () => {
  app = await openApp({ demo: true, path: `#/mould/${loneMould.id}/inspect`, colorScheme: 'dark' });
  const { page } = app;
  await page.getByRole('radio', { name: /^watch/i }).check();
  await page.locator('input[type=file]').setInputFiles(files([await fourColours(page, 300, 200)]));
  await page.locator('.photos .thumb img').waitFor();
  await page.locator('.screen-actions .button-main').click();
  await page.locator('.toast').waitFor();
  await page.evaluate((id) => {
    window.location.hash = `#/pictures/${id}`;
  }, loneMould.id);
  await page.locator('.picture-line').waitFor();
  await expect.poll(() => page.locator('.pane').count()).toBe(1);
  await page.locator('input[type=file]').setInputFiles(files([await fourColours(page, 320, 200), await fourColours(page, 340, 200)]));
  await page.getByText('2 photos added.').waitFor();
  await expect.poll(() => page.locator('.pane').count()).toBe(2);
  const says = () => page.locator('.pane figcaption .row-detail').allTextContents();
  const lines = () => page.locator('.picture-line .row-detail').allTextContents();
  await expect.poll(lines).toEqual([expect.stringContaining('found watch'), 'Added 2 pictures.', 'Added 2 pictures.']);
  await expect.poll(() => says()).toEqual([expect.stringContaining('found watch'), 'Added 2 pictures.']);
  // Only the thing's own first picture is its portrait.
  await expect.poll(() => page.getByText('known by this one', { exact: true }).count()).toBe(1);
  expect(await axeWhole(page)).toEqual([]);

  // By button, by key, by swipe.
  await page.getByRole('button', { name: 'Right: the picture before' }).click();
  await expect.poll(() => page.locator('.pane-turns span').allTextContents()).toEqual(['1 of 3', '2 of 3']);
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Shift+ArrowRight');
  await expect.poll(() => page.locator('.pane-turns span').allTextContents()).toEqual(['2 of 3', '3 of 3']);
  const glass = await page.locator('.pane-glass').first().boundingBox();
  const [x, y] = [(glass?.x ?? 0) + (glass?.width ?? 0) / 2, (glass?.y ?? 0) + (glass?.height ?? 0) / 2];
  const drag = async (dx: number) => {
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + dx, y, { steps: 4 });
    await page.mouse.up();
  };
  await drag(70);
  await expect.poll(() => page.locator('.pane-turns span').allTextContents()).toEqual(['1 of 3', '3 of 3']);
  // Magnified, both move in step.
  await page.getByRole('button', { name: 'Larger' }).click();
  await page.keyboard.press('+');
  await drag(40);
  const transforms = () => page.locator('.pane-picture').evaluateAll((all) => all.map((each) => (each as HTMLElement).style.transform));
  await expect.poll(async () => new Set(await transforms()).size).toBe(1);
  await expect.poll(async () => (await transforms())[0]).toMatch(/translate\([1-9].*scale\(2\.25\)/);
  await page.getByRole('button', { name: 'Whole' }).click();

  // Chosen, taken off, put back.
  await page.getByRole('button', { name: /^Known by this one: .*found watch/ }).click();
  await page.getByText('It is known by this picture now.').waitFor();
  await expect.poll(() => page.locator('.picture-line').first().getByText('known by this one', { exact: true }).count()).toBe(1);
  await page.getByRole('button', { name: /^Take off: .*found watch/ }).click();
  await page.getByText('The picture was taken off.').waitFor();
  await expect.poll(async () => (await lines()).length).toBe(2);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(async () => (await lines()).length).toBe(3);
  await page.setViewportSize({ width: 320, height: 640 });
  await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth)).toBe(true);
  // A reload finds it all, and the mould leads here.
  await page.evaluate((id) => {
    window.location.hash = `#/mould/${id}`;
  }, loneMould.id);
  await page.getByRole('link', { name: 'Side by side' }).click();
  await page.locator('.pane img').first().waitFor();
  app.assertQuiet();
});
