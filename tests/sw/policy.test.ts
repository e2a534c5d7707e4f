import { beforeEach, expect, test, vi } from 'vitest';
import { answerNavigation, keepEverything } from '../../sw/policy.ts';

type Answer = (options: { readonly url: URL }) => Promise<Response>;

/** What the app asked of Workbox, in order. */
const asked: string[] = [];
const routes: Answer[] = [];

vi.mock('workbox-precaching', () => ({
  precacheAndRoute: (files: unknown) => asked.push(`keep ${JSON.stringify(files)}`),
  matchPrecache: async (url: string) => (url.endsWith('.svg') ? new Response('a picture') : undefined),
  cleanupOutdatedCaches: () => asked.push('clean up'),
  createHandlerBoundToURL: (url: string) => async () => new Response(url),
}));
vi.mock('workbox-routing', () => ({
  NavigationRoute: class {
    readonly answer: Answer;
    constructor(answer: Answer) {
      this.answer = answer;
    }
  },
  registerRoute: ({ answer }: { readonly answer: Answer }) => routes.push(answer),
}));

const scope = 'https://host.example/studio/';

beforeEach(() => {
  asked.length = 0;
  routes.length = 0;
});

async function answerTo(address: string): Promise<Response> {
  answerNavigation(scope, ['assets/app-B2.js', 'assets/doors-C3.js']);
  expect(routes).toHaveLength(1);
  return (routes[0] as Answer)({ url: new URL(address) });
}

test('every file of the version is kept, and what older versions kept is thrown away', () => {
  const files = [
    { url: 'index.html', revision: 'a1' },
    { url: 'assets/main-B2.js', revision: null },
  ];
  keepEverything(files);
  expect(asked).toEqual([`keep ${JSON.stringify(files)}`, 'clean up']);
});

test.each([scope, `${scope}?demo`, `${scope}index.html`])('%s is answered with the app itself', async (address) => {
  const answer = await answerTo(address);
  expect(answer.status).toBe(200);
  expect(await answer.text()).toBe('index.html');
  expect(answer.headers.get('link')).toBe(
    '</studio/assets/app-B2.js>; rel=preload; as=script, </studio/assets/doors-C3.js>; rel=preload; as=script',
  );
});

test('a file of the app is answered with itself', async () => {
  expect(await (await answerTo(`${scope}icon.svg`)).text()).toBe('a picture');
});

test('an address below the app’s root is sent there first, with what was asked', async () => {
  const answer = await answerTo(`${scope}some/where?demo`);
  expect(answer.status).toBe(302);
  expect(answer.headers.get('location')).toBe(`${scope}?demo`);
});
