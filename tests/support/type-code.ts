import type { Page } from 'playwright-core';

/** Gives the scan screen a label's code by its keys, whether or not there is a camera to be put aside first. */
export async function typeCode(page: Page, code: string | undefined): Promise<void> {
  const input = page.getByLabel('The code on the label');
  const asked = page.getByRole('button', { name: 'Type the code' });
  await asked.or(input).first().waitFor();
  if (await asked.isVisible()) await asked.click();
  await input.fill(code ?? '');
}
