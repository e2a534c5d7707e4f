import { fileURLToPath } from 'node:url';
import { defineConfig, type Plugin } from 'vite';
import { classic } from './classic.ts';
import { policy } from './csp.mjs';
import { offline } from './offline.ts';

const at = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/** Only at build: the dev server injects inline code of its own. */
const cspMeta: Plugin = {
  name: 'csp-meta',
  apply: 'build',
  transformIndexHtml: () => [
    { tag: 'meta', attrs: { 'http-equiv': 'Content-Security-Policy', content: policy }, injectTo: 'head-prepend' },
  ],
};

/** Modules that only the worker is made of: it is bundled first, and apart. */
const ofWorker = new Set<string>();
const workerModules: Plugin = {
  name: 'worker-modules',
  generateBundle: (_, bundle) => {
    for (const chunk of Object.values(bundle)) if (chunk.type === 'chunk') for (const id of chunk.moduleIds) ofWorker.add(id);
  },
};

/** Writes down which modules each file is made of, for the budget: Vite's manifest names only those a file is entered by. */
const moduleList: Plugin = {
  name: 'module-list',
  apply: 'build',
  generateBundle(_, bundle) {
    const chunks = Object.values(bundle).flatMap((chunk) => (chunk.type === 'chunk' ? [[chunk.fileName, chunk.moduleIds] as const] : []));
    const files = Object.fromEntries([...chunks, ['worker', [...ofWorker]]]);
    this.emitFile({ type: 'asset', fileName: '.vite/modules.json', source: JSON.stringify(files) });
  },
};

export default defineConfig({
  root: at('../src'),
  base: './',
  publicDir: at('../icons'),
  cacheDir: at('../node_modules/.vite'),
  build: {
    outDir: at('../.build/app'),
    emptyOutDir: true,
    manifest: true,
    target: 'es2022',
    // Code that a screen brings later finds what it imports by itself: a link element for each file held the page up for more than it won.
    modulePreload: {
      polyfill: false,
      resolveDependencies: (_, files, { hostType }) => (hostType === 'js' ? files.filter((file) => file.endsWith('.css')) : files),
    },
    // The decoder's wasm and the demo studio are meant to be big, and load late.
    chunkSizeWarningLimit: 2000,
    // The policy allows no data: anywhere but in pictures, so nothing is inlined.
    assetsInlineLimit: 0,
    // Two files are all the code of the first screens: the doors', and the app's with everything that it imports. Each file more costs a start.
    rolldownOptions: {
      output: {
        codeSplitting: {
          groups: [
            { name: 'doors', test: /\/src\/(opening|ui\/doors|ui\/turns)\.ts$|preload-helper|rolldown\/runtime/, priority: 2 },
            { name: 'app', test: /\/src\/main\.tsx$/, priority: 1 },
            { name: 'stage', test: /\/src\/ui\/stage\.tsx$/ },
          ],
        },
      },
    },
  },
  worker: { format: 'es', plugins: () => [workerModules] },
  plugins: [cspMeta, moduleList, classic('doors', ['app', 'stage']), offline(at('../sw/sw.ts'))],
});
