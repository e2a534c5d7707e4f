import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { axeWhole } from '../support/axe-whole.ts';
import { makeProfile, openApp, removeProfile } from '../support/browser.ts';
import { damageDatabase } from '../support/damage-database.ts';
import { aJournal } from '../support/entry-builders.ts';
import { layIn } from '../support/lay-in.ts';

let profile = '';
beforeAll(() => {
  profile = makeProfile();
});
afterAll(() => removeProfile(profile));

/** What the second copy holds, as text. */
function copied(page: Page): Promise<string> {
  return page.evaluate(async () => {
    const cache = await caches.open('mouldkeep-second-copy:mouldkeep');
    const texts = await Promise.all((await cache.keys()).map(async (key) => (await cache.match(key))?.text()));
    return texts.join('\n');
  });
}

test('the browser throws its damaged database away: everything but pictures is put back, and that is said until it is read', async () => {
  const entries = aJournal();
  const first = await openApp({ profile, path: '#/shelves' });
  await layIn(first.page, entries);
  await first.page.goto(`${first.url}#/new/wax`);
  await first.page.getByLabel('Name').fill('Kelp green');
  await first.page.locator('.screen-actions .button-main').click();
  await first.page.locator('.toast').waitFor();
  await expect.poll(() => copied(first.page)).toMatch(/Kelp green/);
  await first.close();
  damageDatabase(profile);

  const again = await openApp({ profile, path: '#/where?q=kelp', url: first.url });
  await again.page.getByText('The browser found its database damaged').waitFor();
  await again.page.getByText(`${entries.length + 1} entries, up to`).waitFor();
  await again.page.getByText('Kelp green').first().waitFor();
  expect(await axeWhole(again.page)).toEqual([]);
  await again.page.getByRole('button', { name: 'I have read it' }).click();
  await again.page.reload();
  await again.page.getByText('Kelp green').first().waitFor();
  await expect.poll(() => again.page.getByText('The browser found its database damaged').count()).toBe(0);
  again.assertQuiet();
  await again.close();
});
