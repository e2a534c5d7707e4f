import { signal } from '@preact/signals';

/** Where the app is: `#/mould/ID/run?from=scan` is parts ['mould', ID, 'run'] and query {from: 'scan'}. Hash routes need no server and work in any sub-path. */
export interface Route {
  readonly parts: readonly string[];
  readonly query: URLSearchParams;
  readonly address: string;
}

/** Screens that list what others show one of, as their first part. */
const LISTS = ['', 'shelves', 'where', 'attention', 'place'];

/** Whether an address is of a list, such as a drawer’s contents. */
function isList(address: string): boolean {
  return LISTS.includes(parseRoute(address).parts[0] ?? '');
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
  return {
    parts: path
      .split('/')
      .filter((each) => each !== '')
      .map(part),
    query: new URLSearchParams(query),
    address: hash,
  };
}

export const route = signal<Route>(parseRoute(window.location.hash));
window.addEventListener('hashchange', (event) => {
  countStep(new URL(event.oldURL).hash);
  show();
});

function show(): void {
  route.value = parseRoute(window.location.hash);
}

let wasOnward = false;

/** Whether the screen was gone on to; coming back, the browser itself scrolls to where it was. */
export const isOnward = (): boolean => wasOnward;

/** What is kept with each entry of the browser's history. */
interface Kept {
  /** Screens of the app behind this one: Back must not leave the app. */
  readonly step: number;
  /** The list last looked at before this screen; a desk shows it beside. Empty when there was none. */
  readonly list?: string;
}

let { step, list = '' } = (window.history.state as Kept | null) ?? { step: 0 };
window.history.replaceState({ step, list }, '');

/** The address of the list behind this screen. */
export const listBehind = (): string => list;

/** An entry without a step was made by a link just followed. */
function countStep(from: string): void {
  const known = window.history.state as Kept | null;
  wasOnward = known?.step === undefined;
  step = known?.step ?? step + 1;
  list = known?.step === undefined ? (isList(from) ? from || '#/' : list) : (known.list ?? '');
  if (wasOnward) window.history.replaceState({ step, list }, '');
}

/** Keeps what a list has become, without a step: in the address, or beside the screen that shows one of it. */
export function keepList(address: string, isBeside: boolean): void {
  if (isBeside) list = address;
  window.history.replaceState({ step, list }, '', isBeside ? undefined : address);
}

/** `to(['mould', id], {from: 'scan'})` is the address of a screen, for links and `go`. */
export function to(parts: readonly string[], query: Readonly<Record<string, string>> = {}): string {
  const search = Object.entries(query).map(([key, value]) => `${key}=${encodeURIComponent(value)}`);
  return `#/${parts.map(encodeURIComponent).join('/')}${search.length > 0 ? `?${search.join('&')}` : ''}`;
}

/** Shown at once: the browser tells of a changed hash only some frames later. */
export function go(address: string): void {
  step += 1;
  wasOnward = true;
  if (isList(window.location.hash)) list = window.location.hash || '#/';
  window.history.pushState({ step, list }, '', address);
  show();
}

/** For the mark of a link in a list: whether what it leads to is shown beside. */
export const isShown = (address: string): 'true' | undefined => (route.value.address === address ? 'true' : undefined);

/** In place of this screen: the back button then skips it. */
export function goInstead(address: string): void {
  wasOnward = true;
  window.history.replaceState({ step, list }, '', address);
  show();
}

/** To the screen before; to the shelves when this was the first. */
export function back(): void {
  if (step > 0) window.history.back();
  else goInstead('#/');
}
