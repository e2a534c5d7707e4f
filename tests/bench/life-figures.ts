import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { quietFlags } from '../support/quiet-flags.ts';
import { launchedPage, until } from './slow-page.ts';
import type { StudioSize } from './studio.ts';
import type { Figure } from './table.ts';

const STUDIO = 'mouldkeep';
/** Each on a page of its own, since the first time is the dearest and the one that counts. */
const TIMES = 5;

/** What reckoning the lives of all moulds of a studio costs: the worst of the times, each on a fresh page. */
export async function benchLife({ url, chrome }: { url: string; chrome: string }, size: StudioSize, slowdown: number): Promise<Figure[]> {
  const profile = mkdtempSync(join(tmpdir(), 'mouldkeep-life-'));
  const context = await chromium.launchPersistentContext(profile, { executablePath: chrome, args: quietFlags });
  try {
    const maker = context.pages()[0] ?? (await context.newPage());
    await maker.goto(`${url}bench/`);
    await until(maker, 'window.bench');
    await maker.evaluate(([name, s]) => window.bench.restore(name, s), [STUDIO, size] as const);
    const times: Awaited<ReturnType<typeof window.bench.life>>[] = [];
    for (let i = 0; i < TIMES; i++) {
      const page = await launchedPage(context, slowdown);
      await page.goto(`${url}bench/`);
      await until(page, 'window.bench');
      times.push(await page.evaluate((name) => window.bench.life(name), STUDIO));
      await page.close();
    }
    const all = (of: (time: (typeof times)[number]) => number) => times.map(of).sort((a, b) => a - b);
    const said = (list: readonly number[]) => list.map((ms) => ms.toFixed(0)).join(' · ');
    const sums = all((time) => time.sums);
    const answered = all((time) => time.answered);
    const blocked = all((time) => time.blocked);
    const what = `life of ${times[0]?.moulds} moulds`;
    return [
      {
        name: `${what}: fit and forecast, at ${slowdown}× slowdown`,
        value: sums[Math.floor(TIMES / 2)] ?? Number.NaN,
        unit: 'ms',
        bound: 400,
        note: `done on the slowed page, which the worker is not; ${said(sums)}; asking to answer ${said(answered)} ms`,
      },
      {
        name: `${what}: the page held up meanwhile, at most`,
        value: blocked[Math.floor(TIMES / 2)] ?? Number.NaN,
        unit: 'ms',
        bound: 50,
        note: `${said(blocked)} on a fresh page each time`,
      },
    ];
  } finally {
    await context.close();
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  }
}
