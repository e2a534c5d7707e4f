import type { BrowserContext, Page } from 'playwright-core';
import { serveApp } from '../../.config/server.mjs';
import { findBrowser } from '../support/find-browser.ts';
import { benchBackup } from './backup.ts';
import { calibration } from './calibration.ts';
import { benchDecode } from './decode.ts';
import { firstLoad } from './first-load.ts';
import { firstAnswer, hardshipTables, labelFigures } from './label-figures.ts';
import { benchLife } from './life-figures.ts';
import { benchLighthouse } from './lighthouse.ts';
import { benchLineage } from './lineage.ts';
import { benchPeers } from './peers.ts';
import { type Bench, onPhone } from './phone.ts';
import { logRuns, openShelf, typeLetters } from './screens.ts';
import { until } from './slow-page.ts';
import type { StudioSize } from './studio.ts';
import { type Figure, judged, table } from './table.ts';

const BIG: StudioSize = { things: 20_000, moulds: 5_000, entries: 100_000, seed: 7 };
const SMALL: StudioSize = { things: 2_000, moulds: 500, entries: 10_000, seed: 7 };
const SLOWDOWN = 4;
const STUDIO = 'mouldkeep';

/** What `--part` can name. */
const PARTS = ['first load', 'studio', 'life', 'lineage', 'labels', 'calibration', 'lighthouse', 'backup', 'peers'] as const;

/** Runs everything, prints a table and, last, one line of JSON. Gives the process's exit code: 1 when a bound is missed. */
export async function main({ siteDir, appDir, part }: { siteDir: string; appDir: string; part?: string }): Promise<number> {
  if (part !== undefined && !(PARTS as readonly string[]).includes(part)) throw new Error(`The parts are ${PARTS.join(', ')}.`);
  const wants = (name: (typeof PARTS)[number]) => part === undefined || part === name;
  const chrome = await findBrowser();
  const server = await serveApp({ dir: siteDir });
  const figures: Figure[] = [];
  try {
    const bench = { url: server.url, chrome };
    if (wants('first load')) figures.push(firstLoad(appDir));
    if (wants('studio')) figures.push(...(await studios(bench)));
    if (wants('life')) figures.push(...(await benchLife(bench, BIG, SLOWDOWN)));
    if (wants('lineage')) figures.push(await benchLineage(bench, SLOWDOWN));
    if (wants('labels')) figures.push(...(await labels(bench)));
    if (wants('calibration')) figures.push(...calibration());
    if (wants('lighthouse')) figures.push(...(await benchLighthouse(server.url, chrome)));
    if (wants('backup')) figures.push(...(await benchBackup(bench, { ...BIG, entries: BIG.entries - 500 })));
    if (wants('peers')) figures.push(...(await benchPeers(bench, BIG, SMALL)));
  } finally {
    await server.stop();
  }
  console.log(table(figures));
  console.log(JSON.stringify(Object.fromEntries(figures.map(({ name, value }) => [name, Number(value.toFixed(3))]))));
  return figures.every(judged) ? 0 : 1;
}

/** How soon a clear label is read, and which spoiled ones are; prints where the others are lost. */
async function labels({ url, chrome }: Bench): Promise<Figure[]> {
  const answer = await firstAnswer(url, chrome, SLOWDOWN);
  const rows = await benchDecode();
  console.log(hardshipTables(rows));
  return [...answer, ...labelFigures(rows)];
}

/** The big studio's figures, and how much dearer it is than one of a tenth. */
async function studios(bench: Bench): Promise<Figure[]> {
  const figures: Figure[] = [];
  const big = await studio(bench, BIG, figures);
  const small = await studio(bench, SMALL);
  figures.push(
    { name: 'ten times the studio: logging a run', value: big.run / small.run, unit: '×', bound: 1.5 },
    {
      name: 'ten times the studio: a letter typed in Where is…',
      value: big.letter / small.letter,
      unit: '×',
      bound: 1.5,
      note: 'medians',
    },
  );
  return figures;
}

