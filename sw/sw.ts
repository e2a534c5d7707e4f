import { parsePageMessage } from './messages.ts';
import { answerNavigation, keepEverything, type Precached } from './policy.ts';
import { takeShares } from './shared-pictures.ts';

declare const self: ServiceWorkerGlobalScope & { readonly __PRECACHE: readonly Precached[]; readonly __APP: readonly string[] };

answerNavigation(self.registration.scope, self.__APP);
keepEverything(self.__PRECACHE);
takeShares(self.registration.scope);

self.addEventListener('activate', (event) => {
  // The first visit is offline-ready without a reload, and after an update every tab hears that it changed.
  event.waitUntil(self.clients.claim());
});

self.addEventListener('message', (event) => {
  if (parsePageMessage(event.data)) event.waitUntil(self.skipWaiting());
});
