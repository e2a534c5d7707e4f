import { createStore, entries, set, type UseStore } from 'idb-keyval';

/** Settings of this device alone; they are not part of the journal. */
export interface DeviceSettings {
  get<T>(key: string): T | undefined;
  set(key: string, value: unknown): void;
}

function remembered(store: UseStore | null, values: Map<string, unknown>): DeviceSettings {
  return {
    get: <T>(key: string) => values.get(key) as T | undefined,
    set(key, value) {
      values.set(key, value);
      // A setting that could not be kept holds until the tab closes; it is not worth an error in the way of work.
      if (store) void set(key, value, store).catch(() => undefined);
    },
  };
}

/** Reads all settings once; where storage is denied they last as long as the tab. */
export async function openSettings(): Promise<DeviceSettings> {
  try {
    const store = createStore('mouldkeep-device', 'settings');
    return remembered(store, new Map((await entries(store)).map(([key, value]) => [String(key), value])));
  } catch {
    return remembered(null, new Map());
  }
}
