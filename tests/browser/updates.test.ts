import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { appDir } from '../../.config/build.mjs';
import { type Served, serveApp } from '../../.config/server.mjs';
import { keptOffline, type OpenApp, openApp } from '../support/browser.ts';
import { makeNextVersion } from '../support/next-version.ts';

let app: OpenApp;
let server: Served;
let next: ReturnType<typeof makeNextVersion>;

beforeAll(() => {
  next = makeNextVersion();
});
afterAll(() => next.remove());

beforeEach(async () => {
  server = await serveApp({ dir: appDir, base: '/studio/' });
  app = await openApp({ url: server.url, demo: true });
  await keptOffline(app.page);
});
afterEach(async () => {
  await app.close();
  await server.stop();
});

async function publish(dir: string): Promise<void> {
  await server.stop();
  server = await serveApp({ dir, port: server.port, base: '/studio/' });
}

/** The browser looks for a new version when a page is opened; this asks it to look now. */
function look(page: Page): Promise<unknown> {
  return page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
}

function isNext(page: Page): Promise<boolean> {
  return page.evaluate(() => document.querySelector('meta[name=version]') !== null);
}

/** Something typed and not yet saved anywhere: it is there as long as the page was not reloaded. */
async function type(page: Page, text: string): Promise<void> {
  await page.evaluate(() => document.body.append(Object.assign(document.createElement('input'), { id: 'typed' })));
  await page.fill('#typed', text);
}

test('opens with its server gone, under a sub-path', async () => {
  await server.stop();
  await app.page.reload();
  await app.page.waitForSelector('#app > *');
  const another = await app.context.newPage();
  await another.goto(`${server.url}?demo#/where`);
  await another.waitForSelector('#app > *');
});

interface TraceEvent {
  readonly name: string;
  readonly args: { readonly data?: { readonly url?: string; readonly consumedCacheSize?: number } };
}

test('a start takes its compiled code from what was kept with the files', async () => {
  const page = await app.context.newPage();
  const session = await app.context.newCDPSession(page);
  const seen: TraceEvent[] = [];
  session.on('Tracing.dataCollected', ({ value }) => seen.push(...(value as unknown as TraceEvent[])));
  const categories = ['devtools.timeline', 'disabled-by-default-devtools.timeline'];
  await session.send('Tracing.start', {
    transferMode: 'ReportEvents',
    traceConfig: { includedCategories: categories, excludedCategories: ['*'] },
  });
  await page.goto(`${server.url}?demo`);
  await page.waitForSelector('.bar');
  const ended = new Promise<void>((done) => session.once('Tracing.tracingComplete', () => done()));
  await session.send('Tracing.end');
  await ended;
  for (const file of ['doors', 'app', 'stage']) {
    const compiled = seen.find(({ name, args }) => name === 'v8.compile' && args.data?.url?.includes(`/assets/${file}-`));
    expect(compiled?.args.data?.consumedCacheSize, file).toBeGreaterThan(1000);
  }
}, 60_000);

test('a new version waits over what is being typed, in old and new tabs, until it is taken; then every tab has it', async () => {
  const { page } = app;
  await type(page, 'half a sentence');
  await publish(next.dir);
  await look(page);
  const take = page.getByRole('button', { name: 'Take it now' });
  await take.waitFor();
  const another = await app.context.newPage();
  await another.goto(`${server.url}?demo`);
  await another.waitForSelector('#app > *');
  expect([await isNext(page), await isNext(another)]).toEqual([false, false]);
  await expect.poll(() => page.inputValue('#typed')).toBe('half a sentence');

  await Promise.all([page.waitForEvent('load'), another.waitForEvent('load'), take.click()]);
  await Promise.all([page.waitForSelector('#app > *'), another.waitForSelector('#app > *')]);
  await expect.poll(async () => [await isNext(page), await isNext(another)]).toEqual([true, true]);
});

test('a new version is complete before it is offered: with the server gone again it opens, and the old files are thrown away', async () => {
  const { page } = app;
  await publish(next.dir);
  await look(page);
  const take = page.getByRole('button', { name: 'Take it now' });
  await take.waitFor();
  await server.stop();
  await Promise.all([page.waitForEvent('load'), take.click()]);
  await page.waitForSelector('#app > *');
  await expect.poll(() => isNext(page)).toBe(true);
  const kept = () =>
    page.evaluate(async () => {
      const [name = ''] = await caches.keys();
      return (await (await caches.open(name)).keys()).filter(({ url }) => url.includes('index.html')).length;
    });
  await expect.poll(kept).toBe(1);
});

test('what is typed in a form is still there after the new version is taken', async () => {
  const { page } = app;
  await page.goto(`${server.url}?demo#/new/master`);
  const field = page.getByRole('textbox').first();
  await field.fill('Harbour seal, carved');
  await publish(next.dir);
  await look(page);
  const take = page.getByRole('button', { name: 'Take it now' });
  await take.waitFor();
  await Promise.all([page.waitForEvent('load'), take.click()]);
  await field.waitFor();
  await expect.poll(() => isNext(page)).toBe(true);
  await expect.poll(() => field.inputValue()).toBe('Harbour seal, carved');
});

test('a tab that holds a list too long to be kept is not loaded again when the new version is taken in another, until it is tapped', async () => {
  const { page } = app;
  await page.goto(`${server.url}?demo#/bring-in`);
  const rows = Array.from({ length: 9000 }, (_, i) => `Wax number ${i} with a long name that fills the list,${i} g`);
  await page.locator('input[type=file]').setInputFiles({
    name: 'long.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(['Wax,Stock', ...rows].join('\n')),
  });
  await page.getByText('9 000 rows').waitFor();
  const another = await app.context.newPage();
  await another.goto(`${server.url}?demo`);
  await another.waitForSelector('#app > *');
  await publish(next.dir);
  await look(page);
  await page.getByText('too long to be kept').waitFor();
  const take = another.getByRole('button', { name: 'Take it now' });
  await Promise.all([another.waitForEvent('load'), take.click()]);
  await page.getByText('has been taken in another tab').waitFor();
  await page.getByText('9 000 rows').waitFor();
  await expect.poll(() => isNext(page)).toBe(false);
  await Promise.all([page.waitForEvent('load'), page.getByRole('button', { name: 'Load again' }).click()]);
  await page.waitForSelector('#app > *');
  await expect.poll(() => isNext(page)).toBe(true);
});
