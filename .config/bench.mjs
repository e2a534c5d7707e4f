// Builds a site of the app with the bench's own page beside it, then runs tests/bench/main.ts, which is TypeScript, through Vite.
import { cpSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, createServer } from 'vite';
import { appDir, freshenApp } from './build.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const siteDir = join(root, '.build/bench');

freshenApp();
rmSync(siteDir, { recursive: true, force: true });
cpSync(appDir, siteDir, { recursive: true });
await build({
  configFile: false,
  root,
  base: './',
  publicDir: false,
  logLevel: 'warn',
  build: {
    outDir: join(siteDir, 'bench'),
    target: 'es2022',
    modulePreload: { polyfill: false },
    rolldownOptions: { input: join(root, 'tests/bench/page.ts'), output: { entryFileNames: 'page.js' } },
  },
});
writeFileSync(
  join(siteDir, 'bench/index.html'),
  '<!doctype html><html lang="en"><title>Bench</title><script type="module" src="page.js"></script></html>',
);

const vite = await createServer({
  configFile: false,
  root,
  appType: 'custom',
  optimizeDeps: { noDiscovery: true },
  server: { middlewareMode: true, ws: false, watch: null },
});
try {
  const { main } = await vite.ssrLoadModule('/tests/bench/main.ts');
  process.exitCode = await main({ siteDir, appDir });
} finally {
  await vite.close();
}
