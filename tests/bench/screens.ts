import type { BrowserContext, Page } from 'playwright-core';
import { launchedPage, until } from './slow-page.ts';

/** Half of the starts are tapped while they go on, which the other half is not held up by. */
const QUIET = 'window.benchQuiet = true;';

/** In-page clock of a start: when fronts are on the glass, when the whole app is, and when a tap is answered. All ms since navigation. */
const WATCH_START = `
  const seen = (window.benchSeen = {});
  const mark = (name) => requestAnimationFrame(() => setTimeout(() => { seen[name] ??= performance.now(); }));
  new MutationObserver(() => {
    const front = document.querySelector('.front');
    if (front && !seen.front) {
      seen.front = 1;
      mark('usable');
      if (!window.benchQuiet) setTimeout(() => { seen.tapped = performance.now(); (document.querySelector('.front-picked') ?? front).click(); });
    }
    if (seen.tapped && document.querySelector('.front-picked, dialog[open]')) mark('answered');
    if (document.querySelector('.bar')) mark('all');
  }).observe(document, { childList: true, subtree: true, attributes: true });
`;

export interface Opened {
  readonly usable: number;
  /** From the tap to its answer. */
  readonly tap: number;
  readonly all: number;
}

/** Opens the app without a network, as after the phone was in a pocket. Medians of several cold pages. */
export async function openShelf(context: BrowserContext, url: string, slowdown: number): Promise<Opened> {
  await context.setOffline(true);
  const tapped = await starts(context, url, slowdown, 'window.benchSeen.all && window.benchSeen.answered', WATCH_START);
  const quiet = await starts(context, url, slowdown, 'window.benchSeen.all', QUIET + WATCH_START);
  await context.setOffline(false);
  return {
    usable: median(tapped.map((seen) => seen.usable)),
    tap: median(tapped.map((seen) => Math.max(0, seen.answered - seen.tapped))),
    all: median(quiet.map((seen) => seen.all)),
  };
}

interface Seen {
  readonly usable: number;
  readonly tapped: number;
  readonly answered: number;
  readonly all: number;
}

async function starts(context: BrowserContext, url: string, slowdown: number, isDone: string, watch: string): Promise<readonly Seen[]> {
  const all: Seen[] = [];
  for (let i = 0; i < 5; i++) {
    const page = await launchedPage(context, slowdown);
    await page.addInitScript(watch);
    await page.goto(url);
    await until(page, isDone);
    all.push(await page.evaluate<Seen>('window.benchSeen'));
    await page.close();
  }
  return all;
}

/** A phone in the hand: what the tap before set going is done. */
const REST_MS = 1500;

const TYPED = ['toggle', 'minoan seal', 'heron broo', '150 bc', 'octopus', 'drawer', 'hond', 'signet ring 5', '1250'];

/** Types in *Where is…*, a letter at a time. */
export async function typeLetters(
  context: BrowserContext,
  url: string,
  slowdown: number,
): Promise<{ median: number; p95: number; count: number }> {
  const page = await launchedPage(context, slowdown);
  await page.goto(`${url}#/where`);
  await page.waitForSelector('#where-query');
  await page.waitForTimeout(4000);
  const times = await page.evaluate(async (words) => {
    const painted = () => new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
    const each: number[] = [];
    const input = document.querySelector<HTMLInputElement>('#where-query');
    if (!input) throw new Error('there is nowhere to type');
    const put = async (text: string) => {
      const began = performance.now();
      input.value = text;
      input.dispatchEvent(new InputEvent('input', { bubbles: true }));
      await painted();
      return performance.now() - began;
    };
    for (const word of words) {
      await put('');
      for (let length = 1; length <= word.length; length++) {
        await new Promise((done) => setTimeout(done, 60));
        each.push(await put(word.slice(0, length)));
      }
      if (!document.querySelector('[role=main] li')) throw new Error(`nothing was found for ${word}`);
    }
    return each;
  }, TYPED);
  await page.close();
  return { median: median(times), p95: p95(times), count: times.length };
}

