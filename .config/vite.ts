import { fileURLToPath } from 'node:url';
import { defineConfig, type Plugin } from 'vite';
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
    modulePreload: { polyfill: false },
    // The decoder's wasm and the demo studio are meant to be big, and load late.
    chunkSizeWarningLimit: 2000,
    // The policy allows no data: anywhere but in pictures, so nothing is inlined.
    assetsInlineLimit: 0,
  },
  worker: { format: 'es' },
  plugins: [cspMeta, offline(at('../sw/sw.ts'))],
});
