import type { Day } from '../domain/brand.ts';
import { type Problem, problem } from '../domain/problem.ts';

export interface KeptDraft {
  readonly values: object;
  /** The day it was last typed into. */
  readonly on: Day;
}

/** What is being typed, kept until the form is done, across reloads and crashes. */
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
      return text ? keptIn(text) : undefined;
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