/**
 * Logs runs through the app's own form: from the tap on the button to its outcome on the glass, and to the mould's page with the new count.
 * In turns with the barest page that stores and tells as much, both after the same rest and watched by the same code: how fast a disk answers
 * changes by the minute.
 */
export async function logRuns(
  context: BrowserContext,
  url: string,
  slowdown: number,
  moulds: readonly string[],
): Promise<{ median: number; page: number; bare: number; count: number }> {
  const bare = await barePage(context, url, slowdown);
  const page = await launchedPage(context, slowdown);
  await page.goto(`${url}#/`);
  await page.waitForSelector('.bar');
  const [times, bares]: [Shown[], Shown[]] = [[], []];
  for (const mould of moulds) {
    await page.bringToFront();
    await page.evaluate((id) => {
      window.location.hash = `#/mould/${id}/run`;
    }, mould);
    // By touch: a mouse would still lie over the form, and be looked for in every frame.
    await page.getByRole('button', { name: 'Shots: one more' }).tap();
    await page.waitForTimeout(REST_MS);
    times.push(await page.evaluate(tapToShown, RUN));
    await page.waitForTimeout(500);
    await page.getByRole('button', { name: 'Close' }).click();
    await bare.bringToFront();
    await bare.waitForTimeout(REST_MS);
    bares.push(await bare.evaluate(tapToShown, { button: 'button', told: 'p', says: `${bares.length + 1} logged`, leaves: '' }));
  }
  await page.close();
  await bare.close();
  return {
    median: median(times.map(({ told }) => told)),
    page: median(times.map(({ drawn }) => drawn)),
    bare: median(bares.map(({ told }) => told)),
    count: times.length,
  };
}

/** Past the service worker, which would answer its address with the app. */
async function barePage(context: BrowserContext, url: string, slowdown: number): Promise<Page> {
  const page = await launchedPage(context, slowdown);
  const session = await context.newCDPSession(page);
  await session.send('Network.enable');
  await session.send('Network.setBypassServiceWorker', { bypass: true });
  await page.goto(`${url}bench/`);
  await until(page, 'window.bench');
  await page.evaluate(() => window.bench.layOutBare());
  return page;
}

/** Where a run is logged, and where that is told. */
interface Logging {
  readonly button: string;
  readonly told: string;
  readonly says: string;
  /** How the address ends of the screen that is left for the mould's page; empty where none is left. */
  readonly leaves: string;
}

const RUN: Logging = { button: '.screen-actions .button-main', told: '.toast', says: 'logged', leaves: '/run' };

interface Shown {
  readonly told: number;
  /** The page that follows; the same where none does. */
  readonly drawn: number;
}

/** Runs in the page, from a tap on. */
async function tapToShown({ button: selector, told: place, says, leaves }: Logging): Promise<Shown> {
  const button = document.querySelector<HTMLButtonElement>(selector);
  if (!button) throw new Error('there is no button to log with');
  const isTold = () => document.querySelector(place)?.textContent?.includes(says) === true;
  if (isTold()) throw new Error('a message is in the way');
  let began = 0;
  const painted = (done: (at: number) => void) => requestAnimationFrame(() => setTimeout(() => done(performance.now() - began)));
  const shown = new Promise<Shown>((done, failed) => {
    let told: number | undefined;
    let isSeen = false;
    const watch = new MutationObserver(() => {
      if (!isSeen && isTold()) {
        isSeen = true;
        if (!leaves) watch.disconnect();
        painted((at) => {
          told = at;
          if (!leaves) done({ told: at, drawn: at });
        });
      }
      if (isSeen && leaves && !window.location.hash.endsWith(leaves)) {
        watch.disconnect();
        painted((drawn) => done({ told: told ?? drawn, drawn }));
      }
    });
    watch.observe(document.body, { childList: true, subtree: true, characterData: true });
    setTimeout(() => failed(new Error(`nothing was logged: ${document.body.textContent.slice(0, 300)}`)), 15_000);
  });
  began = performance.now();
  button.click();
  return await shown;
}

function p95(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length * 0.95)] ?? Number.NaN;
}

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;
}
