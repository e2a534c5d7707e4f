import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { appDir } from '../../.config/build.mjs';

/** A copy of the built app whose page differs, as a later version's would: the browser sees a new service worker with a new list. */
export function makeNextVersion(): { readonly dir: string; readonly remove: () => void } {
  const dir = mkdtempSync(join(tmpdir(), 'mouldkeep-next-'));
  cpSync(appDir, dir, { recursive: true });
  change(join(dir, 'index.html'), '</head>', '<meta name="version" content="next"></head>');
  change(join(dir, 'sw.js'), /(index\.html`,revision:`)\w+/, '$1next');
  return { dir, remove: () => rmSync(dir, { recursive: true, force: true }) };
}

function change(path: string, from: string | RegExp, to: string): void {
  const before = readFileSync(path, 'utf8');
  const after = before.replace(from, to);
  if (after === before) throw new Error(`Nothing to change in ${path}`);
  writeFileSync(path, after);
}
