/** The plainest use of IndexedDB, to hold our figures against: no library, one object a row. */

export function done(transaction: IDBTransaction): Promise<void> {
  return new Promise((resolve, reject) => {
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(transaction.error);
  });
}

export function openPlain(name: string, store: string, indexes: readonly string[]): Promise<IDBDatabase> {
  return openPlainTables(name, [store], indexes);
}

export function openPlainTables(name: string, stores: readonly string[], indexes: readonly string[] = []): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(name, 1);
    request.onupgradeneeded = () => {
      for (const store of stores) {
        const made = request.result.createObjectStore(store, { keyPath: 'id' });
        for (const index of indexes) made.createIndex(index, index);
      }
    };
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

export async function addRows(db: IDBDatabase, store: string, rows: readonly object[]): Promise<void> {
  const transaction = db.transaction(store, 'readwrite');
  const into = transaction.objectStore(store);
  for (const row of rows) into.put(row);
  await done(transaction);
}

export function readRows(db: IDBDatabase, store: string): Promise<unknown[]> {
  return new Promise((resolve, reject) => {
    const request = db.transaction(store).objectStore(store).getAll();
    request.onsuccess = () => resolve(request.result as unknown[]);
    request.onerror = () => reject(request.error);
  });
}

/** Adds one row of an entry's size with strict durability. Gives ms. */
export async function oneStrictRow(db: IDBDatabase, store: string, number: number): Promise<number> {
  const began = performance.now();
  const transaction = db.transaction(store, 'readwrite', { durability: 'strict' });
  transaction.objectStore(store).put({ id: `row-${performance.now()}-${number}`, text: 'x'.repeat(220) });
  await done(transaction);
  return performance.now() - began;
}
