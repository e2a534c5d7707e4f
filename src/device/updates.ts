import { Workbox } from 'workbox-window';
import { go } from '../../sw/messages.ts';

/** How long (ms) a page waits to hear that the new version has taken over; iOS may never say so. */
const PATIENCE = 3000;
/** An installed app can stay open for weeks, so it looks for a new version when it comes into view, at most this often (ms). */
const LOOK_AGAIN_AFTER = 60 * 60 * 1000;

/** A newer version of the app: whether one waits, and taking it. */
export interface Updates {
  isWaiting(): boolean;
  /** Calls back once a newer version is ready and waits. Returns how to stop listening. */
  onWaiting(heard: () => void): () => void;
  /** Lets the waiting version take over; then every open tab reloads. */
  take(): void;
}

/**
 * Registers the service worker, which keeps the app for offline use. A newer version waits until somebody takes it, in this tab or another;
 * then every tab reloads. What has been typed is safe: drafts are kept at every key stroke.
 */
export function watchUpdates(): Updates {
  const listeners = new Set<() => void>();
  let waiting = false;
  const registered = register(() => {
    waiting = true;
    for (const heard of listeners) heard();
  });
  return {
    isWaiting: () => waiting,
    onWaiting: (heard) => {
      listeners.add(heard);
      return () => {
        listeners.delete(heard);
      };
    },
    take: () => {
      void registered.then((registration) => registration?.waiting?.postMessage(go));
      setTimeout(() => location.reload(), PATIENCE);
    },
  };
}

/** Nothing where there are no service workers, or they are denied (a private window): the app then works as long as it is open. */
async function register(onWaiting: () => void): Promise<ServiceWorkerRegistration | undefined> {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return undefined;
  try {
    const before = await navigator.serviceWorker.getRegistration();
    let isFirst = !before?.active;
    navigator.serviceWorker.addEventListener('controllerchange', () => {
      // On the first visit the worker takes charge of a page of its own version: nothing to reload for.
      if (!isFirst) location.reload();
      isFirst = false;
    });
    const workbox = new Workbox('./sw.js');
    workbox.addEventListener('waiting', onWaiting);
    const registration = await workbox.register({ immediate: true });
    if (registration) lookNowAndThen(registration);
    return registration;
  } catch {
    return undefined;
  }
}

function lookNowAndThen(registration: ServiceWorkerRegistration): void {
  let looked = performance.now();
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState !== 'visible' || performance.now() - looked < LOOK_AGAIN_AFTER) return;
    looked = performance.now();
    registration.update().catch(() => undefined);
  });
}
