import { type Bench, inBenchPage, onPhone } from './phone.ts';
import { launchedPage, until } from './slow-page.ts';
import type { StudioSize } from './studio.ts';
import type { Figure } from './table.ts';

const STUDIO = 'mouldkeep';
/** Each on a page of its own, since the first time is the dearest and the one that counts. */
const TIMES = 5;

/** What reckoning the lives of all moulds of a studio costs: the worst of the times, each on a fresh page. */
export function benchLife(bench: Bench, size: StudioSize, slowdown: number): Promise<Figure[]> {
  return onPhone(bench, async (context) => {
    await inBenchPage(bench, context, (maker) => maker.evaluate(([name, s]) => window.bench.restore(name, s), [STUDIO, size] as const));
    const times: Awaited<ReturnType<typeof window.bench.life>>[] = [];
    for (let i = 0; i < TIMES; i++) {
      const page = await launchedPage(context, slowdown);
      await page.goto(`${bench.url}bench/`);
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
  });
}
