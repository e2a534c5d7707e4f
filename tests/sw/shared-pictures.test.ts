import { beforeEach, describe, expect, test, vi } from 'vitest';
import { SHARED_CACHE, SHARED_PATH } from '../../sw/messages.ts';
import { keepShared, takeShares } from '../../sw/shared-pictures.ts';

const scope = 'https://host.example/studio/';
type Match = (asked: { readonly url: URL }) => boolean;
const routes: { readonly match: Match; readonly method: string }[] = [];
vi.mock('workbox-routing', () => ({ registerRoute: (match: Match, _: unknown, method: string) => routes.push({ match, method }) }));

let kept: Map<string, Response>;
let room: number;

beforeEach(() => {
  kept = new Map();
  room = Number.POSITIVE_INFINITY;
  vi.stubGlobal('caches', {
    open: async (name: string) => ({
      put: async (address: string, response: Response) => {
        expect(name).toBe(SHARED_CACHE);
        if (kept.size >= room) throw new DOMException('no room', 'QuotaExceededError');
        kept.set(address, response);
      },
    }),
  });
});

const photo = (name = 'gate.jpg', type = 'image/jpeg', bytes = 'picture') => new File([bytes], name, { type });
function sent(...files: readonly File[]): Request {
  const body = new FormData();
  body.append('title', 'From the gallery');
  for (const file of files) body.append('pictures', file);
  return new Request(`${scope}share`, { method: 'POST', body });
}
const leadsTo = async (request: Request) => {
  const answer = await keepShared(request, scope, 1_795_000_000_000);
  expect(answer.status).toBe(303);
  return answer.headers.get('location');
};

describe('pictures shared from another app', () => {
  test('only what is posted to the share address, in the app’s own folder, is taken', () => {
    takeShares(scope);
    const [route] = routes;
    expect(route?.method).toBe('POST');
    expect(route?.match({ url: new URL(`${scope}share`) })).toBe(true);
    expect(route?.match({ url: new URL('https://host.example/share') })).toBe(false);
    expect(route?.match({ url: new URL(`${scope}share/more`) })).toBe(false);
  });

  test('are laid aside in their order, whole, and the screen opens', async () => {
    expect(await leadsTo(sent(photo('a.jpg', 'image/jpeg', 'one'), photo('b.png', 'image/png', 'two')))).toBe(`${scope}#/shared`);
    expect([...kept.keys()]).toEqual(['00', '01'].map((i) => `${scope}${SHARED_PATH}1795000000000-${i}`));
    const [first, second] = kept.values();
    expect([await first?.text(), first?.headers.get('content-type')]).toEqual(['one', 'image/jpeg']);
    expect([await second?.text(), second?.headers.get('content-type')]).toEqual(['two', 'image/png']);
  });

  test('what is no picture, empty, or one too many is told of, and the others are kept', async () => {
    expect(await leadsTo(sent(photo(), photo('list.csv', 'text/csv'), photo('empty.png', 'image/png', '')))).toBe(
      `${scope}#/shared?kind=1&empty=1&kept=1`,
    );
    expect(kept.size).toBe(1);
    kept.clear();
    expect(await leadsTo(sent(...Array.from({ length: 23 }, (_, i) => photo(`${i}.jpg`))))).toBe(`${scope}#/shared?many=3&kept=20`);
    expect(kept.size).toBe(20);
  });

  test('when there is no room, or what was sent cannot be read, the screen says so', async () => {
    room = 1;
    expect(await leadsTo(sent(photo(), photo()))).toBe(`${scope}#/shared?room=1&kept=1`);
    const broken = new Request(`${scope}share`, {
      method: 'POST',
      body: 'x',
      headers: { 'content-type': 'multipart/form-data; boundary=no' },
    });
    expect(await leadsTo(broken)).toBe(`${scope}#/shared?unread=1&kept=0`);
    expect(await leadsTo(sent())).toBe(`${scope}#/shared?none=1&kept=0`);
  });
});
