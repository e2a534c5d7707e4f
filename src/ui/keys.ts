import type { Deps } from '../actions/deps.ts';
import type { Shelf } from '../domain/shelf.ts';
import { thingOf } from '../domain/shelf.ts';
import { focusPage, focusSearch, pickFrom, stepInList, toList } from './key-focus.ts';
import { say } from './parts/toast.tsx';
import { picking } from './picking.ts';
import { go, listBehind, route, to } from './router.ts';

/** What a key needs to do its work. */
export interface KeyDesk {
  readonly deps: Deps;
  readonly shelf: Shelf;
  readonly showKeys: (isShown: boolean) => void;
}

export interface KeyRule {
  /** As the keyboard calls it. */
  readonly key: string;
  /** As a person calls it, when that differs. */
  readonly shown?: string;
  readonly says: string;
  /** False leaves the key to the browser. */
  readonly run: (desk: KeyDesk) => boolean;
}

const goTo = (address: string) => (): boolean => {
  go(address);
  return true;
};

/** The thing or place the screen is about; the drawer open beside its cabinet, on the shelves. */
function subject({ shelf }: KeyDesk) {
  const { parts, query } = route.value;
  const [name = '', id] = parts;
  return thingOf(shelf, ['mould', 'thing', 'place'].includes(name) ? id : (query.get('drawer') ?? undefined));
}

/** Every key there is; the list shown on “?” is made from it. Chosen so that none is the browser’s own, and none works while something is typed. */
export const KEYS: readonly KeyRule[] = [
  { key: '1', says: 'Shelves', run: goTo('#/') },
  { key: '2', says: 'Where is', run: goTo('#/where') },
  { key: '3', says: 'Scan', run: goTo('#/scan') },
  { key: '4', says: 'Wax', run: goTo('#/wax') },
  { key: '5', says: 'To do', run: goTo('#/attention') },
  {
    key: '/',
    says: 'Search',
    run: () => {
      if (!focusSearch()) go('#/where');
      return true;
    },
  },
  { key: 'ArrowDown', shown: '↓', says: 'Next line of a list', run: () => stepInList(1) },
  { key: 'ArrowUp', shown: '↑', says: 'Line before', run: () => stepInList(-1) },
  { key: 'Enter', says: 'Open it', run: () => false },
  { key: 'ArrowRight', shown: '→', says: 'From the list to what is open beside it', run: focusPage },
  { key: 'ArrowLeft', shown: '←', says: 'Back to the list', run: toList },
  {
    key: ' ',
    shown: 'Space',
    says: 'Choose several, beginning with this line (or Shift and click)',
    run: () => pickFrom(document.activeElement),
  },
  {
    key: 'n',
    says: 'New: a mould in the open drawer, or anything',
    run: (desk) => {
      const place = subject(desk);
      go(place?.noun === 'place' && place.kind !== 'away' ? to(['new', 'mould'], { at: place.id }) : '#/new');
      return true;
    },
  },
  {
    key: 'e',
    says: 'Edit what is open',
    run: (desk) => {
      const thing = subject(desk);
      if (thing) go(to(['edit', thing.id]));
      return thing !== undefined;
    },
  },
  {
    key: 'm',
    says: 'Move what is chosen, or what is open',
    run: (desk) => {
      const thing = subject(desk);
      const ids = picking.value?.ids ?? [];
      if (ids.length > 0) go(to(['move'], { things: ids.join(',') }));
      else if (thing?.noun === 'place') go(to(['move'], { to: thing.id }));
      else go(to(['move'], thing ? { things: thing.id } : {}));
      return true;
    },
  },
  {
    key: 'l',
    says: 'Labels of what is chosen, or of what is open',
    run: (desk) => {
      const ids = picking.value?.ids ?? [];
      const open = subject(desk);
      const things = ids.length > 0 ? ids.join(',') : (open?.id ?? '');
      go(to(['labels'], things === '' ? {} : { things }));
      return true;
    },
  },
  {
    key: 'u',
    says: 'Undo what was just done',
    run: () => {
      const undo = document.querySelector<HTMLElement>('.toast .toast-undo:not([hidden])');
      if (undo) undo.click();
      else say('Nothing was done a moment ago. The history of each thing has an Undo for every line.');
      return true;
    },
  },
  {
    key: 'Escape',
    shown: 'Esc',
    says: 'Leave a field, end choosing, close what is open',
    run: () => {
      if (picking.value) picking.value.stop();
      else if (document.querySelector('.pane-list')) go(listBehind());
      else if (route.value.query.has('drawer')) go(to(route.value.parts));
      else {
        const back = document.querySelector<HTMLElement>('.screen-head [aria-label="Back"]');
        back?.click();
        return back !== null;
      }
      return true;
    },
  },
  {
    key: '?',
    says: 'This list',
    run: ({ showKeys }) => {
      showKeys(true);
      return true;
    },
  },
];

const KEPT_AS = 'keys';

/** Whether single keys do anything: some voice programs type where nothing is to be typed, and hands rest on keys. */
export function areKeysOn({ settings }: Pick<Deps, 'settings'>): boolean {
  return settings.get<boolean>(KEPT_AS) !== false;
}

export function turnKeys({ settings }: Pick<Deps, 'settings'>, isOn: boolean): void {
  settings.set(KEPT_AS, isOn);
}
