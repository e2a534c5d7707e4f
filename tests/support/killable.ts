import { type ChildProcess, spawn } from 'node:child_process';
import { createInterface } from 'node:readline';
import { type BrowserContext, chromium } from 'playwright-core';
import { quietFlags } from './quiet-flags.ts';

export interface Killable {
  readonly context: BrowserContext;
  /** SIGKILL to the browser and every process it started: nobody is told, nothing is put in order. */
  readonly kill: () => Promise<void>;
}

const FLAGS = ['--headless', '--remote-debugging-port=0', '--no-default-browser-check', '--password-store=basic', '--use-mock-keychain'];

/** A browser in a process group of its own, on a profile that may have been through a kill before. */
export async function launchKillable(chrome: string, profile: string): Promise<Killable> {
  const child = spawn(chrome, [...FLAGS, ...quietFlags, `--user-data-dir=${profile}`, 'about:blank'], {
    detached: true,
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  const gone = new Promise<void>((resolve) => child.once('exit', () => resolve()));
  const kill = () => {
    killGroup(child);
    return gone;
  };
  try {
    const browser = await chromium.connectOverCDP(await debugAddress(child));
    const [context] = browser.contexts();
    if (!context) throw new Error('the browser has no profile open');
    return { context, kill };
  } catch (error) {
    await kill();
    throw error;
  }
}

function killGroup(child: ChildProcess): void {
  if (child.pid === undefined || child.exitCode !== null || child.signalCode !== null) return;
  if (process.platform === 'win32') child.kill('SIGKILL');
  else process.kill(-child.pid, 'SIGKILL');
}

async function debugAddress(child: ChildProcess): Promise<string> {
  const said: string[] = [];
  if (child.stderr) {
    for await (const line of createInterface({ input: child.stderr })) {
      said.push(line);
      const [, address] = /^DevTools listening on (ws:\S+)/.exec(line) ?? [];
      if (!address) continue;
      child.stderr.resume();
      return address;
    }
  }
  throw new Error(`the browser did not start: ${said.join('\n')}`);
}
