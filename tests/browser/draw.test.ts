import type { Locator, Page } from 'playwright-core';
import { afterEach, expect, test } from 'vitest';
import { childrenOf } from '../../src/domain/nesting.ts';
import type { Place } from '../../src/domain/shelf.ts';
import { axeWhole } from '../support/axe-whole.ts';
import { type OpenApp, openApp } from '../support/browser.ts';
import { demoShelf, workingMould } from '../support/demo-moulds.ts';

let app: OpenApp | undefined;
afterEach(() => app?.close());

const places = demoShelf.things.place;
const full = places.get(workingMould.at as Place['id']) as Place;
const cabinet = places.get(full.in as Place['id']) as Place;
const inCabinet = childrenOf(demoShelf).get(cabinet.id) ?? [];
const DESK = { width: 1280, height: 800 };

/** Label, and where it is on the board, of each front in its order. */
function drawn(page: Page): Promise<readonly { says: string; x: number; y: number; w: number; h: number }[]> {
  return page.locator('.draw-one').evaluateAll((fronts) =>
    fronts.map((front) => {
      const { offsetLeft: x, offsetTop: y, offsetWidth: w, offsetHeight: h } = front as HTMLElement;
      return { says: front.querySelector('.unseen')?.textContent ?? '', x, y, w, h };
    }),
  );
}

const tap = (page: Page, name: string | RegExp) => page.getByRole('button', { name, exact: true }).click();
const front = (page: Page, label: string) => page.locator('.draw-one', { has: page.getByText(new RegExp(`^\\w+ ${label}, `)) });
const told = (page: Page, text: string) => page.locator('.draw-told', { hasText: text }).waitFor();

/** Drags from the middle of it, as a finger does; px of the screen. */
async function fingerDrag(page: Page, from: Locator, across: number, down: number): Promise<void> {
  await from.scrollIntoViewIfNeeded();
  const { x, y, width, height } = (await from.boundingBox()) ?? { x: 0, y: 0, width: 0, height: 0 };
  const session = await page.context().newCDPSession(page);
  for (const part of [0, 0.25, 0.5, 0.75, 1]) {
    const touchPoints = [{ x: x + width / 2 + across * part, y: y + height / 2 + down * part }];
    await session.send('Input.dispatchTouchEvent', { type: part === 0 ? 'touchStart' : 'touchMove', touchPoints });
  }
  await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
}

