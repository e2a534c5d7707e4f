import type { BrowserContext } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { appDir } from '../../.config/build.mjs';
import { serveApp } from '../../.config/server.mjs';
import { parseCode } from '../../src/domain/label.ts';
import { SHEET_PRESETS } from '../../src/domain/label-presets.ts';
import { positionsOf, type SheetGrid } from '../../src/domain/label-sheet.ts';
import { isProblem } from '../../src/domain/problem.ts';
import { axeWhole } from '../support/axe-whole.ts';
import { type OpenApp, openApp } from '../support/browser.ts';
import { codeOf } from '../support/builders.ts';
import { chance } from '../support/chance.ts';
import { aRecorded, aStudioCorrected } from '../support/entry-builders.ts';
import { after, blur, grain, lay, smear } from '../support/label-damage.ts';
import { layIn } from '../support/lay-in.ts';
import { cutOut, darkSpan, type PrintedPage, printedPages } from '../support/printed.ts';
import { readLabel } from '../support/reader.ts';

/** A small symbol's squares still have four dots. */
const dpiFor = (grid: SheetGrid) => (grid.wide < 45 ? 220 : 150);
const TRUE_MM = 0.2;
/** Of the labels printed, those read back from each sheet: a drawer's front, the longest name, other letters, one that had no code. */
const READ = [0, 1, 4, 6];
const ADDRESS = 'https://studio.example/keep';
const USED = [0, 2];

const period = aRecorded('period', { name: 'Hellenistic', from: -322 as never, to: -30 as never });
const cabinet = aRecorded('place', { name: 'Plan chest', kind: 'cabinet', code: codeOf('place', 1) });
const drawer = aRecorded('place', {
  name: 'Toggles and seals',
  label: 'B3',
  kind: 'drawer',
  in: cabinet.id as never,
  periods: [period.id as never],
  code: codeOf('place', 2),
});
const names = ['Dolphin toggle with the very long name that nobody shortens', 'Ram’s head', 'Größe ½ <b>', '日本', 'Owl', 'Heron brooch'];
const moulds = names.map((name, i) =>
  aRecorded(
    'mould',
    {
      name,
      size: i % 2 ? 'small' : '22 mm',
      purpose: i === 3 ? 'intermediate' : 'production',
      ...(i === 5 ? {} : { code: codeOf('mould', 40 + i) }),
    },
    { at: drawer.id as never },
  ),
);
const things = [drawer, ...moulds];

let app: OpenApp;
/** A headless browser prints from one hand only: the test's own. */
const prepare = (context: BrowserContext) => context.addInitScript('window.print = () => undefined');
beforeAll(async () => {
  app = await openApp({ prepare });
  await app.page.locator('.door').first().waitFor();
  await layIn(app.page, [period, cabinet, drawer, ...moulds]);
  await app.page.locator('.bar').waitFor();
});
afterAll(() => app.close());

const visit = (hash: string) => app.page.evaluate((next) => Object.assign(window.location, { hash: next }), hash);
const sheetChoice = () => app.page.getByLabel(/^Labels side by side/);

/** The draft may remember them from the time before. */
async function markUsed(): Promise<void> {
  for (const position of USED) {
    const at = app.page.locator('.label-position').nth(position);
    if ((await at.getAttribute('aria-pressed')) === 'false') await at.click();
  }
}

/** The pages are drawn, and printing shows nothing else. */
const readied = () => app.page.locator('html[data-print] .print-page').first().waitFor({ state: 'attached' });

async function print(dpi = 72): Promise<readonly PrintedPage[]> {
  const { page } = app;
  await page
    .locator('.screen-actions')
    .getByRole('button', { name: /^Print/ })
    .click();
  await readied();
  return printedPages(page, dpi);
}