/** One studio in a browser of its own: store figures first, then the app's screens on it. */
function studio(bench: Bench, size: StudioSize, figures: Figure[] = []): Promise<{ run: number; letter: number }> {
  const { url } = bench;
  return onPhone(bench, async (context) => {
    const page = context.pages()[0] ?? (await context.newPage());
    await page.goto(`${url}bench/`);
    await until(page, 'window.bench');
    const restored = await page.evaluate(([name, s]) => window.bench.restore(name, s), [STUDIO, size] as const);
    if (size === BIG) await storeFigures(context, page, size, restored, figures);
    // Asked for before the service worker is there: it would answer this address with the app.
    const moulds = await page.evaluate((name) => window.bench.soundMoulds(name, 30), STUDIO);
    const bare = await slowed(context, page, () => page.evaluate(() => window.bench.bareRow(40)));
    await page.goto(url);
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await copied(page);
    const isBig = size === BIG;
    const opened = isBig ? await openShelf(context, url, SLOWDOWN) : undefined;
    const letters = await typeLetters(context, url, SLOWDOWN);
    const runs = await logRuns(context, url, SLOWDOWN, moulds);
    if (opened) {
      figures.push(
        {
          name: 'open offline to a usable shelf',
          value: opened.usable,
          unit: 'ms',
          bound: 1200,
          note: `tap answered in ${opened.tap.toFixed(0)} ms more`,
        },
        { name: 'open offline, all things loaded', value: opened.all, unit: 'ms', bound: 2500 },
        {
          name: 'a letter typed in Where is…, 95 %',
          value: letters.p95,
          unit: 'ms',
          bound: 50,
          note: `median ${letters.median.toFixed(1)} ms of ${letters.count}`,
        },
        {
          name: 'logging a run, tap to shown',
          value: runs.median,
          unit: 'ms',
          bound: 100,
          note: `of ${runs.count}; the mould’s page ${runs.page.toFixed(0)} ms`,
        },
        {
          name: 'logging a run against a bare strict row shown the same way',
          value: runs.median / runs.bare,
          unit: '×',
          bound: 2,
          note: `bare page, tap to shown ${runs.bare.toFixed(1)} ms, in turns with ours; its row alone, nothing shown, ${bare.toFixed(1)} ms`,
        },
      );
    }
    return { run: runs.median, letter: letters.median };
  });
}

/** Of a studio that was brought in, the second copy is made once, in the first minute: figures are of one in use. */
async function copied(page: Page): Promise<void> {
  const count = () =>
    page.evaluate(async () => {
      const names = (await caches.keys()).filter((name) => name.includes('second-copy'));
      return (await Promise.all(names.map(async (name) => (await (await caches.open(name)).keys()).length))).reduce((a, b) => a + b, 0);
    });
  for (let before = -1, texts = 0; texts === 0 || texts !== before; ) {
    await page.waitForTimeout(3000);
    [before, texts] = [texts, await count()];
  }
}

async function storeFigures(
  context: BrowserContext,
  page: Page,
  size: StudioSize,
  restored: { ms: number; things: number; entries: number; bytes: number },
  figures: Figure[],
): Promise<void> {
  await page.evaluate((name) => window.bench.layOutThings(name), STUDIO);
  const read = () => page.evaluate((name) => window.bench.readThings(name, 5), STUDIO);
  const fast = await read();
  const slow = await slowed(context, page, read);
  const plain = await page.evaluate((s) => window.bench.plainRestore(s), size);
  const of = (figure: { ours: number; plain: number }) => `${figure.ours.toFixed(0)} ms against ${figure.plain.toFixed(0)} ms`;
  figures.push(
    { name: 'reading all things against one row each', value: fast.ours / fast.plain, unit: '×', bound: 0.3, note: of(fast) },
    { name: `the same at ${SLOWDOWN}× slowdown`, value: slow.ours / slow.plain, unit: '×', bound: 0.6, note: of(slow) },
    {
      name: 'restoring the journal against indexed rows',
      value: restored.ms / plain,
      unit: '×',
      bound: 0.1,
      note: `${restored.entries} entries, ${restored.things} things, ${(restored.bytes / 1e6).toFixed(1)} MB: ${(restored.ms / 1000).toFixed(2)} s against ${(plain / 1000).toFixed(1)} s`,
    },
  );
}

async function slowed<T>(context: BrowserContext, page: Page, job: () => Promise<T>): Promise<T> {
  const session = await context.newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWDOWN });
  try {
    return await job();
  } finally {
    await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  }
}
