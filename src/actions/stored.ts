import type { Deps } from './deps.ts';

/** What this studio takes up on this device, by kind; bytes as they lie in the database, before the browser's own overhead. */
export interface Stored {
  readonly entries: { readonly count: number; readonly bytes: number };
  readonly pictures: { readonly count: number; readonly bytes: number; readonly absent: number };
}

/** Goes through everything once, a page and a picture at a time. Rejects when the storage cannot be read. */
export async function measureStored({ keeper }: Pick<Deps, 'keeper'>): Promise<Stored> {
  const copy = await (await keeper.vault()).copy();
  let entryBytes = 0;
  for await (const page of copy.pages()) entryBytes += new TextEncoder().encode(JSON.stringify(page)).length;
  let pictureBytes = 0;
  for (const sha of copy.pictures) {
    const picture = await copy.picture(sha);
    pictureBytes += (picture?.bytes.byteLength ?? 0) + (picture?.thumb.bytes.byteLength ?? 0);
  }
  return {
    entries: { count: copy.entries, bytes: entryBytes },
    pictures: { count: copy.pictures.length, bytes: pictureBytes, absent: copy.absent },
  };
}
