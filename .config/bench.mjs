// Builds a site of the app with the bench's own page beside it, then runs tests/bench/main.ts, which is TypeScript, through Vite.
import { cpSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { build } from 'vite';
import { appDir, freshenApp } from './build.mjs';
import { root, withModule } from './modules.mjs';

// `npm run bench -- --part peers` runs that part alone; see tests/bench/main.ts for their names.
const { part } = parseArgs({ options: { part: { type: 'string' } } }).values;
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
  worker: { format: 'es' },
  // Of Dexie there may be one only: RxDB brings another of its own.
  resolve: { dedupe: ['dexie'], alias: { events: join(root, 'tests/bench/peers/events.ts') } },
  build: {
    outDir: join(siteDir, 'bench'),
    target: 'es2022',
    modulePreload: { polyfill: false },
    rolldownOptions: {
      input: [join(root, 'tests/bench/page.ts'), join(root, 'tests/bench/peers-page.ts')],
      output: { entryFileNames: '[name].js' },
    },
  },
});
for (const [file, script] of /** @type {const} */ ([
  ['index.html', 'page.js'],
  ['peers.html', 'peers-page.js'],
])) {
  const html = `<!doctype html><html lang="en"><title>Bench</title><script type="module" src="${script}"></script></html>`;
  writeFileSync(join(siteDir, 'bench', file), html);
}

const options = { siteDir, appDir, ...(part === undefined ? {} : { part }) };
process.exitCode = await withModule('/tests/bench/main.ts', async ({ main }) => (await main?.(options)) ?? 1);
