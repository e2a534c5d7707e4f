import { arePassed, sayBroken, showFirst } from './ui/doors.ts';
import { afterPaint } from './ui/turns.ts';

/** ms after which a browser that does not say what it keeps is not waited for: Safari's has been known to fall silent. */
const PATIENCE = 400;

let isOpened = false;
function openApp(): void {
  if (isOpened) return;
  isOpened = true;
  import('./main.tsx').catch(sayBroken);
  // Fetched beside it; it is main.tsx that needs it, and says when it does not come.
  import('./ui/stage.tsx').catch(() => undefined);
}

/** Whether the app was certainly never opened here. A page that the service worker answered for was, and need not ask. */
async function isFirstOpening(): Promise<boolean> {
  const { search, hash } = window.location;
  if (navigator.serviceWorker?.controller || new URLSearchParams(search).has('demo') || arePassed(hash.split(/[/?]/)[1])) return false;
  return (await indexedDB.databases()).every(({ name }) => name !== 'mouldkeep');
}

/** Whoever has a studio gets the app at once; anybody else the doors first, which need none of it. */
const patience = setTimeout(openApp, PATIENCE);
isFirstOpening().then(
  (isFirst) => {
    clearTimeout(patience);
    if (!isFirst) return openApp();
    showFirst();
    // A frame after the one that shows the doors: what is fetched sooner holds them up.
    return afterPaint(() => afterPaint(openApp));
  },
  openApp, // Nothing can be kept here; the app says so.
);
