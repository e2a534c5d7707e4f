/** Chromium's own event, not yet in the standard library's types. */
interface InstallPrompt extends Event {
  prompt(): Promise<unknown>;
}

export interface Install {
  /** Whether the app runs from the home screen already. */
  isInstalled(): boolean;
  /** Calls back whenever the browser becomes ready, or stops being ready, to ask. Returns how to stop listening. */
  onChange(heard: (canAsk: boolean) => void): () => void;
  canAsk(): boolean;
  /** Shows the browser's own question. */
  ask(): Promise<void>;
}

/** Keeps the browser's offer to install the app until the user wants it. Safari and Firefox never make one: tell people of the share menu there. */
export function watchInstall(): Install {
  const listeners = new Set<(canAsk: boolean) => void>();
  let offer: InstallPrompt | undefined;
  const set = (next: InstallPrompt | undefined) => {
    offer = next;
    for (const heard of listeners) heard(next !== undefined);
  };
  window.addEventListener('beforeinstallprompt', (event) => {
    event.preventDefault();
    set(event as InstallPrompt);
  });
  window.addEventListener('appinstalled', () => set(undefined));
  return {
    isInstalled: () => window.matchMedia('(display-mode: standalone)').matches,
    onChange: (heard) => {
      listeners.add(heard);
      return () => {
        listeners.delete(heard);
      };
    },
    canAsk: () => offer !== undefined,
    ask: async () => {
      const asked = offer;
      set(undefined);
      await asked?.prompt();
    },
  };
}
