import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { backupFigures, type Worked } from './backup-figures.ts';
import { damages } from './damage.ts';
import { type Bench, inBenchPage, onPhone } from './phone.ts';
import type { StudioSize } from './studio.ts';
import type { Figure } from './table.ts';
import { resting, watched } from './watched.ts';

const PICTURES = 500;
const STUDIO = 'mouldkeep';
const PATIENCE = 120_000;

/**
 * The whole studio with its pictures to one file and back, in the app as it is used: made, looked at on a device that has a studio of its own,
 * and put in that one's place. Once with half of the pictures and once with all, so that it shows what they cost. Spoiled files first.
 */
export async function benchBackup(bench: Bench, size: StudioSize): Promise<readonly Figure[]> {
  const folder = mkdtempSync(join(tmpdir(), 'mouldkeep-backup-'));
  const at = (name: string) => join(folder, name);
  try {
    const writing = await inBrowser(bench, async (context, profile) => {
      await inBenchPage(bench, context, (page) => page.evaluate(([name, s]) => window.bench.restore(name, s), [STUDIO, size] as const));
      const each: Pick<Worked, 'write' | 'bytes'>[] = [];
      for (const [from, to] of [
        [0, PICTURES / 2],
        [PICTURES / 2, PICTURES],
      ] as const) {
        await inBenchPage(bench, context, (page) =>
          page.evaluate(([name, a, b]) => window.bench.photos(name, a, b), [STUDIO, from, to] as const),
        );
        const file = at(`${to}.zip`);
        const write = await makeOne(bench, context, profile, file);
        each.push({ write, bytes: statSync(file).size });
      }
      return each;
    });
    const worked: Worked[] = [];
    let refused = 0;
    for (const [i, made] of writing.entries()) {
      const pictures = (PICTURES / 2) * (i + 1);
      const read = await inBrowser(bench, async (context, profile) => {
        await inBenchPage(bench, context, (page) => page.evaluate((name) => window.bench.begin(name), STUDIO));
        if (pictures === PICTURES) refused = await refuseDamaged(bench, context, at(`${pictures}.zip`), at('damaged.zip'));
        return openOne(bench, context, profile, at(`${pictures}.zip`));
      });
      worked.push({ pictures, ...made, ...read });
    }
    return backupFigures(worked, refused);
  } finally {
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  }
}

/** As on a phone: the file is handed over when it is whole. */
function inBrowser<T>(bench: Bench, job: (context: BrowserContext, profile: string) => Promise<T>): Promise<T> {
  return onPhone(
    bench,
    async (context, profile) => {
      await context.addInitScript(() => Reflect.deleteProperty(window, 'showSaveFilePicker'));
      return job(context, profile);
    },
    { serviceWorkers: 'block' },
  );
}

/** The backup's screen of the app, some time after it was opened: what goes on after a start is over. */
async function backupScreen({ url }: Bench, context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await page.goto(`${url}#/backup`);
  await page.getByRole('button', { name: 'Make a backup' }).waitFor({ timeout: PATIENCE });
  await page.waitForTimeout(4000);
  return page;
}

async function makeOne(bench: Bench, context: BrowserContext, profile: string, file: string): Promise<Worked['write']> {
  const page = await backupScreen(bench, context);
  const download = page.waitForEvent('download', { timeout: PATIENCE });
  const seen = await watched(page, profile, await resting(context, page, profile), async () => {
    await page.getByRole('button', { name: 'Make a backup' }).click();
    await page.getByText(/^The backup was made and read back/).waitFor({ timeout: PATIENCE });
  });
  await (await download).saveAs(file);
  await page.close();
  return seen;
}

async function openOne(bench: Bench, context: BrowserContext, profile: string, file: string): Promise<Pick<Worked, 'open' | 'replace'>> {
  const page = await backupScreen(bench, context);
  const choose = page.locator('input[type=file]');
  await choose.waitFor({ state: 'attached' });
  // What was looked at stays while it is put in place, so both are held against the time before.
  const before = await resting(context, page, profile);
  const open = await watched(page, profile, before, async () => {
    await choose.setInputFiles(file);
    await page.getByRole('dialog', { name: 'What this backup would bring' }).waitFor({ timeout: PATIENCE });
  });
  await page.getByRole('button', { name: 'Replace these shelves…' }).click();
  const sure = page.getByRole('dialog', { name: 'Replace these shelves?' });
  await sure.waitFor();
  const replace = await watched(page, profile, before, async () => {
    await sure.getByRole('button', { name: 'Replace these shelves' }).click();
    await page.getByText('The backup is on the shelves now.').waitFor({ timeout: PATIENCE });
  });
  await page.close();
  return { open, replace };
}

/** Opens spoiled copies. Gives how many were refused with their reason and nothing changed; throws when one was not. */
async function refuseDamaged(bench: Bench, context: BrowserContext, file: string, into: string): Promise<number> {
  const page = await backupScreen(bench, context);
  const rows = () => page.evaluate(countRows, STUDIO);
  const before = await rows();
  const all = damages(file, 3);
  for (const { name, says, make } of all) {
    make(into);
    await page.locator('input[type=file]').setInputFiles(into);
    const note = page.locator('.note-problem');
    await note.waitFor({ timeout: PATIENCE });
    const text = (await note.textContent()) ?? '';
    const after = await rows();
    if (!says.test(text) || !text.includes('Nothing was changed.') || after !== before) {
      throw new Error(`a backup ${name} was answered with “${text}”; rows before and after: ${before} and ${after}`);
    }
  }
  await page.close();
  return all.length;
}

/** How many rows each table of a database has. */
async function countRows(name: string): Promise<string> {
  const of = <T>(request: IDBRequest<T>) =>
    new Promise<T>((done, failed) => {
      request.onsuccess = () => done(request.result);
      request.onerror = () => failed(request.error);
    });
  const db = await of(indexedDB.open(name));
  const tables = [...db.objectStoreNames];
  const transaction = db.transaction(tables);
  const counts = await Promise.all(tables.map(async (table) => `${table} ${await of(transaction.objectStore(table).count())}`));
  db.close();
  return counts.join(', ');
}