test.each(['light', 'dark'] as const)('a new cabinet is drawn by thumb, step by step, and nothing hinders: %s', async (colorScheme) => {
  app = await openApp({ colorScheme, path: '#/bring-in' });
  const { page } = app;
  await page.evaluate(() => Object.assign(window.location, { hash: '#/draw/new' }));
  await page.getByText('empty cabinet').first().click();
  await page.getByRole('heading', { name: 'Add a cabinet' }).waitFor();
  await page.getByRole('link', { name: 'Draw the front yourself' }).click();
  await told(page, 'This is the whole front.');
  await page.locator('.draw-one').click();
  await tap(page, 'Cut');
  for (let more = 2; more < 4; more++) await tap(page, 'One above the other: one more');
  await tap(page, 'Side by side: one more');
  expect(await axeWhole(page)).toEqual([]);
  await tap(page, 'Cut it in 8');
  await expect.poll(() => drawn(page)).toHaveLength(8);
  expect(await axeWhole(page)).toEqual([]);

  // Two become one; undone, done again.
  await front(page, '1').click();
  await tap(page, 'Several');
  await front(page, '5').click();
  await tap(page, 'Merge');
  await told(page, 'They are one now.');
  await expect.poll(() => drawn(page)).toHaveLength(7);
  await tap(page, 'Undo');
  await expect.poll(() => drawn(page)).toHaveLength(8);
  await tap(page, 'Redo');
  await expect.poll(() => drawn(page)).toHaveLength(7);
  await tap(page, '✓ Several');

  // Its neighbour gives way to a taller one, and a tap that cannot be done says why.
  await front(page, '2').click();
  const before = await drawn(page);
  await tap(page, 'Size');
  await tap(page, 'Taller');
  await tap(page, 'Taller');
  await expect.poll(async () => ((await drawn(page))[1]?.h ?? 0) - (before[1]?.h ?? 0)).toBeGreaterThan(5);
  await expect.poll(async () => ((await drawn(page))[2]?.y ?? 0) - (before[2]?.y ?? 0)).toBeGreaterThan(5);
  await tap(page, 'Move it up');
  await told(page, '2 and 1 would cover each other.');
  await tap(page, 'Done');
  await tap(page, 'About');
  await page.getByLabel('Label on the front').fill('Seals');
  await page.getByRole('radio', { name: 'shelf' }).click();
  await page.getByLabel('Pieces that fit').fill('40');
  expect(await axeWhole(page)).toEqual([]);
  await tap(page, 'Done');
  await told(page, 'Written on the drawing.');

  // Without a name it is not saved; what was drawn is there after a reload, with its steps.
  await tap(page, 'Save');
  await page.getByText('Say what you call the cabinet.').first().waitFor();
  await page.getByLabel('What you call it').fill('<b>Map</b> chest');
  await page.getByLabel('Or a new room').fill('Cellar');
  await page.reload();
  await front(page, 'Seals').waitFor();
  await expect.poll(() => page.getByLabel('What you call it').inputValue()).toBe('<b>Map</b> chest');
  await tap(page, 'Undo');
  await front(page, '2').waitFor();
  await tap(page, 'Redo');
  await tap(page, 'Save');
  await page.getByText('<b>Map</b> chest stands on your shelves.').waitFor();
  await page.waitForSelector('.pager-page:not([inert]) .front');
  await expect.poll(() => page.locator('.pager-page:not([inert]) .front').count()).toBe(7);
  await expect.poll(() => page.locator('.tab-room').textContent()).toBe('Cellar');
  await expect.poll(() => page.locator('.front-open').count()).toBe(1);
  await tap(page, 'Undo');
  await page.getByRole('heading', { name: 'Your cabinets belong here' }).waitFor();
  app.assertQuiet();
});

test('a cabinet is changed by keys alone', async () => {
  app = await openApp({ demo: true, viewport: DESK, path: `#/draw/${cabinet.id}` });
  const { page } = app;
  await page.locator('.draw-one').first().waitFor();
  const before = await drawn(page);
  expect(before).toHaveLength(inCabinet.length);
  const keys = page.keyboard;
  await page.locator('.draw-one[tabindex="0"]').focus();
  await expect.poll(() => page.locator('.draw-one[tabindex="0"]').count()).toBe(1);
  await keys.press('ArrowDown');
  await keys.press('ArrowUp');
  await page.locator('.draw-picked').waitFor();
  await keys.press('Shift+Digit2');
  await told(page, 'Cut in 2.');
  await expect.poll(() => drawn(page)).toHaveLength(before.length + 1);
  await expect.poll(() => page.locator('.draw-picked').count()).toBe(2);
  await keys.press('m');
  await told(page, 'They are one now');
  await expect.poll(() => drawn(page)).toEqual(before.map((each) => expect.objectContaining({ x: each.x, w: each.w })));
  await keys.press('3');
  await told(page, 'Cut in 3.');
  // The app's own keys leave the board alone: 2 is no way to the search here.
  expect(new URL(page.url()).hash).toBe(`#/draw/${cabinet.id}`);
  await keys.press('Control+z');
  await keys.press('Control+z');
  await keys.press('Control+z');
  await expect.poll(() => drawn(page)).toEqual(before);
  await keys.press('Control+y');
  await expect.poll(() => drawn(page)).toHaveLength(before.length + 1);
  await keys.press('Control+z');
  // Somewhere with a neighbour below, the lower edge goes up and down.
  await keys.press('Alt+ArrowUp');
  await told(page, 'Lower.');
  await keys.press('Shift+ArrowDown');
  await expect.poll(() => page.locator('.draw-picked').count()).toBe(2);
  await keys.press('Escape');
  await expect.poll(() => page.locator('.draw-picked').count()).toBe(0);
  await keys.press('Space');
  await keys.press('r');
  await page.getByLabel('Label on the front').fill('Top');
  await keys.press('Enter');
  await told(page, 'Written on the drawing.');
  await page.getByText('Keys', { exact: true }).click();
  await page.getByText('cut in so many, side by side').waitFor();
  expect(await axeWhole(page)).toEqual([]);
  await tap(page, 'Save');
  await page.getByText('is drawn anew.').waitFor();
  await page.locator('.pager-page:not([inert]) .front-label', { hasText: 'Top' }).waitFor();
  app.assertQuiet();
});

