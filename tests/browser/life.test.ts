import { afterEach, expect, test } from 'vitest';
import { lastOfTheirKind } from '../../src/domain/last-of-kind.ts';
import type { Mould } from '../../src/domain/shelf.ts';
import { titleOf } from '../../src/domain/title.ts';
import { axeWhole } from '../support/axe-whole.ts';
import { type OpenApp, openApp } from '../support/browser.ts';
import { demoShelf, workingMould } from '../support/demo-moulds.ts';

let app: OpenApp | undefined;
afterEach(() => app?.close());

const go = (hash: string) => app?.page.evaluate((to) => Object.assign(window.location, { hash: to }), hash);
const theme = (name: 'light' | 'dark') =>
  app?.page.evaluate((to) => {
    document.documentElement.dataset['theme'] = to;
  }, name);

test('a mould’s page says how long it will last and why; each rubber has its curve; what to make again comes first by what would be missed', async () => {
  app = await openApp({ demo: true, path: `#/mould/${workingMould.id}` });
  const { page } = app;
  const life = page.locator('section', { has: page.getByRole('heading', { name: 'Life left in it' }) });
  await life.getByText(/^about [\d,\s]+ sound shots left$/).waitFor();
  await expect.poll(() => life.textContent()).toContain(`moulds of ${workingMould.rubber}`);
  const chance = async () => Number(/(\d+) in 100/.exec((await life.locator('.life-chance').textContent()) ?? '')?.[1]);
  const some = await chance();
  for (let tap = 0; tap < 10; tap++) await life.getByRole('button', { name: 'Shots wanted: 50 more' }).click();
  await expect.poll(() => chance()).toBeLessThan(some);
  expect(await axeWhole(page)).toEqual([]);

  await life.getByRole('link', { name: 'How long moulds last' }).click();
  await page.getByRole('heading', { level: 1, name: 'How long moulds last' }).waitFor();
  const natural = page.locator('.life-card', { has: page.getByRole('heading', { name: 'natural' }) });
  await natural.locator('.curve-steps').waitFor();
  await expect.poll(() => natural.textContent()).toMatch(/\d+ moulds of natural, \d+ still whole/);
  await natural.getByText('The steps as a table').click();
  await natural.getByRole('columnheader', { name: '95 % range' }).waitFor();
  for (const name of ['light', 'dark'] as const) {
    await theme(name);
    expect(await axeWhole(page)).toEqual([]);
  }

  await page.getByRole('link', { name: 'Which to make again first' }).click();
  await page.getByRole('heading', { level: 1, name: 'Make again first' }).waitFor();
  await page.locator('.remake-item, .empty').first().waitFor();
  for (const name of ['light', 'dark'] as const) {
    await theme(name);
    expect(await axeWhole(page)).toEqual([]);
  }
  app.assertQuiet();
});

test('the last of its kind is marked where it is listed, on its page, and where it would be lost', async () => {
  const [last] = lastOfTheirKind(demoShelf) as readonly Mould[];
  if (!last) throw new Error('the demo has a mould that is the last of its kind');
  app = await openApp({ demo: true, path: '#/remake' });
  const { page } = app;
  await page
    .locator('.row', { hasText: titleOf(demoShelf, last) })
    .getByText('last of its kind')
    .first()
    .waitFor();
  await go(`#/mould/${last.id}`);
  await page.locator('.mould-head').getByText('last of its kind').waitFor();
  await page.getByText('no master to make one from').first().waitFor();
  await page.getByRole('button', { name: 'More about this mould' }).click();
  await page.getByRole('button', { name: 'Retire' }).click();
  await page.getByRole('dialog').getByText('last of its kind').waitFor();
  await expect.poll(() => page.getByRole('dialog').textContent()).toContain('a dud is left out');
  await page.keyboard.press('Escape');
  await go(`#/mould/${last.id}/failed`);
  await page.getByRole('main').getByText('last of its kind').waitFor();
  app.assertQuiet();
});

test('rejects that rise are told after the run, with what to try before the mould is blamed', async () => {
  const drifting = [...demoShelf.things.mould.values()].find(
    (mould) => (mould.drift?.sign ?? 0) > 6 && !mould.retired && mould.grade !== 'failed' && (mould.cavities ?? 1) === 1,
  );
  if (!drifting) throw new Error('the demo has a mould whose rejects rise');
  app = await openApp({ demo: true, path: `#/mould/${drifting.id}` });
  const { page } = app;
  await page.getByRole('heading', { name: 'Before you blame the mould' }).waitFor();
  await expect.poll(() => page.locator('.cause-list').first().textContent()).toMatch(/wax temperature|pressure|clamping|vents|release/);
  await expect.poll(() => page.getByRole('main').textContent()).toMatch(/Since .* waxes were thrown out/);
  app.assertQuiet();
});
