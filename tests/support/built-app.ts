import type { TestProject } from 'vitest/node';
import { appDir, freshenApp } from '../../.config/build.mjs';
import { serveApp } from '../../.config/server.mjs';
import { findBrowser } from './find-browser.ts';

declare module 'vitest' {
  interface ProvidedContext {
    appUrl: string;
    chrome: string;
  }
}

/** Once for all browser tests: a browser, the app as it is now, and a server for it. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  project.provide('chrome', await findBrowser());
  freshenApp();
  const server = await serveApp({ dir: appDir });
  project.provide('appUrl', server.url);
  return server.stop;
}
