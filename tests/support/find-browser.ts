import { execFile } from 'node:child_process';
import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { delimiter, dirname, join } from 'node:path';
import { promisify } from 'node:util';
import chromium, { inflate, setupLambdaEnvironment } from '@sparticuz/chromium';

const run = promisify(execFile);

const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome', 'microsoft-edge'];

const usualPlaces = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/snap/bin/chromium',
  ...[process.env.PROGRAMFILES, process.env['PROGRAMFILES(X86)'], process.env.LOCALAPPDATA].map((folder) =>
    folder ? join(folder, 'Google/Chrome/Application/chrome.exe') : '',
  ),
];

/** The path of a Chrome or Chromium that can be started: CHROME_PATH, an installed one, the registry's, or Debian's. Throws if there is none. */
export async function findBrowser(): Promise<string> {
  const found = process.env.CHROME_PATH || (installed() ?? (await fromRegistry()) ?? (await fromDebian()));
  if (found && existsSync(found)) return found;
  throw new Error(
    `No Chrome or Chromium${found ? ` at ${found}` : ''}. Install one, or give its path: CHROME_PATH=/path/to/chrome npm test`,
  );
}

function installed(): string | undefined {
  const onPath = (process.env.PATH ?? '').split(delimiter).flatMap((folder) => names.map((name) => join(folder, name)));
  return [...onPath, ...usualPlaces].find((path) => path !== '' && existsSync(path));
}

/** A Chromium unpacked from an npm package. It leans on a few system libraries, so it only counts if it starts; failing that, with the package's own. */
async function fromRegistry(): Promise<string | undefined> {
  if (process.platform !== 'linux' || process.arch !== 'x64') return undefined;
  try {
    const path = await chromium.executablePath();
    if (await starts(path)) return path;
    const libraries = await inflate(join(dirname(createRequire(import.meta.url).resolve('@sparticuz/chromium')), '../bin/al2023.tar.br'));
    setupLambdaEnvironment(join(libraries, 'lib'));
    if (await starts(path)) return path;
    delete process.env.LD_LIBRARY_PATH;
  } catch (reason) {
    console.warn(`The npm registry's Chromium cannot be used here: ${reason instanceof Error ? reason.message : reason}`);
  }
  return undefined;
}

async function starts(path: string): Promise<boolean> {
  return run(path, ['--version', '--no-sandbox'], { timeout: 60_000 }).then(
    () => true,
    () => false,
  );
}

async function fromDebian(): Promise<string | undefined> {
  if (!existsSync('/etc/debian_version') || process.getuid?.() !== 0) return undefined;
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  await run('apt-get', ['update', '-qq'], { env, maxBuffer: 1e8 });
  await run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium'], { env, maxBuffer: 1e8 });
  return installed();
}
