import { afterEach, expect, test } from 'vitest';
import { descendantsOf } from '../../src/domain/lineage/descent.ts';
import { familyOf } from '../../src/domain/lineage/family.ts';
import { smallerThanLabel } from '../../src/domain/size/expected.ts';
import { titleOf } from '../../src/domain/title.ts';
import { axeWhole } from '../support/axe-whole.ts';
import { type OpenApp, openApp } from '../support/browser.ts';
import { demoMould, demoShelf, titleOfMould } from '../support/demo-moulds.ts';

let app: OpenApp | undefined;
afterEach(() => app?.close());

const original = [...demoShelf.things.master.values()]
  .filter((master) => !master.from?.length)
  .sort((a, b) => descendantsOf(demoShelf, b.id).size - descendantsOf(demoShelf, a.id).size)[0];
const made = demoMould(
  'of which waxes are on hand',
  (mould) =>
    !mould.retired &&
    (mould.runs?.length ?? 0) > 0 &&
    mould.shots > 20 &&
    [...demoShelf.things.injectedWax.values()].some((pile) => pile.mould === mould.id && pile.pieces > 3 && pile.state === 'raw'),
);
const hash = (page: OpenApp['page'], to: string) => page.evaluate((at) => Object.assign(window.location, { hash: at }), to);

test('a lineage is drawn with generations as rows, is dragged, pinched and zoomed, and is told as a list', async () => {
  app = await openApp({ demo: true, path: `#/lineage/${original?.id}` });
  const { page } = app;
  await page.locator('.lineage-card').first().waitFor();
  await page.locator('.lineage-here').first().waitFor();
  await expect.poll(() => page.locator('.lineage-band').allTextContents()).toContain('generation 1');
  const at = () => page.locator('.lineage-layer').evaluate((layer) => (layer as HTMLElement).style.transform);
  const begun = await at();
  const box = await page.locator('.lineage-pane').boundingBox();
  if (!box) throw new Error('the picture is not there');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x - 80, y - 40, { steps: 4 });
  await page.mouse.up();
  await expect.poll(() => at()).not.toBe(begun);
  expect(page.url()).toContain('#/lineage/');
  const zoomOf = async () => Number(/scale\(([\d.]+)\)/.exec(await at())?.[1]);
  const before = await zoomOf();
  await page.getByRole('button', { name: 'Closer' }).click();
  await expect.poll(() => zoomOf()).toBeGreaterThan(before);
  await page.keyboard.press('0');
  await expect.poll(() => zoomOf()).toBeLessThan(before);
  const session = await app.context.newCDPSession(page);
  const two = (apart: number) => [x - apart, x + apart].map((fx, id) => ({ x: fx, y, id }));
  const small = await zoomOf();
  await session.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: two(20) });
  for (const apart of [40, 60, 80]) await session.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: two(apart) });
  await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  await expect.poll(() => zoomOf()).toBeGreaterThan(small * 2);
  await page.getByText('The same as a list').click();
  const listed = familyOf(demoShelf, original?.id ?? '', 'line').filter(({ noun }) => noun !== 'unknown');
  await expect.poll(() => page.locator('.outline a').count()).toBe(listed.length);
  expect(await axeWhole(page)).toEqual([]);
  await page.emulateMedia({ colorScheme: 'dark' });
  expect(await axeWhole(page)).toEqual([]);
  await page.getByRole('button', { name: 'This one' }).click();
  await page.locator('.lineage-here .lineage-head').click();
  await page.getByRole('heading', { level: 1, name: titleOf(demoShelf, original) }).waitFor();
  app.assertQuiet();
});

