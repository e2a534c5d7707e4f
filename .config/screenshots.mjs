// Photographs the demo studio for the manifest: what an install dialog shows. The same build and day give the same pictures, but for how the machine draws letters.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { appDir, freshenApp } from './build.mjs';
import { root, withModule } from './modules.mjs';

freshenApp();
const outDir = join(root, 'icons/screens');
mkdirSync(outDir, { recursive: true });
await withModule('/tests/support/manifest-pictures.ts', async ({ manifestPictures }) => {
  for (const { file, bytes } of (await manifestPictures?.(appDir)) ?? []) {
    writeFileSync(join(outDir, file), bytes);
    console.log(`${file}: ${bytes.length} bytes`);
  }
});
