import { type Bench, inBenchPage, onPhone } from './phone.ts';
import { launchedPage, until } from './slow-page.ts';
import type { Figure } from './table.ts';

const THINGS = 500;
const TIMES = 7;

/** A lineage of 500 things, opened in the app: from the tap to its cards on the glass, laid out and drawn. */
export function benchLineage(bench: Bench, slowdown: number): Promise<Figure> {
  return onPhone(bench, async (context) => {
    const original = await inBenchPage(bench, context, (maker) =>
      maker.evaluate((things) => window.bench.family('mouldkeep', things), THINGS),
    );
    const page = await launchedPage(context, slowdown);
    await page.goto(`${bench.url}#/thing/${original}`);
    await until(page, 'document.querySelector("a[href*=lineage]")');
    const times: number[] = [];
    for (let i = 0; i < TIMES; i++) {
      await page.evaluate(() => {
        window.location.hash = '#/where';
      });
      await until(page, 'document.querySelector("#where-query")');
      await page.waitForTimeout(800);
      times.push(await page.evaluate(openLineage, original));
    }
    // The first also fetches the screen's code.
    const sorted = times.slice(1).sort((a, b) => a - b);
    return {
      name: `a lineage of ${THINGS} laid out and drawn`,
      value: sorted[Math.floor(sorted.length / 2)] ?? Number.NaN,
      unit: 'ms',
      bound: 300,
      note: `tap to cards on the glass; ${sorted.map((ms) => ms.toFixed(0)).join(' · ')}`,
    };
  });
}

async function openLineage(id: string): Promise<number> {
  const began = performance.now();
  const shown = new Promise<number>((done, failed) => {
    const watch = new MutationObserver(() => {
      if (!document.querySelector('.lineage-card')) return;
      watch.disconnect();
      requestAnimationFrame(() => setTimeout(() => done(performance.now() - began)));
    });
    watch.observe(document.body, { childList: true, subtree: true });
    setTimeout(() => failed(new Error('the lineage was not drawn')), 20_000);
  });
  window.location.hash = `#/lineage/${id}`;
  return await shown;
}
