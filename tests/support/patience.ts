import type { BrowserContext, Page } from 'playwright-core';

/** How long a test waits for what has to come; a busy machine of two cores takes a good part of it, and what never comes is told all the same. */
const PATIENCE_MS = 60_000;
/** MOULDKEEP_SLOW=4 makes every page four times slower, so that a test that looks too early is found on a quick machine. */
const SLOWER = Number(process.env.MOULDKEEP_SLOW ?? 1);
/** MOULDKEEP_NOW=2027-01-31T23:50 has every browser begin at that time, since some days are not like others. */
const NOW = process.env.MOULDKEEP_NOW;

/** Gives a browser's pages, also those opened later, the patience, slowness and time of this run. */
export async function beSlow(context: BrowserContext): Promise<void> {
  context.setDefaultTimeout(PATIENCE_MS);
  if (NOW) await context.clock.setSystemTime(NOW);
  if (!(SLOWER > 1)) return;
  const slow = async (page: Page) => {
    const session = await context.newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  };
  context.on('page', (page) => void slow(page).catch(() => undefined));
  await Promise.all(context.pages().map(slow));
}
