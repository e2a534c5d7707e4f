import type { BrowserContext, Page } from 'playwright-core';

/** A new page whose processor is slowed down, as a phone's would be beside this machine's. The storage process is not slowed. */
export async function launchedPage(context: BrowserContext, slowdown: number): Promise<Page> {
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
  return page;
}

/** Waits until an expression is truthy in the page. Playwright's own way compiles code inside the page, which the policy refuses. */
export async function until(page: Page, expression: string, patience = 60_000): Promise<void> {
  const end = Date.now() + patience;
  while (!(await page.evaluate(`Boolean(${expression})`))) {
    if (Date.now() > end) throw new Error(`${expression} did not come true`);
    await new Promise((done) => setTimeout(done, 50));
  }
}