test('a full drawer is taken out with somewhere for its moulds, a drag moves an edge, and one Undo brings all back', async () => {
  app = await openApp({ demo: true, path: `#/draw/${cabinet.id}` });
  const { page } = app;
  const label = full.label ?? '';
  await front(page, label).click();
  const [hole] = (await drawn(page)).filter(({ says }) => says.includes(` ${label},`));
  await tap(page, 'Take out');
  await page.getByRole('dialog').getByText(`${label} holds`).waitFor();
  expect(await axeWhole(page)).toEqual([]);
  const into = page
    .getByRole('dialog')
    .getByRole('button', { name: /^Into / })
    .first();
  const target = ((await into.textContent()) ?? '').replace('Into ', '');
  await into.click();
  await expect.poll(() => drawn(page)).toHaveLength(inCabinet.length - 1);
  await page.reload();
  await expect.poll(() => drawn(page)).toHaveLength(inCabinet.length - 1);
  // A finger drags what is chosen into the free space, and the page does not scroll along.
  await front(page, target).click();
  const [before] = (await drawn(page)).filter(({ says }) => says.includes(` ${target},`));
  await fingerDrag(page, front(page, target), (hole?.x ?? 0) - (before?.x ?? 0), (hole?.y ?? 0) - (before?.y ?? 0));
  await told(page, 'Moved.');
  await tap(page, 'Undo');
  await expect.poll(async () => (await drawn(page)).find(({ says }) => says.includes(` ${target},`))).toEqual(before);
  // Its corner dragged by a mouse: the front below, where there is one, gives way.
  await front(page, target).click();
  const [was] = (await drawn(page)).filter(({ says }) => says.includes(` ${target},`));
  await page.locator('.draw-corner').scrollIntoViewIfNeeded();
  const corner = await page.locator('.draw-corner').boundingBox();
  const [x, y] = [(corner?.x ?? 0) + 24, (corner?.y ?? 0) + 24];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x - 30, y, { steps: 4 });
  await page.mouse.up();
  await told(page, 'Resized.');
  await expect
    .poll(async () => (was?.w ?? 0) - ((await drawn(page)).find(({ says }) => says.includes(` ${target},`))?.w ?? 0))
    .toBeGreaterThan(15);
  await tap(page, 'Save');
  await page.getByText('is drawn anew.').waitFor();
  const path = page.locator('[role=main] .place-link', { hasText: ` › ${target}` });
  await page.evaluate((hash) => Object.assign(window.location, { hash }), `#/mould/${workingMould.id}`);
  await path.first().waitFor();
  await tap(page, 'Undo');
  await page
    .locator('[role=main] .place-link', { hasText: ` › ${label}` })
    .first()
    .waitFor();
  app.assertQuiet();
});

