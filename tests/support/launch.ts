import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, chromium, type Page } from 'playwright-core';
import { listen, type Noise } from './noise.ts';
import { quietFlags } from './quiet-flags.ts';

export interface LaunchOptions {
  /** Opens the demo studio. */
  readonly demo?: boolean;
  /** What follows the app's address, such as `#/shelves`. */
  readonly path?: string;
  /** Where the app is served, with the `/` at its end. */
  readonly url: string;
  /** The browser's own path, from `findBrowser`. */
  readonly chrome: string;
  readonly viewport?: { readonly width: number; readonly height: number };
  readonly colorScheme?: 'light' | 'dark';
  /** Cuts the network once the app has loaded and its service worker has taken over. */
  readonly offline?: boolean;
  /** A YUV4MPEG2 file that the camera shows. */
  readonly video?: string;
  /** There is a camera, and the user does not allow it. */
  readonly refusesCamera?: boolean;
  /** A profile folder to open again; without one a fresh profile is made, and removed at the end. */
  readonly profile?: string;
  readonly permissions?: readonly string[];
  /** Done to the browser before the app is opened. */
  readonly prepare?: (context: BrowserContext) => Promise<unknown>;
}

export interface OpenApp {
  readonly context: BrowserContext;
  readonly page: Page;
  readonly url: string;
  readonly profile: string;
  /** Fails if anything was logged as an error, thrown, blocked by the policy, or asked of another origin. */
  readonly assertQuiet: Noise['assertQuiet'];
  readonly close: () => Promise<void>;
}

/** A profile folder for tests that close the browser and open it again. */
export function makeProfile(): string {
  return mkdtempSync(join(tmpdir(), 'mouldkeep-'));
}

export function removeProfile(profile: string): void {
  // A browser that was told to end still writes for a while.
  rmSync(profile, { recursive: true, force: true, maxRetries: 20, retryDelay: 100 });
}

/** A browser of its own with the app open in it, at a phone's size unless told otherwise. */
export async function launchApp(options: LaunchOptions): Promise<OpenApp> {
  const profile = options.profile ?? makeProfile();
  const { url } = options;
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: options.chrome,
    args: [...quietFlags, ...cameraFlags(options)],
    viewport: options.viewport ?? { width: 390, height: 844 },
    colorScheme: options.colorScheme ?? 'light',
    locale: 'en-GB',
    timezoneId: 'Europe/London',
    hasTouch: true,
    permissions: [...(options.permissions ?? [])],
  });
  const noise = listen(context, new URL(url).origin);
  await options.prepare?.(context);
  const page = context.pages()[0] ?? (await context.newPage());
  await page.goto(url + (options.demo ? '?demo' : '') + (options.path ?? ''));
  if (options.offline) await goOffline(context, page);
  const close = async () => {
    await context.close();
    if (!options.profile) removeProfile(profile);
  };
  return { context, page, url, profile, assertQuiet: noise.assertQuiet, close };
}

/** Waits until everything is kept for offline use, then cuts the network. */
export async function goOffline(context: BrowserContext, page: Page): Promise<void> {
  await keptOffline(page);
  await context.setOffline(true);
}

/** Resolves once the service worker has installed and this page is its own. */
export async function keptOffline(page: Page): Promise<void> {
  // Not `waitForFunction`: it evaluates code inside the page, which the policy refuses.
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller) return;
    await new Promise((resolve) => navigator.serviceWorker.addEventListener('controllerchange', resolve, { once: true }));
  });
}

/** Ends the browser at once, as when a phone's system clears it away: no page is told. Reopen with the same profile. */
export async function kill(app: OpenApp): Promise<void> {
  const session = await app.context.newCDPSession(app.page);
  const closed = new Promise((resolve) => app.context.once('close', resolve));
  session.send('Browser.crash').catch(() => undefined);
  await closed;
}

function cameraFlags({ video, refusesCamera }: LaunchOptions): string[] {
  if (refusesCamera) return ['--use-fake-device-for-media-stream', '--deny-permission-prompts'];
  if (!video) return [];
  return ['--use-fake-device-for-media-stream', '--use-fake-ui-for-media-stream', `--use-file-for-fake-video-capture=${video}`];
}
