import { cleanupOutdatedCaches, createHandlerBoundToURL, precacheAndRoute } from 'workbox-precaching';
import { NavigationRoute, registerRoute } from 'workbox-routing';
import { rootAddress } from './address.ts';

export interface Precached {
  readonly url: string;
  readonly revision: string | null;
}

/** Every file of this version is fetched once, when it installs, and answered from the device from then on. Nothing else is cached. */
export function keepEverything(files: readonly Precached[]): void {
  precacheAndRoute([...files]);
  cleanupOutdatedCaches();
}

/** Any page address inside the app opens the app; below the scope's root it is sent there first, because the app's addresses are relative. */
export function answerNavigation(scope: string): void {
  const shell = createHandlerBoundToURL('index.html');
  registerRoute(
    new NavigationRoute(async (options) => {
      const elsewhere = rootAddress(options.url, scope);
      return elsewhere ? Response.redirect(elsewhere) : shell(options);
    }),
  );
}
