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

function parseRoute(hash: string): Route {
  const [path = '', query = ''] = hash.replace(/^#\/?/, '').split('?', 2);
  return {
    parts: path
      .split('/')
      .filter((each) => each !== '')
      .map(part),
    query: new URLSearchParams(query),
  };
}

export const route = signal<Route>(parseRoute(window.location.hash));
window.addEventListener('hashchange', () => {
  countStep();
  route.value = parseRoute(window.location.hash);
});

/** Screens of the app behind this one, kept with each entry of the browser's history: Back must not leave the app. */
let step = (window.history.state as { readonly step?: number } | null)?.step ?? 0;
let isReplacing = false;
window.history.replaceState({ step }, '');

function countStep(): void {
  const known = (window.history.state as { readonly step?: number } | null)?.step;
  step = known ?? (isReplacing ? step : step + 1);
  isReplacing = false;
  if (known === undefined) window.history.replaceState({ step }, '');
}

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
  isReplacing = new URL(address, window.location.href).href !== window.location.href;
  window.location.replace(address);
}

/** To the screen before; to the shelves when this was the first. */
export function back(): void {
  if (step > 0) window.history.back();
  else goInstead('#/');
}
