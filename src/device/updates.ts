import { Workbox } from 'workbox-window';
import { go } from '../../sw/messages.ts';

/** How long (ms) a page waits to hear that the new version has taken over; iOS may never say so. */
const PATIENCE = 3000;
/** An installed app can stay open for weeks, so it looks for a new version when it comes into view, at most this often (ms). */
const LOOK_AGAIN_AFTER = 60 * 60 * 1000;

/** A newer version is `ready` to be taken, or was `taken` in another tab while this one held something that is kept nowhere else. */
export type Newer = 'none' | 'ready' | 'taken';

/** A newer version of the app: whether there is one, and taking it. */
export interface Updates {
  newer(): Newer;
  /** Calls back when that changes. Returns how to stop listening. */
  onNewer(heard: () => void): () => void;
  /** Lets the waiting version take over; then every open tab reloads that holds nothing back. */
  take(): void;
}

/**
 * Registers the service worker, which keeps the app for offline use. A newer version waits until somebody takes it, in this tab or another;
 * then every tab reloads. What has been typed is safe: drafts are kept at every key stroke, and a tab that holds what could not be kept is
 * left as it is.
 */
export function watchUpdates(isHeld: () => boolean, whenIdle: (job: () => void) => void): Updates {
  const listeners = new Set<() => void>();
  let newer: Newer = 'none';
  let isOwn = false;
  const become = (next: Newer) => {
    newer = next;
    for (const heard of listeners) heard();
  };
  const registered = register({
    whenIdle,
    onWaiting: () => become('ready'),
    onTaken: () => {
      if (isOwn || !isHeld()) location.reload();
      else become('taken');
    },
  });
  return {
    newer: () => newer,
    onNewer: (heard) => {
      listeners.add(heard);
      return () => {
        listeners.delete(heard);
      };
    },
    take: () => {
      if (newer === 'taken') return location.reload();
      isOwn = true;
      void registered.then((registration) => registration?.waiting?.postMessage(go));
      setTimeout(() => location.reload(), PATIENCE);
    },
  };
}

interface Heard {
  readonly whenIdle: (job: () => void) => void;
  readonly onWaiting: () => void;
  readonly onTaken: () => void;
}

/** Nothing where there are no service workers, or they are denied (a private window): the app then works as long as it is open. */
async function register({ whenIdle, onWaiting, onTaken }: Heard): Promise<ServiceWorkerRegistration | undefined> {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return undefined;
  try {
    const before = await navigator.serviceWorker.getRegistration();
    let isFirst = !before?.active;
    navigator.serviceWorker.addEventListener('controllerchange', () => {
      // On the first visit the worker takes charge of a page of its own version: nothing to reload for.
      if (!isFirst) onTaken();
      isFirst = false;
    });
    // The worker fetches everything there is; the first screen goes first.
    await new Promise<void>(whenIdle);
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
