import { appendFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

function databaseFolders(profile: string): readonly string[] {
  const all = join(profile, 'Default/IndexedDB');
  return readdirSync(all)
    .filter((each) => each.endsWith('.indexeddb.leveldb'))
    .map((name) => join(all, name));
}

/** Damages the list of its database's own files in a closed profile, as a crash in the midst of writing it can: Chromium throws such a database away. */
export function damageDatabase(profile: string): void {
  for (const dir of databaseFolders(profile)) {
    for (const manifest of readdirSync(dir).filter((each) => each.startsWith('MANIFEST')))
      writeFileSync(join(dir, manifest), 'torn'.repeat(400));
  }
}

/** A checksum, a length of 79 and the kind of a whole record, as LevelDB writes them before the record itself. */
const HEADER = Buffer.from([1, 2, 3, 4, 79, 0, 1]);

/**
 * Ends its logs as a kill between a record's header and the record does, and gives their paths. That by itself loses nothing: the record had not
 * been told as written.
 */
export function tearLog(profile: string): readonly string[] {
  const logs = databaseFolders(profile).flatMap((dir) =>
    readdirSync(dir)
      .filter((each) => each.endsWith('.log'))
      .map((name) => join(dir, name)),
  );
  for (const log of logs) appendFileSync(log, HEADER);
  return logs;
}