/** What the app's own scanner reads of one label, cut out, laid on a table askew, unsharp and smeared. */
async function readBack(printed: PrintedPage, grid: SheetGrid, number: number): Promise<string> {
  const random = chance(grid.columns * 100 + grid.rows + number);
  const dots = (mm: number) => Math.round((mm / 25.4) * dpiFor(grid));
  const at = positionsOf(grid).filter((_, position) => !USED.includes(position))[number];
  const label = cutOut(printed.picture, dots(at?.x ?? 0), dots(at?.y ?? 0), dots(grid.wide), dots(grid.tall));
  const enlarge = grid.wide < 45 ? 1.6 : 1.2;
  const seen = after(
    label,
    lay(random() * 360, 10 + random() * 15, enlarge),
    blur(1),
    smear(label.width * enlarge * 0.2 * random(), label.height * enlarge, 3, random() - 0.5, 0.8),
    grain(4, random),
  );
  return (await readLabel(seen))[0] ?? 'nothing';
}

test('labels are chosen by drawer, by hand and as never labelled, and given the codes they lack', async () => {
  const { page } = app;
  await visit(`#/labels?place=${drawer.id}`);
  await page.getByRole('heading', { name: 'Labels for 6 things' }).waitFor();
  await page.getByLabel('One thing').fill('B3');
  await page.getByRole('button', { name: /Toggles and seals/ }).click();
  await page.getByRole('heading', { name: 'Labels for 7 things' }).waitFor();
  await page.getByRole('button', { name: '2 places' }).click();
  await page.getByRole('heading', { name: 'Labels for 8 things' }).waitFor();
  await page.getByRole('button', { name: 'Show all 8' }).click();
  await page.getByRole('button', { name: 'Take Plan chest off the list' }).click();
  await page.getByRole('heading', { name: 'Labels for 7 things' }).waitFor();
  expect(await axeWhole(page)).toEqual([]);
});

test.each([false, true])('printed at true size and read back from every sheet, as links: %s', async (isLink) => {
  const { page } = app;
  await layIn(page, [
    aStudioCorrected({ labelAddress: ADDRESS, usesLinks: isLink }, { id: `${things[0]?.id.slice(0, -1)}${isLink ? 'Y' : 'X'}` as never }),
  ]);
  await page.locator('.bar').waitFor();
  await visit(`#/labels?things=${things.map(({ id }) => id).join(',')}`);
  await page.getByRole('heading', { name: 'Labels for 7 things' }).waitFor();
  for (const preset of SHEET_PRESETS) {
    const { grid } = preset;
    await sheetChoice().selectOption(preset.id);
    if (preset === SHEET_PRESETS[0]) await markUsed();
    const [first, ...others] = await print(dpiFor(grid));
    if (!first) throw new Error('nothing was printed');
    expect(others.length, preset.word).toBe(Math.max(0, Math.ceil((things.length + USED.length) / (grid.columns * grid.rows)) - 1));
    expect(Math.abs(first.wideMm - grid.pageWide), preset.word).toBeLessThan(TRUE_MM);
    expect(Math.abs(first.tallMm - grid.pageTall), preset.word).toBeLessThan(TRUE_MM);
    for (const number of READ.filter((each) => each < grid.columns * grid.rows - USED.length)) {
      const text = await readBack(first, grid, number);
      const fields = things[number]?.fields ?? {};
      const code = 'code' in fields && fields.code ? fields.code : text.slice(-8);
      expect(text, `${preset.word}, ${fields.name}`).toBe(isLink ? `${ADDRESS}/#/c/${code}` : code);
      expect(isProblem(parseCode(text))).toBe(false);
    }
  }
});