test('a photo lies under the drawing and is kept with the cabinet; rooms are made, and cabinets ordered in them', async () => {
  app = await openApp({ demo: true, viewport: DESK, colorScheme: 'dark', path: `#/draw/${cabinet.id}` });
  const { page } = app;
  await page.locator('.draw-one').first().waitFor();
  const bytes = await page.evaluate(async () => {
    const canvas = Object.assign(document.createElement('canvas'), { width: 300, height: 500 });
    canvas.getContext('2d')?.fillRect(0, 0, 200, 200);
    const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/jpeg'));
    return [...new Uint8Array((await blob?.arrayBuffer()) ?? new ArrayBuffer(0))];
  });
  await page.locator('input[type=file]').setInputFiles({ name: 'a.jpg', mimeType: 'image/jpeg', buffer: Buffer.from(bytes) });
  await page.locator('.draw-under img').waitFor();
  await page.getByLabel(/^How much of it is seen/).fill('80');
  await expect
    .poll(() => page.locator('.draw-area').evaluate((area) => (area as HTMLElement).style.getPropertyValue('--cover')))
    .toBe('20%');
  await page.locator('.draw-one').first().click();
  expect(await axeWhole(page)).toEqual([]);
  await tap(page, 'Save');
  await page.getByText('is drawn anew.').waitFor();
  await page.evaluate((hash) => Object.assign(window.location, { hash }), `#/draw/${cabinet.id}`);
  // Kept with the cabinet now, it can be laid under the next drawing, too.
  await page.getByRole('button', { name: cabinet.name ?? '', exact: true }).click();
  await page.locator('.draw-under img').waitFor();
  await page.getByRole('button', { name: 'No photo' }).click();
  await page.locator('.draw-under').waitFor({ state: 'detached' });
  // And under that of any other cabinet.
  await page.evaluate(() => Object.assign(window.location, { hash: '#/draw/new' }));
  await page.getByRole('heading', { name: 'Draw a cabinet' }).waitFor();
  await page.getByText('Pictures of other places (1)').click();
  await page.getByRole('button', { name: cabinet.name ?? '', exact: true }).click();
  await page.locator('.draw-under img').waitFor();
  expect(await axeWhole(page)).toEqual([]);

  await page.evaluate(() => Object.assign(window.location, { hash: '#/rooms' }));
  await page.getByLabel('What you call it').fill('Cellar');
  await tap(page, 'Add the room');
  await page.getByRole('heading', { name: 'Cellar' }).waitFor();
  expect(await axeWhole(page)).toEqual([]);
  const rows = page.locator('.rooms-row .row-title');
  await rows.nth(1).waitFor();
  const [one, two] = await rows.allTextContents();
  await tap(page, `${one}: later`);
  await expect.poll(async () => (await rows.allTextContents()).slice(0, 2)).toEqual([two, one]);
  await tap(page, 'Undo');
  await expect.poll(async () => (await rows.allTextContents()).slice(0, 2)).toEqual([one, two]);
  app.assertQuiet();
});

test('a cabinet taken out for good sends what is in it elsewhere, in one action', async () => {
  app = await openApp({ demo: true, path: `#/place/${full.id}` });
  const { page } = app;
  await tap(page, 'More about this place');
  await tap(page, 'Retire');
  await page.getByText('Say where it goes, then why').waitFor();
  expect(await axeWhole(page)).toEqual([]);
  const other = inCabinet.find(({ id }) => id !== full.id) as Place;
  await page.getByLabel('Where does it all go?').fill(`${cabinet.name} ${other.label}`);
  await page.locator('.picker-choice').first().click();
  await tap(page, 'removed');
  await page.getByText('is retired: removed.').waitFor();
  await page.locator('.contents-count').getByText('empty', { exact: true }).waitFor();
  await tap(page, 'Undo');
  await page.locator('.contents-count').getByText('empty', { exact: true }).waitFor({ state: 'detached' });
  app.assertQuiet();
});

