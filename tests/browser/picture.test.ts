import type { Page } from 'playwright-core';
import { afterEach, expect, test } from 'vitest';
import { type OpenApp, openApp } from '../support/browser.ts';
import { loneMould } from '../support/demo-moulds.ts';
import { asPhotographed, SECRET } from '../support/photo.ts';

let app: OpenApp | undefined;
afterEach(() => app?.close());

/** A landscape JPEG, left half red and right half blue, drawn by the browser. */
async function drawn(page: Page, width: number, height: number, type = 'image/jpeg'): Promise<Buffer> {
  const bytes = await page.evaluate(
    async ([w, h, kind]) => {
      const canvas = Object.assign(document.createElement('canvas'), { width: w, height: h });
      const context = canvas.getContext('2d') as CanvasRenderingContext2D;
      if (kind === 'image/jpeg') {
        context.fillStyle = 'red';
        context.fillRect(0, 0, w / 2, h);
        context.fillStyle = 'blue';
        context.fillRect(w / 2, 0, w / 2, h);
      }
      const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, kind));
      return [...new Uint8Array((await blob?.arrayBuffer()) ?? new ArrayBuffer(0))];
    },
    [width, height, type] as const,
  );
  return Buffer.from(bytes);
}

interface Kept {
  readonly sha: string;
  readonly type: string;
  readonly bytes: number[];
  readonly width: number;
  readonly height: number;
  /** Red, green and blue in the middle of the upper and of the lower half. */
  readonly upper: number[];
  readonly lower: number[];
}

/** The one JPEG that the demo's database keeps: its own pictures are drawings. */
function kept(page: Page, store: 'pictures' | 'thumbs'): Promise<Kept> {
  return page.evaluate(
    (from) =>
      new Promise<Kept>((resolve, reject) => {
        const open = indexedDB.open('mouldkeep-demo');
        open.onsuccess = () => {
          const read = open.result.transaction(from).objectStore(from).getAll();
          read.onsuccess = async () => {
            open.result.close();
            const photos = (read.result as { sha: string; type: string; bytes: ArrayBuffer }[]).filter(({ type }) => type === 'image/jpeg');
            const [row] = photos;
            if (!row || photos.length > 1) return reject(new Error(`${photos.length} photos are kept`));
            const bitmap = await createImageBitmap(new Blob([row.bytes], { type: row.type }), { imageOrientation: 'none' });
            const { width, height } = bitmap;
            const context = new OffscreenCanvas(width, height).getContext('2d') as OffscreenCanvasRenderingContext2D;
            context.drawImage(bitmap, 0, 0);
            const at = (y: number) => [...context.getImageData(Math.floor(width / 2), Math.floor(height * y), 1, 1).data.slice(0, 3)];
            resolve({
              sha: row.sha,
              type: row.type,
              bytes: [...new Uint8Array(row.bytes)],
              width,
              height,
              upper: at(0.25),
              lower: at(0.75),
            });
          };
        };
      }),
    store,
  );
}

async function addPhoto(photo: (page: Page) => Promise<Buffer>): Promise<Page> {
  app = await openApp({ demo: true, path: `#/mould/${loneMould.id}/failed` });
  const { page } = app;
  await page.locator('input[type=file]').setInputFiles({ name: 'IMG_1.jpg', mimeType: 'image/jpeg', buffer: await photo(page) });
  await page.locator('.photos .thumb img').waitFor();
  return page;
}

test('a photo taken upright is kept upright, without a word of what the camera wrote into it, under the hash of its bytes', async () => {
  let given: Buffer = Buffer.alloc(0);
  const page = await addPhoto(async (open) => {
    given = asPhotographed(await drawn(open, 900, 600));
    return given;
  });
  expect(given.includes(SECRET)).toBe(true);
  const whole = await kept(page, 'pictures');
  expect([whole.width, whole.height]).toEqual([600, 900]);
  // Turned a quarter to the right, what was left is on top.
  expect(whole.upper[0]).toBeGreaterThan(200);
  expect(whole.lower[2]).toBeGreaterThan(200);
  const bytes = Buffer.from(whole.bytes);
  expect(bytes.includes(SECRET)).toBe(false);
  expect(bytes.includes('Exif')).toBe(false);
  const digest = await crypto.subtle.digest('SHA-256', bytes);
  expect(whole.sha).toBe(Buffer.from(digest).toString('hex'));
  const thumb = await kept(page, 'thumbs');
  expect([thumb.sha, thumb.width, thumb.height]).toEqual([whole.sha, 160, 240]);
  expect(Buffer.from(thumb.bytes).includes('Exif')).toBe(false);
  app?.assertQuiet();
});

test('a small one is not blown up, and what is see-through turns white', async () => {
  const page = await addPhoto((open) => drawn(open, 120, 80, 'image/png'));
  const whole = await kept(page, 'pictures');
  expect([whole.width, whole.height]).toEqual([120, 80]);
  expect([...whole.upper, ...whole.lower].every((part) => part > 250)).toBe(true);
});

test('a file far too large for a picture is refused in words, without reading it', async () => {
  app = await openApp({ demo: true, path: `#/mould/${loneMould.id}/failed` });
  const { page } = app;
  await page.locator('input[type=file]').waitFor({ state: 'attached' });
  await page.evaluate(() => {
    const input = document.querySelector<HTMLInputElement>('input[type=file]');
    const files = new DataTransfer();
    files.items.add(new File([new Uint8Array(100 * 1024 * 1024)], 'huge.jpg', { type: 'image/jpeg' }));
    if (input) input.files = files.files;
    input?.dispatchEvent(new Event('change', { bubbles: true }));
  });
  await page.getByText('That file is 100 MB; a picture may have up to 60 MB.').waitFor();
  await page.getByText('No picture was added; everything else you typed is still in the form.').waitFor();
});
