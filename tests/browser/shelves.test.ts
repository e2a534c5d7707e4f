import { afterEach, expect, test } from 'vitest';
import { axeViolations } from '../support/axe.ts';
import { type OpenApp, openApp } from '../support/browser.ts';

let app: OpenApp | undefined;
afterEach(() => app?.close());

/** The fronts of the cabinet in sight. */
const FRONTS = '.pager-page:not([inert]) .front';

interface Drawn {
  readonly name: string;
  readonly box: { readonly x: number; readonly y: number; readonly w: number; readonly h: number };
}

async function drawn(): Promise<Drawn[]> {
  await app?.page.waitForSelector(FRONTS);
  return (
    (await app?.page.locator(FRONTS).evaluateAll((fronts) =>
      fronts.map((front) => {
        const { x, y, width, height } = front.getBoundingClientRect();
        return { name: front.querySelector('.unseen')?.textContent ?? '', box: { x, y, w: width, h: height } };
      }),
    )) ?? []
  );
}

async function turnTo(name: string): Promise<void> {
  await app?.page.getByRole('navigation', { name: 'Cabinets' }).getByRole('button', { name }).click();
  await app?.page.waitForSelector(`.pager-page[aria-label="${name}"]:not([inert])`);
  const page = app?.page.locator(`.pager-page[aria-label="${name}"]`);
  await expect.poll(async () => Math.abs((await page?.boundingBox())?.x ?? 1000)).toBeLessThan(20);
}

test('every cabinet is drawn with its drawers apart, each saying its label, what it holds and its marks', async () => {
  app = await openApp({ demo: true });
  await app.page.waitForSelector(FRONTS);
  const names = await app.page.locator('.pager-page').evaluateAll((pages) => pages.map((page) => page.getAttribute('aria-label') ?? ''));
  expect(names.length).toBeGreaterThanOrEqual(6);
  let fronts = 0;
  for (const name of names) {
    await turnTo(name);
    const all = await drawn();
    fronts += all.length;
    for (const [at, { box: a, name: says }] of all.entries()) {
      expect(says).toMatch(/^(Drawer|Shelf|Box|Cabinet) \S+, .*(\d+ \w+|empty)/);
      const covering = all
        .slice(at + 1)
        .filter(({ box: b }) => a.x + 1 < b.x + b.w && b.x + 1 < a.x + a.w && a.y + 1 < b.y + b.h && b.y + 1 < a.y + a.h);
      expect(covering).toEqual([]);
    }
  }
  expect(fronts).toBeGreaterThanOrEqual(50);
  app.assertQuiet();
});

test.each([
  [320, 640],
  [390, 844],
])('at %i × %i each drawer is large enough for a thumb, at once or after coming nearer', async (width, height) => {
  app = await openApp({ demo: true, viewport: { width, height } });
  await app.page.waitForSelector(FRONTS);
  const names = await app.page.locator('.pager-page').evaluateAll((pages) => pages.map((page) => page.getAttribute('aria-label') ?? ''));
  for (const name of names) {
    await turnTo(name);
    if ((await app.page.locator('.pager-page:not([inert]) .cabinet-near p').count()) > 0) await app.page.locator(FRONTS).first().click();
    await expect.poll(async () => (await drawn()).filter(({ box }) => Math.min(box.w, box.h) < 45)).toEqual([]);
  }
  const wide = await app.page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  expect(wide).toBeLessThanOrEqual(0);
});

test('on a phone a drawer slides over its cabinet and Back closes it', async () => {
  app = await openApp({ demo: true });
  await app.page.waitForSelector(FRONTS);
  await turnTo('Tall cabinet');
  const front = app.page.locator(FRONTS).first();
  const label = await front.locator('.front-label').textContent();
  await front.click();
  const sheet = app.page.getByRole('dialog');
  await sheet.getByRole('heading', { name: label ?? '' }).waitFor();
  await expect.poll(() => sheet.locator('.row').count()).toBeGreaterThan(0);
  await app.page.goBack();
  await sheet.waitFor({ state: 'detached' });
  await expect.poll(() => app?.page.locator('.pager-page:not([inert])').getAttribute('aria-label')).toBe('Tall cabinet');
});

