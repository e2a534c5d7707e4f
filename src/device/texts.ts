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
    write: async (key: string, text: string) => (await opened()).put(address(key), new Response(text)),
    drop: async (key: string) => {
      await (await opened()).delete(address(key));
    },
  };
}
