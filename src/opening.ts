import { arePassed, sayBroken, showDoors } from './ui/doors.ts';
import { afterPaint } from './ui/turns.ts';

/** ms after which a browser that does not say what it keeps is not waited for: Safari's has been known to fall silent. */
const PATIENCE = 400;

function openApp(): void {
  import('./main.tsx').catch(sayBroken);
}

/** Whether the app was certainly never opened here. A page that the service worker answered for was, and need not ask. */
async function isFirstOpening(): Promise<boolean> {
  const { search, hash } = window.location;
  if (navigator.serviceWorker?.controller || new URLSearchParams(search).has('demo') || arePassed(hash.split(/[/?]/)[1])) return false;
  const isNew = indexedDB.databases().then((all) => all.every(({ name }) => name !== 'mouldkeep'));
  return Promise.race([isNew, new Promise<false>((resolve) => setTimeout(resolve, PATIENCE, false))]);
}

/** Whoever has a studio gets the app at once; anybody else the doors first, which need none of it. */
isFirstOpening().then(
  (isFirst) => {
    if (!isFirst) return openApp();
    showDoors();
    // A frame after the one that shows the doors: what is fetched sooner holds them up.
    return afterPaint(() => afterPaint(openApp));
  },
  openApp, // Nothing can be kept here; the app says so.
);
