import { cleanupOutdatedCaches, createHandlerBoundToURL, matchPrecache, precacheAndRoute } from 'workbox-precaching';
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

/**
 * Any page address inside the app opens the app; below the scope's root it is sent there first, because the app's addresses are relative.
 * Who is answered here was here before, and needs the app at once: the browser is told of its files with the page. Asked for before what
 * `keepEverything` answers, which would give the page alone.
 */
export function answerNavigation(scope: string, app: readonly string[]): void {
  const link = app.map((file) => `<${new URL(file, scope).pathname}>; rel=preload; as=script`).join(', ');
  registerRoute(
    new NavigationRoute(async (options) => {
      const file = await matchPrecache(options.url.href);
      if (file) return file;
      const elsewhere = rootAddress(options.url, scope);
      if (elsewhere) return Response.redirect(elsewhere);
      const { body, headers } = await createHandlerBoundToURL('index.html')(options);
      const told = new Headers(headers);
      told.set('link', link);
      return new Response(body, { headers: told });
    }),
  );
}
