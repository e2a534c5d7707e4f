import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { axeWhole } from '../support/axe-whole.ts';
import { makeProfile, type OpenApp, openApp, removeProfile } from '../support/browser.ts';
import { chance } from '../support/chance.ts';
import { otherMould, titleOfMould, workingMould } from '../support/demo-moulds.ts';
import { after, grain } from '../support/label-damage.ts';
import { type Grey, labelModules, paintLabel } from '../support/label-picture.ts';
import { pngOf } from '../support/label-png.ts';
import { twoLabelsView, writeTwoLabelVideo } from '../support/label-video.ts';

const [left, right] = [workingMould, otherMould];
const [leftCode, rightCode] = [left.code ?? '', right.code ?? ''];

let app: OpenApp;
let folder = '';
beforeAll(async () => {
  folder = makeProfile();
  const video = join(folder, 'two.y4m');
  writeTwoLabelVideo(video, leftCode, rightCode);
  app = await openApp({ demo: true, video });
  await app.page.locator('.bar').waitFor();
});
afterAll(async () => {
  await app.close();
  removeProfile(folder);
});

const visit = (hash: string) => app.page.evaluate((next) => Object.assign(window.location, { hash: next }), hash);
const opened = (address: string) => app.page.waitForURL((url) => url.hash === address);

/** Each outline lies over its own half of the picture and can be hit with a thumb. */
async function assertOutlined(): Promise<void> {
  const outlines = app.page.locator('.label-outline');
  await expect.poll(() => outlines.count()).toBe(2);
  const frame = await app.page.locator('.label-outlines').boundingBox();
  const middle = (frame?.x ?? 0) + (frame?.width ?? 0) / 2;
  for (const [mould, isLeft] of [
    [left, true],
    [right, false],
  ] as const) {
    const box = await outlines.filter({ hasText: titleOfMould(mould) }).boundingBox();
    if (!box) throw new Error(`${titleOfMould(mould)} has no outline`);
    expect(box.x + box.width / 2 < middle, titleOfMould(mould)).toBe(isLeft);
    expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(48);
  }
}

test('two labels before the camera open nothing by themselves; a tap on an outline opens its mould', async () => {
  const { page } = app;
  await visit('#/scan');
  await page.getByText('Several labels are in view.').waitFor();
  await assertOutlined();
  expect(await axeWhole(page)).toEqual([]);
  await page
    .locator('.label-outline')
    .filter({ hasText: titleOfMould(right) })
    .click({ force: true });
  await opened(`#/mould/${right.id}`);
});

test('the list below the picture serves as well', async () => {
  const { page } = app;
  await visit('#/scan');
  await page.getByRole('button', { name: leftCode }).click();
  await opened(`#/mould/${left.id}`);
});

test('several labels in a still picture can be told apart and tapped, too', async () => {
  const { page } = app;
  await visit('#/scan');
  const buffer = pngOf(twoLabelsView(leftCode, rightCode, chance(8)));
  await page.locator('input[type=file]').setInputFiles({ name: 'drawer.png', mimeType: 'image/png', buffer });
  await page.locator('.label-still img').waitFor();
  await assertOutlined();
  expect(await axeWhole(page)).toEqual([]);
  await page
    .locator('.label-outline')
    .filter({ hasText: titleOfMould(left) })
    .click();
  await opened(`#/mould/${left.id}`);
});

test('a small label in a picture of 12 megapixels is read', async () => {
  const { page } = app;
  const [width, height] = [4000, 3000];
  const label = after(paintLabel(labelModules(leftCode, '1-M'), { width: 200, height: 200, side: 90, turn: 12 }), grain(6, chance(9)));
  const buffer = pngOf(laidOn(width, height, label, 2700, 1900));
  await visit('#/scan');
  await page.locator('input[type=file]').setInputFiles({ name: 'bench.png', mimeType: 'image/png', buffer });
  await opened(`#/mould/${left.id}`);
  app.assertQuiet();
});

function laidOn(width: number, height: number, label: Grey, left: number, top: number): Grey {
  const data = new Float32Array(width * height).fill(130);
  for (let y = 0; y < label.height; y++) data.set(label.data.subarray(y * label.width, (y + 1) * label.width), (top + y) * width + left);
  return { width, height, data };
}
