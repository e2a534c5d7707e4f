import { Dexie } from 'dexie';

/**
 * Has Chromium begin a new log for the databases of this address, by making an empty one beside them and deleting it again: deleting compacts, and
 * that closes the log. It otherwise writes on in the log that it found, also behind a record that a kill cut short, and then takes the whole for
 * damaged at the opening after that, and throws all away (google/leveldb, issue 1287). Does no harm in other browsers, and rejects never.
 */
export async function beginFreshLog(name: string): Promise<void> {
  const brief = new Dexie(`${name}-brief`);
  try {
    brief.version(1).stores({});
    await brief.open();
    await brief.delete();
  } catch {
    brief.close(); // Then it is as it was before: the second copy is there for that.
  }
}
