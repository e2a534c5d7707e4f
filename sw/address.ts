/** The scope's root with the query kept, or nothing if the address is the root already. Browsers carry the `#…` over by themselves. */
export function rootAddress(url: URL, scope: string): string | undefined {
  const root = new URL(scope);
  if (url.pathname === root.pathname || url.pathname === `${root.pathname}index.html`) return undefined;
  root.search = url.search;
  return root.href;
}
