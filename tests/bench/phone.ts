import { type BrowserContext, chromium, type Page } from 'playwright-core';
import { makeProfile, removeProfile } from '../support/launch.ts';
import { quietFlags } from '../support/quiet-flags.ts';
import { until } from './slow-page.ts';

/** Where the bench's site is served, and the browser's own path. */
export interface Bench {
  readonly url: string;
  readonly chrome: string;
}

/** A browser of its own with a fresh profile and a phone's glass, for as long as a job takes. */
export async function onPhone<T>(
  { chrome }: Bench,
  job: (context: BrowserContext, profile: string) => Promise<T>,
  more: { readonly serviceWorkers?: 'block' } = {},
): Promise<T> {
  const profile = makeProfile();
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: chrome,
    args: quietFlags,
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    ...more,
  });
  try {
    return await job(context, profile);
  } finally {
    await context.close();
    removeProfile(profile);
  }
}

/** Does a job in the bench's own page, which lies beside the app; not once the app's service worker is there, which would answer with the app. */
export async function inBenchPage<T>({ url }: Bench, context: BrowserContext, job: (page: Page) => Promise<T>): Promise<T> {
  const page = await context.newPage();
  try {
    await page.goto(`${url}bench/`);
    await until(page, 'window.bench');
    return await job(page);
  } finally {
    await page.close();
  }
}
