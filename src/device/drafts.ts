import type { Day } from '../domain/brand.ts';
import { type Problem, problem } from '../domain/problem.ts';
import type { DeviceSettings } from './settings.ts';

export interface KeptDraft {
  readonly values: object;
  /** The day it was last typed into. */
  readonly on: Day;
}

/** What is being typed, kept until the form is done, across reloads, crashes and kills of the browser. */
export interface Drafts {
  /** A Problem when what is kept cannot be read; it then lies there until the form is typed into or done. */
  read(form: string): KeptDraft | Problem | undefined;
  /** Keeps it; what is too long, or refused by the device, lives in this tab alone until it is cleared. */
  keep(form: string, values: object): void;
  clear(form: string): void;
  /** Whether loading this tab again would lose something typed. */
  isHeld(): boolean;
  /** Whether any kept form names this, such as a picture. */
  names(text: string): boolean;
}

/** Characters of one form, so that a long list does not take the room from all others: browsers give some five million. */
const LONG = 500_000;

/** ms after the last key in which all drafts are copied to where a kill of the browser finds them. */
const COPY_AFTER = 300;
/** ms after a form is done. */
const COPY_DONE_AFTER = 120;

/** All drafts of a studio as they stood after so many changes, by their keys in localStorage. */
interface Copy {
  readonly changes: number;
  readonly drafts: readonly (readonly [key: string, text: string])[];
}

/** What was kept may be anything: a copy that is none must not stand in the way of opening. */
function copyIn(raw: unknown): Copy | undefined {
  const { changes, drafts } = (raw ?? {}) as Partial<Copy>;
  const isCopy = typeof changes === 'number' && Array.isArray(drafts) && drafts.every((each) => Array.isArray(each) && each.length === 2);
  return isCopy ? { changes, drafts: drafts.map(([key, text]) => [String(key), String(text)]) } : undefined;
}

/**
 * localStorage, since a draft has to be safe before the key stroke is over; in memory where that is denied. Browsers write localStorage to the
 * disk when they please, up to a minute late: a copy lies among the device's settings, and takes its place when the browser ended before that.
 */
export function openDrafts(studio: string, today: () => Day, settings: DeviceSettings): Drafts {
  const prefix = `mouldkeep-draft:${studio}:`;
  /** How often a draft was kept or cleared, by all tabs: whichever of localStorage and its copy has seen more is the newer. */
  const counter = `mouldkeep-drafts:${studio}`;
  const copyName = `drafts:${studio}`;
  const inMemory = new Map<string, string>();
  const storage = (() => {
    try {
      window.localStorage.setItem(`${prefix}try`, '1');
      window.localStorage.removeItem(`${prefix}try`);
      return window.localStorage;
    } catch {
      return null;
    }
  })();
  const stored = () => Object.keys(storage ?? {}).filter((key) => key.startsWith(prefix));
  const changes = () => Number(storage?.getItem(counter) ?? 0);
  const isStored = (key: string, text: string) => {
    if (!storage || text.length > LONG) return false;
    try {
      storage.setItem(key, text);
      return true;
    } catch {
      return false;
    }
  };
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const copy = () =>
    settings.set(copyName, { changes: changes(), drafts: stored().map((key) => [key, storage?.getItem(key) ?? '']) } satisfies Copy);
  const copySoon = (ms: number) => {
    clearTimeout(waiting);
    waiting = setTimeout(copy, ms);
  };
  const changed = (ms: number) => {
    isStored(counter, String(changes() + 1));
    copySoon(ms);
  };
  const clear = (form: string) => {
    inMemory.delete(form);
    if (!storage || storage.getItem(prefix + form) === null) return;
    storage.removeItem(prefix + form);
    // What is done must not come back as half done; but its outcome is to be on the glass first.
    changed(COPY_DONE_AFTER);
  };
  const copied = copyIn(settings.get(copyName));
  if (storage && copied && copied.changes > changes()) {
    for (const key of stored()) storage.removeItem(key);
    for (const [key, text] of copied.drafts) if (!isStored(key, text)) inMemory.set(key.slice(prefix.length), text);
    isStored(counter, String(copied.changes));
  } else if (changes() > (copied?.changes ?? 0)) copySoon(COPY_AFTER);
  return {
    read(form) {
      const text = inMemory.get(form) ?? storage?.getItem(prefix + form);
      return text ? keptIn(text) : undefined;
    },
    keep(form, values) {
      const text = JSON.stringify({ values, on: today() } satisfies KeptDraft);
      if (isStored(prefix + form, text)) {
        inMemory.delete(form);
        return changed(COPY_AFTER);
      }
      // An older state of the form would come back as if it were the last.
      clear(form);
      inMemory.set(form, text);
    },
    clear,
    isHeld: () => inMemory.size > 0,
    names: (text) => [...inMemory.values(), ...stored().map((key) => storage?.getItem(key) ?? '')].some((draft) => draft.includes(text)),
  };
}

function keptIn(text: string): KeptDraft | Problem {
  try {
    const kept: unknown = JSON.parse(text);
    if (isObject(kept)) {
      const { values, on } = kept;
      if (isObject(values) && typeof on === 'string') return { values, on: on as Day };
    }
  } catch {
    // Told of below, like what is no draft.
  }
  return problem('What was left half filled in here could not be read.', 'Nothing on your shelves was changed; it begins afresh.');
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
