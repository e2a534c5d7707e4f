import { cpSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { appDir } from '../../.config/build.mjs';
import { serveApp } from '../../.config/server.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** The built app, and beside it on its origin, at `page`, a page of tests with code of the app's own in it, built by Vite. */
export async function serveTestPage(
  source: string,
): Promise<{ readonly url: string; readonly page: string; readonly stop: () => Promise<void> }> {
  const dir = mkdtempSync(join(tmpdir(), 'mouldkeep-page-'));
  cpSync(appDir, dir, { recursive: true });
  await build({
    configFile: false,
    root,
    mode: 'production',
    base: './',
    publicDir: false,
    logLevel: 'warn',
    build: {
      outDir: join(dir, 'test'),
      emptyOutDir: true,
      target: 'es2022',
      modulePreload: { polyfill: false },
      rolldownOptions: { input: join(root, source), output: { entryFileNames: 'page.js' } },
    },
  });
  writeFileSync(
    join(dir, 'test/index.html'),
    '<!doctype html><html lang="en"><title>Test</title><script type="module" src="page.js"></script></html>',
  );
  const server = await serveApp({ dir });
  return {
    url: server.url,
    page: `${server.url}test/`,
    stop: async () => {
      await server.stop();
      rmSync(dir, { recursive: true, force: true });
    },
  };
}
