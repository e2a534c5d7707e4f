// Photographs every screen and dialog of the app on the demo studio into .build/sheet, to be looked at one by one. Runs tests/support/contact-sheet.ts through Vite.
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { createServer } from 'vite';
import { appDir, freshenApp } from './build.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
freshenApp();
const vite = await createServer({
  configFile: false,
  root,
  appType: 'custom',
  optimizeDeps: { noDiscovery: true },
  server: { middlewareMode: true, ws: false, watch: null },
});
try {
  const { contactSheet } = await vite.ssrLoadModule('/tests/support/contact-sheet.ts');
  await contactSheet({ appDir, outDir: join(root, '.build/sheet'), only: process.argv.slice(2) });
} finally {
  await vite.close();
}