test('a drawing that was damaged where it is kept opens as it was a step before, one that cannot be read afresh, and both are told', async () => {
  app = await openApp({ path: '?demo#/draw/new' });
  const { page } = app;
  const cut = async () => {
    await page.locator('.draw-one').first().click();
    await tap(page, 'Cut');
    await tap(page, 'Cut it in 2');
  };
  await told(page, 'This is the whole front.');
  await cut();
  await expect.poll(() => drawn(page)).toHaveLength(2);
  const damage = async (from: string, to: string) => {
    const changed = await page.evaluate(
      ([was, is]) => {
        const keys = Object.keys(localStorage).filter((key) => key.includes('draw:new'));
        for (const key of keys) localStorage.setItem(key, (localStorage.getItem(key) ?? '').replace(new RegExp(was), is));
        return keys.filter((key) => localStorage.getItem(key)?.includes(is)).length;
      },
      [from, to] as const,
    );
    expect(changed).toBe(1);
    await page.reload();
    await page.locator('.draw-one').first().waitFor();
  };
  const note = page.locator('.draw .note');
  const kept = () => page.evaluate(() => Object.entries(localStorage).find(([key]) => key.includes('draw:'))?.[1]);
  await damage('"now":\\{', '"now":{"a":1},"old":{');
  await expect.poll(() => drawn(page)).toHaveLength(1);
  await expect
    .poll(() => note.textContent())
    .toBe(
      'The last steps of the unfinished drawing could not be read. It is shown as it was before them, and your shelves are as they were.',
    );
  await damage('"steps":', '"stops":');
  await expect.poll(() => drawn(page)).toHaveLength(1);
  await expect
    .poll(() => note.textContent())
    .toBe('The unfinished drawing could not be read. Your shelves are as they were, and drawing begins afresh.');
  expect(await axeWhole(page)).toEqual([]);
  // It lies there until something is drawn.
  expect(await kept()).toContain('"stops":');
  await cut();
  await expect.poll(() => drawn(page)).toHaveLength(2);
  expect(await kept()).toContain('"steps":');

  // Of a cabinet that stands on the shelves, a draft cut short.
  await page.evaluate((hash) => Object.assign(window.location, { hash }), `#/draw/${cabinet.id}`);
  await page.getByRole('heading', { name: `Draw ${cabinet.name}` }).waitFor();
  await expect.poll(() => drawn(page)).toHaveLength(inCabinet.length);
  await cut();
  await expect.poll(() => drawn(page)).toHaveLength(inCabinet.length + 1);
  await page.evaluate((id) => {
    const key = Object.keys(localStorage).find((each) => each.includes(id)) ?? '';
    localStorage.setItem(key, localStorage.getItem(key)?.slice(0, -30) ?? '');
  }, `draw:${cabinet.id}`);
  await page.reload();
  await page.getByText('The cabinet is as it was, and drawing begins from how it stands.').waitFor();
  await expect.poll(() => drawn(page)).toHaveLength(inCabinet.length);
  await page.emulateMedia({ colorScheme: 'dark' });
  expect(await axeWhole(page)).toEqual([]);
});

test('what was typed about a front, or of its size, is taken however its sheet is left; what cannot be taken is said before it goes', async () => {
  app = await openApp({ demo: true, path: `#/draw/${cabinet.id}`, viewport: DESK });
  const { page } = app;
  const fits = page.getByLabel('Pieces that fit');
  const opened = async (sheet: string) => {
    await front(page, full.label ?? '').click();
    await tap(page, sheet);
  };
  await opened('About');
  await fits.fill('36.5');
  await tap(page, 'Close');
  await page.getByRole('alert').getByText('Close once more to leave all of it as it was.').waitFor();
  await fits.fill('37');
  await expect.poll(() => page.getByRole('alert').count()).toBe(0);
  await tap(page, 'Close');
  await told(page, 'Written on the drawing.');

  await tap(page, 'About');
  await expect.poll(() => fits.inputValue()).toBe('37');
  await fits.fill('38.5');
  await tap(page, 'Close');
  await tap(page, 'Close');
  await expect.poll(() => page.getByRole('dialog').count()).toBe(0);

  await tap(page, 'About');
  await expect.poll(() => fits.inputValue()).toBe('37');
  await fits.fill('39');
  await page.evaluate(() => Object.assign(window.location, { hash: '#/where' }));
  await expect.poll(() => page.locator('.draw').count()).toBe(0);
  await page.goBack();
  await opened('About');
  await expect.poll(() => fits.inputValue()).toBe('39');
  await page.keyboard.press('Escape');
  await expect.poll(() => page.getByRole('dialog').count()).toBe(0);

  await opened('Size');
  await tap(page, 'Exact');
  await tap(page, 'Close');
  await expect.poll(() => page.getByRole('dialog').count()).toBe(0);
  await tap(page, 'Undo');
  await tap(page, 'Done');
  await tap(page, 'About');
  await expect.poll(() => fits.inputValue()).toBe('37');
  app.assertQuiet();
});
