import type { Page } from 'playwright-core';

/** What this device keeps under the name of a setting: it is written a moment after it holds, and a reload in between forgets it. */
export function keptSetting(page: Page, name: string): Promise<unknown> {
  return page.evaluate(
    (key) =>
      new Promise((resolve, reject) => {
        const opening = indexedDB.open('mouldkeep-device');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const asked = opening.result.transaction('settings').objectStore('settings').get(key);
          asked.onsuccess = () => {
            opening.result.close();
            resolve(asked.result);
          };
        };
      }),
    name,
  );
}
