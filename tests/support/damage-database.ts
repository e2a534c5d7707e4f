import { readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** Damages the list of its database's own files in a closed profile, as a crash in the midst of writing it can: Chromium throws such a database away. */
export function damageDatabase(profile: string): void {
  const all = join(profile, 'Default/IndexedDB');
  for (const name of readdirSync(all).filter((each) => each.endsWith('.indexeddb.leveldb'))) {
    const dir = join(all, name);
    for (const manifest of readdirSync(dir).filter((each) => each.startsWith('MANIFEST')))
      writeFileSync(join(dir, manifest), 'torn'.repeat(400));
  }
}
