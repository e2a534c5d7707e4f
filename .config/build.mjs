import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

const root = fileURLToPath(new URL('..', import.meta.url));
const inputs = ['src', 'sw', 'icons', 'demo-data', '.config', 'package-lock.json'];

/** Where the built app lies. */
export const appDir = join(root, '.build/app');

/** Builds beside the old app and swaps at the end, so that a build cut short, or two at once, never leave half an app. */
async function buildApp() {
  const fresh = join(root, `.build/app-${process.pid}`);
  try {
    await build({ configFile: join(root, '.config/vite.ts'), logLevel: 'warn', build: { outDir: fresh } });
    rmSync(appDir, { recursive: true, force: true });
    renameSync(fresh, appDir);
  } finally {
    rmSync(fresh, { recursive: true, force: true });
  }
}

/** Builds only if something the app is made of is newer than the app; in a process of its own, so that a test run's settings don't get into it. */
export function freshenApp() {
  const built = join(appDir, 'sw.js');
  const made = existsSync(built) ? statSync(built).mtimeMs : 0;
  if (made > Math.max(...inputs.map((path) => newest(join(root, path))))) return;
  const env = { ...process.env, NODE_ENV: 'production' };
  execFileSync(process.execPath, [fileURLToPath(import.meta.url)], { env, stdio: ['ignore', 'inherit', 'inherit'] });
}

/** A folder's own time counts too: it is what changes when a file is removed. @param {string} path @returns {number} */
function newest(path) {
  if (!existsSync(path)) return 0;
  const stat = statSync(path);
  return stat.isDirectory() ? Math.max(stat.mtimeMs, ...readdirSync(path).map((name) => newest(join(path, name)))) : stat.mtimeMs;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await buildApp();
