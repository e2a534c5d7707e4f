// Photographs the demo studio for the manifest: what an install dialog shows. The same build and day give the same pictures, but for how the machine draws letters.
import { mkdirSync, writeFileSync } from 'node:fs';
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
  const { manifestPictures } = await vite.ssrLoadModule('/tests/support/manifest-pictures.ts');
  const outDir = join(root, 'icons/screens');
  mkdirSync(outDir, { recursive: true });
  for (const { file, bytes } of await manifestPictures(appDir)) {
    writeFileSync(join(outDir, file), bytes);
    console.log(`${file}: ${bytes.length} bytes`);
  }
} finally {
  await vite.close();
}
