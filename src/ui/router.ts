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
  show();
});

function show(): void {
  route.value = parseRoute(window.location.hash);
}

/** Whether the screen was gone on to; coming back, the browser itself scrolls to where it was. */
export let isOnward = false;

/** Screens of the app behind this one, kept with each entry of the browser's history: Back must not leave the app. */
let step = (window.history.state as { readonly step?: number } | null)?.step ?? 0;
window.history.replaceState({ step }, '');

/** An entry without a step was made by a link just followed. */
function countStep(): void {
  const known = (window.history.state as { readonly step?: number } | null)?.step;
  isOnward = known === undefined;
  step = known ?? step + 1;
  if (known === undefined) window.history.replaceState({ step }, '');
}

/** `to(['mould', id], {from: 'scan'})` is the address of a screen, for links and `go`. */
export function to(parts: readonly string[], query: Readonly<Record<string, string>> = {}): string {
  const search = Object.entries(query).map(([key, value]) => `${key}=${encodeURIComponent(value)}`);
  return `#/${parts.map(encodeURIComponent).join('/')}${search.length > 0 ? `?${search.join('&')}` : ''}`;
}

/** Shown at once: the browser tells of a changed hash only some frames later. */
export function go(address: string): void {
  step += 1;
  isOnward = true;
  window.history.pushState({ step }, '', address);
  show();
}

/** In place of this screen: the back button then skips it. */
export function goInstead(address: string): void {
  isOnward = true;
  window.history.replaceState({ step }, '', address);
  show();
}

/** To the screen before; to the shelves when this was the first. */
export function back(): void {
  if (step > 0) window.history.back();
  else goInstead('#/');
}
