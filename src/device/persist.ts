/** How this browser keeps data: unknown figures are absent. */
export interface Keeping {
  readonly isPersistent?: boolean;
  readonly usedBytes?: number;
  readonly quotaBytes?: number;
}

/** Whether the browser has promised not to clear the shelves by itself, and how full its storage is, in bytes. */
export async function keeping(): Promise<Keeping> {
  const storage = storageManager();
  const [isPersistent, estimate] = await Promise.all([known(() => storage?.persisted?.()), known(() => storage?.estimate?.())]);
  return {
    ...(isPersistent === undefined ? {} : { isPersistent }),
    ...(estimate?.usage === undefined ? {} : { usedBytes: estimate.usage }),
    ...(estimate?.quota === undefined ? {} : { quotaBytes: estimate.quota }),
  };
}

/** Asks the browser to keep the shelves until the user clears them. False also where it cannot be asked. */
export async function askPersist(): Promise<boolean> {
  return (await known(() => storageManager()?.persist?.())) ?? false;
}

/** Absent outside a secure context, and in parts in older browsers. */
function storageManager(): Partial<StorageManager> | undefined {
  return navigator.storage;
}

async function known<T>(ask: () => Promise<T> | undefined): Promise<T | undefined> {
  try {
    return await ask();
  } catch {
    return undefined;
  }
}
