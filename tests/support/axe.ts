import axe from 'axe-core';
import type { Page } from 'playwright-core';

/** Resolves once nothing moves any more: half faded in, words have too little contrast. */
function stillness(page: Page): Promise<unknown> {
  return page.evaluate(() =>
    Promise.allSettled(
      document
        .getAnimations()
        .filter(({ effect }) => effect?.getComputedTiming().endTime !== Number.POSITIVE_INFINITY)
        .map(({ finished }) => finished),
    ),
  );
}

/** What axe finds wrong with the page as it stands, one readable line per thing. The size of targets, off by default, is looked at too. */
export async function axeViolations(page: Page): Promise<string[]> {
  await stillness(page);
  // Half a megabyte, once for each page.
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axe.source);
  return page.evaluate(async () => {
    const { axe: tool } = window as unknown as { axe: typeof import('axe-core') };
    const { violations } = await tool.run(document, { rules: { 'target-size': { enabled: true } }, resultTypes: ['violations'] });
    return violations.flatMap(({ id, help, nodes }) => nodes.map((node) => `${id}: ${help} — ${node.target.join(' ')} ${node.html}`));
  });
}
