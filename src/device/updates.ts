import { Workbox } from 'workbox-window';
import { go } from '../../sw/messages.ts';

/** How long a page waits to hear that the new version has taken over; iOS may never say so. */
const patience = 3000;
/** An installed app can stay open for weeks, so it looks for a new version when it comes into view, at most this often. */
const lookAgainAfter = 60 * 60 * 1000;

export interface Updates {
  /** Calls back once a new version is ready and waits. Returns how to stop listening. */
  readonly onWaiting: (listener: () => void) => () => void;
  /** Lets the waiting version take over; then every open tab reloads. */
  readonly takeUpdate: () => void;
}

/**
 * Registers the service worker, which keeps the app for offline use. A new version waits until `takeUpdate`, in this tab or another;
 * each tab then awaits `beforeReload` (to save what has been typed) and reloads.
 */
export async function watchUpdates(beforeReload: () => Promise<void>): Promise<Updates | undefined> {
  if (!('serviceWorker' in navigator)) return undefined;
  const listeners = new Set<() => void>();
  let waiting = false;
  let reloading = false;

  const reload = async () => {
    if (reloading) return;
    reloading = true;
    await beforeReload().catch(() => undefined);
    location.reload();
  };

  const before = await navigator.serviceWorker.getRegistration();
  let firstVisit = !before?.active;
  navigator.serviceWorker.addEventListener('controllerchange', () => {
    // On the first visit the worker takes over a page of its own version.
    if (!firstVisit) void reload();
    firstVisit = false;
  });

  const workbox = new Workbox('./sw.js');
  workbox.addEventListener('waiting', () => {
    waiting = true;
    for (const listener of listeners) listener();
  });
  const registration = await workbox.register({ immediate: true }).catch(() => undefined);
  if (!registration) return undefined;
  lookNowAndThen(registration);

  return {
    onWaiting: (listener) => {
      listeners.add(listener);
      if (waiting) listener();
      return () => listeners.delete(listener);
    },
    takeUpdate: () => {
      registration.waiting?.postMessage(go);
      setTimeout(reload, patience);
    },
  };
}

function lookNowAndThen(registration: ServiceWorkerRegistration): void {
  let looked = performance.now();
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState !== 'visible' || performance.now() - looked < lookAgainAfter) return;
    looked = performance.now();
    registration.update().catch(() => undefined);
  });
}