test('a mould’s page tells generation and size; its doubtful waxes are traced, marked in one step, looked at, and undone', async () => {
  app = await openApp({ demo: true, path: `#/mould/${made.id}` });
  const { page } = app;
  await page.getByText(/^Generation \d/).waitFor();
  await page.locator('.sizes tbody tr').first().waitFor();
  await page.locator('.lineage-still').scrollIntoViewIfNeeded();
  await page.locator('.lineage-still .lineage-card.lineage-here').waitFor();
  expect(await axeWhole(page)).toEqual([]);
  await page.locator('.lineage-still .lineage-card.lineage-here').click();
  await page.getByRole('heading', { level: 1, name: /^Lineage: / }).waitFor();
  await page.goBack();
  await page.getByRole('link', { name: 'Trace its waxes' }).click();
  await page.getByRole('heading', { level: 2, name: titleOfMould(made) }).waitFor();
  await page.getByText('All of them').click();
  await page.getByText(/good wax(es)? came from its doubtful shots/).waitFor();
  await page.getByRole('heading', { name: /^Injected waxes on hand/ }).waitFor();
  expect(await axeWhole(page)).toEqual([]);
  await page.emulateMedia({ colorScheme: 'dark' });
  expect(await axeWhole(page)).toEqual([]);
  await page.getByText('From a shot on').click();
  await page.getByLabel('First doubtful shot').fill(String(made.shots + 1));
  await page.getByText('None of its logged runs is in doubt.').waitFor();
  await page.getByLabel('First doubtful shot').fill('1');
  await page.getByRole('button', { name: /for a look$/ }).click();
  await page.getByText(/marked for a look; (it is|they are) in To do/).waitFor();
  const marked = page.locator('.list .row-link').first();
  await marked.click();
  await page.getByRole('heading', { name: 'Marked for a look' }).waitFor();
  await page.getByRole('button', { name: 'They were looked at' }).click();
  await page.getByRole('heading', { name: 'Marked for a look' }).waitFor({ state: 'detached' });
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByRole('heading', { name: 'Marked for a look' }).waitFor();
  app.assertQuiet();
});

test('a wax is kept as a master and moulded; what is larger than its parent is asked about; a ring is told in every system', async () => {
  const pile = [...demoShelf.things.injectedWax.values()].find((each) => each.mould === made.id && each.pieces > 3 && each.state === 'raw');
  app = await openApp({ demo: true, path: `#/thing/${pile?.id}` });
  const { page } = app;
  await page.getByRole('link', { name: 'Keep this wax as a master' }).click();
  await page.getByText(/One piece is taken off/).waitFor();
  await page.getByRole('button', { name: 'Record the master' }).click();
  await page.getByText('The master is recorded.').waitFor();
  await page.getByRole('link', { name: 'Measure it' }).first().click();
  await page.getByLabel('What was measured').first().fill('length');
  await page.getByLabel('Reading: length').fill('400');
  await page.getByRole('button', { name: 'Write it down' }).click();
  await page.getByText(/400 mm is more than the/).waitFor();
  expect(await axeWhole(page)).toEqual([]);
  await page.getByLabel('Reading: length').fill('12,5');
  await page.getByRole('button', { name: 'Write it down' }).click();
  await page.locator('dt:text-is("length") + dd', { hasText: '12.5 mm' }).waitFor();
  await page.getByRole('link', { name: 'Make a mould from this' }).first().click();
  await page.getByRole('button', { name: 'Record the mould' }).click();
  await page.getByText(/^Generation [2-9]/).waitFor();
  await hash(page, `#/thing/${pile?.id}`);
  await page.locator('dt:text-is("Pieces") + dd', { hasText: String((pile?.pieces ?? 0) - 1) }).waitFor();
  const small = demoMould('whose castings come out small', (mould) => !mould.retired && smallerThanLabel(demoShelf, mould) !== undefined);
  await hash(page, `#/place/${small.at}`);
  await page.locator(`a[href$="${small.id}"]`).getByText('comes out small').waitFor();
  await hash(page, '#/size');
  await page.getByLabel('Caliper reading').fill('UK N');
  await page.locator('dt:text-is("ISO") + dd', { hasText: '54' }).waitFor();
  await page.getByText('How much each step shrinks').click();
  await page.getByLabel('wax, %', { exact: true }).fill('1,9');
  await page.getByRole('button', { name: 'Keep these figures' }).click();
  await page.getByText('The studio’s figures are written down.').waitFor();
  expect(await axeWhole(page)).toEqual([]);
  await page.emulateMedia({ colorScheme: 'dark' });
  expect(await axeWhole(page)).toEqual([]);
  app.assertQuiet();
});