test('swiping the front turns to the next cabinet, whose name is then the marked one', async () => {
  app = await openApp({ demo: true });
  await app.page.waitForSelector(FRONTS);
  const tabs = app.page.getByRole('navigation', { name: 'Cabinets' }).getByRole('button');
  const second = (await app.page.locator('.pager-page').nth(1).getAttribute('aria-label')) ?? '';
  await app.page.locator('.pager-pane').evaluate((pane) => pane.scrollTo({ left: pane.clientWidth, behavior: 'smooth' }));
  await app.page.waitForSelector(`.pager-page[aria-label="${second}"]:not([inert])`);
  await expect.poll(() => tabs.nth(1).getAttribute('aria-current')).toBe('true');
  await expect.poll(() => tabs.nth(0).getAttribute('aria-current')).toBeNull();
});

test('on a desk the contents open beside the cabinet', async () => {
  app = await openApp({ demo: true, viewport: { width: 1280, height: 800 } });
  await app.page.waitForSelector(FRONTS);
  await app.page.locator(FRONTS).nth(1).click();
  const aside = app.page.getByRole('complementary', { name: 'Contents' });
  await aside.locator('.contents').waitFor();
  await expect.poll(() => app?.page.getByRole('dialog').count()).toBe(0);
  const { page } = app;
  await expect
    .poll(async () => {
      const [cabinet, contents] = [await page.locator('.carcass').first().boundingBox(), await aside.boundingBox()];
      return (contents?.x ?? 0) >= (cabinet?.x ?? 0) + (cabinet?.width ?? 0);
    })
    .toBe(true);
  await expect.poll(() => app?.page.locator(`${FRONTS}[aria-pressed=true]`).count()).toBe(1);
});

test('an empty cabinet room says what belongs there, and one form draws the first cabinet', async () => {
  app = await openApp();
  await app.page.getByText('empty cabinet').first().click();
  await app.page.getByRole('dialog', { name: 'Add a cabinet' }).waitFor();
  await app.page.getByRole('button', { name: 'Close' }).click();
  await app.page.getByRole('heading', { name: 'Your cabinets belong here' }).waitFor();
  await app.page.getByRole('button', { name: 'Add a cabinet' }).click();
  await app.page.getByText('Left empty, it is called Cabinet 1.').waitFor();
  await app.page.getByLabel('Drawers side by side', { exact: true }).fill('90');
  await app.page.getByLabel('Drawers one above the other', { exact: true }).fill('4');
  await app.page.getByRole('button', { name: /^Add it/ }).click();
  await app.page.locator('.field-problem', { hasText: '90 drawers side by side do not fit in that width.' }).waitFor();
  await app.page.getByLabel('Drawers one above the other', { exact: true }).fill('6');
  await app.page.getByLabel('What you call it').fill('<b>Map chest</b>');
  await app.page.getByLabel('Drawers side by side', { exact: true }).fill('3');
  await app.page.getByRole('button', { name: 'Add it, with 18 drawers' }).click();
  await app.page.waitForSelector(FRONTS);
  await expect.poll(async () => (await drawn()).map(({ name }) => name).slice(0, 2)).toEqual(['Drawer A1, empty', 'Drawer A2, empty']);
  await expect.poll(() => app?.page.locator('.tab').first().textContent()).toBe('<b>Map chest</b>');
  await app.page.getByRole('button', { name: 'Undo' }).click();
  await app.page.getByRole('heading', { name: 'Your cabinets belong here' }).waitFor();
  app.assertQuiet();
});

test.each(['light', 'dark'] as const)('nothing hinders those who read it otherwise, %s', async (colorScheme) => {
  app = await openApp({ demo: true, colorScheme });
  await app.page.waitForSelector(FRONTS);
  await turnTo('Two-column chest');
  expect(await axeViolations(app.page)).toEqual([]);
});
