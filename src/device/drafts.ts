/** What is being typed, kept until the form is done, across reloads and crashes. */
export interface Drafts {
  read(form: string): unknown;
  keep(form: string, values: unknown): void;
  clear(form: string): void;
  /** Whether any form holds something unsaved. */
  isAny(): boolean;
}

/** localStorage, since a draft has to be safe before the key stroke is over; in memory where that is denied. */
export function openDrafts(studio: string): Drafts {
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
  const keys = () => (storage ? Object.keys(storage) : [...inMemory.keys()]).filter((key) => key.startsWith(prefix));
  return {
    read(form) {
      const text = storage ? storage.getItem(prefix + form) : inMemory.get(prefix + form);
      try {
        return text ? (JSON.parse(text) as unknown) : undefined;
      } catch {
        return undefined;
      }
    },
    keep(form, values) {
      const text = JSON.stringify(values);
      try {
        storage?.setItem(prefix + form, text);
      } catch {
        // Full: the form still holds it.
      }
      if (!storage) inMemory.set(prefix + form, text);
    },
    clear(form) {
      storage?.removeItem(prefix + form);
      inMemory.delete(prefix + form);
    },
    isAny: () => keys().length > 0,
  };
}
