import { afterEach, expect, test } from 'vitest';
import { axeWhole } from '../support/axe-whole.ts';
import { type OpenApp, openApp } from '../support/browser.ts';
import { failedMould, workingMould } from '../support/demo-moulds.ts';

let app: OpenApp | undefined;
afterEach(() => app?.close());

const runOf = (id: string) => `#/mould/${id}/run`;

test('a run is logged by thumb, with last time’s wax, offline; counts change at once and Undo takes it back', async () => {
  app = await openApp({ demo: true, path: runOf(workingMould.id), offline: true });
  const { page } = app;
  await page.getByRole('button', { name: 'Shots: 10 more' }).click();
  await page.getByRole('button', { name: 'Shots: one more' }).click();
  await page.getByRole('button', { name: 'Shots: one more' }).click();
  await page.locator('.rejects .stepper-button[aria-label$="one more"]').first().click();
  await expect.poll(() => page.getByRole('group', { name: 'Wax' }).getByRole('radio', { checked: true }).count()).toBe(1);
  await page.locator('.run-sum', { hasText: `The mould then has ${workingMould.shots + 12} shots` }).waitFor();
  expect(await axeWhole(page)).toEqual([]);
  await page.getByRole('button', { name: 'Log 12 shots' }).click();
  await page.waitForURL((url) => url.hash === `#/mould/${workingMould.id}`);
  const shots = page.locator('dt:text-is("Shots") + dd');
  await expect.poll(() => shots.textContent()).toBe(String(workingMould.shots + 12));
  const good = 12 * (workingMould.cavities ?? 1) - 1;
  await page.getByText(`12 shots logged: ${good} good waxes, 1 reject.`).waitFor();
  await page.locator('.history-line', { hasText: `12 shots` }).first().waitFor();
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByText('Taken back.').waitFor();
  await expect.poll(() => shots.textContent()).toBe(String(workingMould.shots));
  app.assertQuiet();
});

test('more rejects than waxes is refused beside the field, and what was typed is there after a reload', async () => {
  app = await openApp({ demo: true, path: runOf(workingMould.id) });
  const { page } = app;
  await page.getByLabel('Shots', { exact: true }).fill('2');
  await page.locator('.rejects input').first().fill('99');
  await page.getByLabel('Wax temperature').fill('warm');
  await page.getByLabel('Note').fill('<b>pot</b> low');
  await page.getByRole('button', { name: 'Log 2 shots' }).click();
  await page.locator('.field-problem', { hasText: '“warm” is not a number.' }).waitFor();
  await page.getByLabel('Wax temperature').fill('');
  await page.getByRole('button', { name: 'Log 2 shots' }).click();
  await page.locator('.field-problem', { hasText: '99 rejects are more than' }).waitFor();
  await page.reload();
  await page.getByRole('button', { name: 'Log 2 shots' }).waitFor();
  await expect.poll(() => page.locator('.rejects input').first().inputValue()).toBe('99');
  await expect.poll(() => page.getByLabel('Note').inputValue()).toBe('<b>pot</b> low');
});

test('what is wrong with a field is said until that field is changed, and no longer', async () => {
  app = await openApp({ demo: true, path: runOf(workingMould.id) });
  const { page } = app;
  await page.getByRole('button', { name: 'Log the run' }).click();
  const wrong = page.getByText('A run has at least one shot.');
  await expect.poll(() => wrong.count()).toBe(2);
  await page.getByLabel('Note').fill('pot low');
  await page.getByLabel('Shots', { exact: true }).fill('5');
  await page.getByRole('button', { name: 'Log 5 shots' }).waitFor();
  await expect.poll(() => wrong.count()).toBe(0);
});

test('a failed mould cannot be picked for a run without a warning', async () => {
  app = await openApp({ demo: true, path: runOf(failedMould.id) });
  const { page } = app;
  await page.locator('.note-problem', { hasText: 'This mould was marked failed' }).waitFor();
  await page.getByRole('button', { name: 'Shots: 5 more' }).click();
  await page.getByRole('button', { name: 'Log 5 shots' }).click();
  await page.getByRole('button', { name: 'Log it all the same' }).click();
  await page.waitForURL((url) => url.hash === `#/mould/${failedMould.id}`);
  await expect.poll(() => page.locator('dt:text-is("Shots") + dd').textContent()).toBe(String(failedMould.shots + 5));
});

test('a run is logged once, however often the button is tapped', async () => {
  app = await openApp({ demo: true, path: runOf(workingMould.id) });
  const { page } = app;
  await page.getByRole('button', { name: 'Shots: 5 more' }).click();
  await page.getByRole('button', { name: 'Log 5 shots' }).waitFor();
  const tapped = page.evaluate(
    () =>
      new Promise<void>((resolve) => {
        const button = document.querySelector<HTMLButtonElement>('.screen-actions .button-main');
        const tapping = setInterval(() => button?.click(), 2);
        setTimeout(() => {
          clearInterval(tapping);
          resolve();
        }, 2000);
      }),
  );
  await page.waitForURL((url) => url.hash === `#/mould/${workingMould.id}`);
  await page.getByText('5 shots logged').waitFor();
  await tapped;
  // What was written, from the store.
  await page.reload();
  await expect.poll(() => page.locator('dt:text-is("Shots") + dd').textContent()).toBe(String(workingMould.shots + 5));
});
