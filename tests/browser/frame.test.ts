import { afterEach, expect, test } from 'vitest';
import { goOffline, kill, makeProfile, type OpenApp, openApp, removeProfile } from '../support/browser.ts';

let app: OpenApp | undefined;
afterEach(() => app?.close());

test('opens quietly, with a policy in force that refuses code from elsewhere', async () => {
  app = await openApp();
  await app.page.waitForSelector('.door');
  app.assertQuiet();
  const ran = await app.page.evaluate(async () => {
    const script = document.createElement('script');
    script.textContent = 'window.inlineRan = true';
    document.head.append(script);
    const fetched = await fetch('https://elsewhere.invalid/').then(
      () => true,
      () => false,
    );
    return { inline: 'inlineRan' in window, fetched };
  });
  expect(ran).toEqual({ inline: false, fetched: false });
  expect(() => app?.assertQuiet()).toThrow(/Content Security Policy/);
});

test('opens without a network after the first visit, from any address inside it, even after the browser was killed', async () => {
  const profile = makeProfile();
  app = await openApp({ profile });
  await goOffline(app.context, app.page);
  await app.page.reload();
  await app.page.waitForSelector('.door');
  await app.page.goto(`${app.url}some/where?demo#/anything`);
  await app.page.waitForSelector('#app > *');
  expect(app.page.url()).toBe(`${app.url}?demo#/anything`);
  await kill(app);
  app = await openApp({ profile });
  await app.page.waitForSelector('.door');
  await app.close();
  app = undefined;
  removeProfile(profile);
});
