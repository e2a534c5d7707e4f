import type { Page } from 'playwright-core';
import { axeViolations } from './axe.ts';

/** What axe finds wrong with the whole screen: in a window so tall that no bar covers half of a button that can be scrolled clear of it. */
export async function axeWhole(page: Page): Promise<string[]> {
  const size = page.viewportSize() ?? { width: 390, height: 844 };
  await page.setViewportSize({ width: size.width, height: 5000 });
  try {
    return await axeViolations(page);
  } finally {
    await page.setViewportSize(size);
  }
}