test('the test bar has its length, and a correction makes up for a printer that shrinks', async () => {
  const { page } = app;
  await sheetChoice().selectOption('a4-70x37');
  await page.getByText('Is it printed at true size?').click();
  for (const [measured, drawn] of [
    ['', 100],
    ['98', 100 / 0.98],
  ] as const) {
    await page.getByLabel('The bar of 100 mm measures').fill(measured);
    await page.getByRole('button', { name: 'Print a test page' }).click();
    await readied();
    const [printed] = await printedPages(page, 600);
    if (!printed) throw new Error('nothing was printed');
    const { picture } = printed;
    // The bar is a millimetre thick and begins in the middle of the page.
    const across = darkSpan(picture, 'row', Math.round(picture.height / 2) + 12);
    const down = darkSpan(picture, 'column', Math.round(picture.width / 2) - 12);
    for (const bar of [across, down]) expect(Math.abs((((bar?.to ?? 0) - (bar?.from ?? 0)) / 600) * 25.4 - drawn)).toBeLessThan(TRUE_MM);
  }
  await page.getByLabel('The bar of 100 mm measures').fill('80');
  await page.getByText('was not printed at true size').waitFor();
  await expect
    .poll(() =>
      page
        .locator('.screen-actions')
        .getByRole('button', { name: /^Print/ })
        .isDisabled(),
    )
    .toBe(true);
  await page.getByLabel('The bar of 100 mm measures').fill('');
});

test('an own grid that does not fit says by how much, and one that does is kept', async () => {
  const { page } = app;
  await sheetChoice().selectOption('own');
  await page.getByLabel('Labels one below the other', { exact: true }).fill('9');
  await page.getByText('9 one below the other need').first().waitFor();
  expect(await axeWhole(page)).toEqual([]);
  await page.getByLabel('Labels one below the other', { exact: true }).fill('7');
  await visit('#/');
  await page.getByRole('heading', { level: 1, name: 'Shelves' }).waitFor();
  await visit('#/labels');
  await page.getByLabel('Labels one below the other', { exact: true }).waitFor();
  await expect.poll(() => page.getByLabel('Labels one below the other', { exact: true }).inputValue()).toBe('7');
});

test('what was printed well is written down once, and can be taken back', async () => {
  const { page } = app;
  await visit(`#/labels?things=${things.map(({ id }) => id).join(',')}`);
  await print();
  await page.getByRole('button', { name: 'They came out well: write it down' }).click();
  await page.getByText('7 labels written down as put on today.').waitFor();
  await visit(`#/mould/${moulds[0]?.id}`);
  await page.getByText('Label put on').first().waitFor();
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByText('Taken back.').waitFor();
  await visit('#/labels');
  await page.getByRole('button', { name: '6 moulds' }).waitFor();
  app.assertQuiet();
});

test.each(['/', '/tools/shelves/'])('the link read off a printed label opens its thing, from an app that lives at %s', async (base) => {
  const server = await serveApp({ dir: appDir, base });
  const [mould] = moulds;
  const { page, assertQuiet, close } = await openApp({ url: server.url, prepare });
  try {
    await page.locator('.door').first().waitFor();
    await layIn(page, [period, cabinet, drawer, ...moulds, aStudioCorrected({ labelAddress: server.url, usesLinks: true })]);
    await page.locator('.bar').waitFor();
    await page.evaluate((hash) => Object.assign(window.location, { hash }), `#/labels?things=${mould?.id}`);
    await page.getByRole('button', { name: 'Print: 1 label on 1 sheet' }).click();
    await page.locator('html[data-print] .print-page').first().waitFor({ state: 'attached' });
    const [printed] = await printedPages(page, 150);
    const [link = ''] = printed ? await readLabel(printed.picture) : [];
    expect(link).toBe(`${server.url}#/c/${codeOf('mould', 40)}`);
    // As a phone's own camera opens it: in another tab, with nothing of the app in it yet.
    const phone = await page.context().newPage();
    await phone.goto(link);
    await phone.waitForURL((url) => url.href === `${server.url}#/mould/${mould?.id}`);
    await phone.getByRole('heading', { level: 1, name: /^Dolphin toggle/ }).waitFor();
    assertQuiet();
  } finally {
    await close();
    await server.stop();
  }
});
