import type { Day } from '../domain/brand.ts';

export interface KeptDraft {
  readonly values: unknown;
  /** The day it was last typed into. */
  readonly on: Day;
}

/** What is being typed, kept until the form is done, across reloads and crashes. */
export interface Drafts {
  read(form: string): KeptDraft | undefined;
  /** Keeps it; what is too long, or refused by the device, lives in this tab alone until it is cleared. */
  keep(form: string, values: unknown): void;
  clear(form: string): void;
  /** Whether loading this tab again would lose something typed. */
  isHeld(): boolean;
  /** Whether any kept form names this, such as a picture. */
  names(text: string): boolean;
}

/** Characters of one form, so that a long list does not take the room from all others: browsers give some five million. */
const LONG = 500_000;

/** localStorage, since a draft has to be safe before the key stroke is over; in memory where that is denied. */
export function openDrafts(studio: string, today: () => Day): Drafts {
  const prefix = `mouldkeep-draft:${studio}:`;
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
  const clear = (form: string) => {
    storage?.removeItem(prefix + form);
    inMemory.delete(form);
  };
  const isStored = (form: string, text: string) => {
    if (!storage || text.length > LONG) return false;
    try {
      storage.setItem(prefix + form, text);
      return true;
    } catch {
      return false;
    }
  };
  return {
    read(form) {
      const text = inMemory.get(form) ?? storage?.getItem(prefix + form);
      try {
        return text ? (JSON.parse(text) as KeptDraft) : undefined;
      } catch {
        return undefined;
      }
    },
    keep(form, values) {
      const text = JSON.stringify({ values, on: today() } satisfies KeptDraft);
      if (isStored(form, text)) {
        inMemory.delete(form);
        return;
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
