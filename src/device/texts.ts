/** Bytes that are left to the records themselves: where there are fewer, nothing is copied, and what was copied before stays as it is. */
const LEFT_FREE = 20_000_000;

async function hasRoom(): Promise<boolean> {
  const { quota = Number.POSITIVE_INFINITY, usage = 0 } = (await navigator.storage?.estimate()) ?? {};
  return quota - usage > LEFT_FREE;
}

/**
 * Texts by name in the browser's cache storage, for `Texts` of the store. Chromium destroys an IndexedDB that it finds damaged after a crash
 * (content/browser/indexed_db, “attempting cleanup”) and leaves this one. Undefined where there is none: on an insecure page.
 */
export function openTexts(name: string) {
  if (!('caches' in globalThis)) return undefined;
  const opened = () => caches.open(name);
  // Addresses that nothing ever asks for: the service worker answers from its own cache alone.
  const address = (key: string) => `second-copy/${encodeURIComponent(key)}`;
  return {
    async keys() {
      if (!(await caches.has(name))) return [];
      return (await (await opened()).keys()).map(({ url }) => decodeURIComponent(url.slice(url.lastIndexOf('/') + 1)));
    },
    read: async (key: string) => (await (await opened()).match(address(key)))?.text(),
    async write(key: string, text: string) {
      if (!(await hasRoom())) throw new DOMException('There is too little room for a second copy.', 'QuotaExceededError');
      await (await opened()).put(address(key), new Response(text));
    },
    drop: async (key: string) => {
      await (await opened()).delete(address(key));
    },
  };
}
