import type { Page } from 'playwright-core';
import type { Entry } from '../../src/domain/entry.ts';

/** Writes one action straight into the studio's own database, as an older start would have left it, and opens the app on it. */
export async function layIn(page: Page, entries: readonly Entry[]): Promise<void> {
  const row = { id: entries[0]?.id, text: JSON.stringify(entries) };
  await putRow(page, 'tail', row);
  await page.reload();
}

/** Puts one row into the studio's own database with nothing but IndexedDB, once that is there: the doors stand before the app has made it. */
export async function putRow(page: Page, store: string, row: object): Promise<void> {
  await page.evaluate(async () => {
    const isMade = async () => (await indexedDB.databases()).some(({ name }) => name === 'mouldkeep');
    while (!(await isMade())) await new Promise((resolve) => setTimeout(resolve, 50));
  });
  await addRow(page, store, row);
}

function addRow(page: Page, store: string, row: object): Promise<void> {
  return page.evaluate(
    ({ into, what }) =>
      new Promise<void>((resolve, reject) => {
        const open = indexedDB.open('mouldkeep');
        open.onerror = () => reject(open.error);
        open.onsuccess = () => {
          const writing = open.result.transaction(into, 'readwrite');
          writing.objectStore(into).put(what);
          writing.onerror = () => reject(writing.error);
          writing.oncomplete = () => {
            open.result.close();
            resolve();
          };
        };
      }),
    { into: store, what: row },
  );
}
