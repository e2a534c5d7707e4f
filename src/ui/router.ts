import { signal } from '@preact/signals';

/** Where the app is: `#/mould/ID/run?from=scan` is parts ['mould', ID, 'run'] and query {from: 'scan'}. Hash routes need no server and work in any sub-path. */
export interface Route {
  readonly parts: readonly string[];
  readonly query: URLSearchParams;
}

function part(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

export function parseRoute(hash: string): Route {
  const [path = '', query = ''] = hash.replace(/^#\/?/, '').split('?', 2);
  return { parts: path.split('/').filter((each) => each !== '').map(part), query: new URLSearchParams(query) };
}

export const route = signal<Route>(parseRoute(window.location.hash));
window.addEventListener('hashchange', () => {
  route.value = parseRoute(window.location.hash);
});

/** `to(['mould', id], {from: 'scan'})` is the address of a screen, for links and `go`. */
export function to(parts: readonly string[], query: Readonly<Record<string, string>> = {}): string {
  const search = new URLSearchParams(query).toString();
  return `#/${parts.map(encodeURIComponent).join('/')}${search ? `?${search}` : ''}`;
}

export function go(address: string): void {
  window.location.hash = address;
}

/** In place of this screen: the back button then skips it. */
export function goInstead(address: string): void {
  window.location.replace(address);
}

export function back(): void {
  if (window.history.length > 1) window.history.back();
  else go('#/');
}
