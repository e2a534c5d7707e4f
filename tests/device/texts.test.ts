import { afterEach, expect, test, vi } from 'vitest';
import { openTexts } from '../../src/device/texts.ts';

/** A cache storage in memory, as far as texts need one. */
function fakeCaches() {
  const all = new Map<string, Map<string, string>>();
  return {
    has: async (name: string) => all.has(name),
    async open(name: string) {
      const held = all.get(name) ?? new Map<string, string>();
      all.set(name, held);
      const url = (address: string) => `https://example.org/${address}`;
      return {
        keys: async () => [...held.keys()].map((key) => ({ url: key })),
        match: async (address: string) => (held.has(url(address)) ? new Response(held.get(url(address))) : undefined),
        put: async (address: string, response: Response) => void held.set(url(address), await response.text()),
        delete: async (address: string) => held.delete(url(address)),
      };
    },
  };
}

afterEach(() => vi.unstubAllGlobals());

test('texts are kept by name, whatever the name holds, and dropped', async () => {
  vi.stubGlobal('caches', fakeCaches());
  vi.stubGlobal('navigator', {});
  const texts = openTexts('copy');
  expect(await texts?.keys()).toEqual([]);
  await texts?.write('0-page-A/B c', 'one');
  await texts?.write('0-tail-é', 'two');
  expect(await texts?.keys()).toEqual(['0-page-A/B c', '0-tail-é']);
  expect(await texts?.read('0-page-A/B c')).toBe('one');
  await texts?.drop('0-page-A/B c');
  expect(await texts?.keys()).toEqual(['0-tail-é']);
  expect(await texts?.read('0-page-A/B c')).toBeUndefined();
});

test('where room is short, it is left to the records, and what was copied stays', async () => {
  vi.stubGlobal('caches', fakeCaches());
  const estimate = vi.fn(async () => ({ quota: 100e6, usage: 60e6 }));
  vi.stubGlobal('navigator', { storage: { estimate } });
  const texts = openTexts('copy');
  await texts?.write('a', 'kept');
  estimate.mockResolvedValue({ quota: 100e6, usage: 85e6 });
  await expect(texts?.write('b', 'refused')).rejects.toThrow('too little room');
  expect(await texts?.keys()).toEqual(['a']);
});

test('there are none on an insecure page', () => {
  expect(openTexts('copy')).toBeUndefined();
});
