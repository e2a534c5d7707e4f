import { SHARED_CACHE, SHARED_PATH } from '../../sw/messages.ts';

/** A picture another app shared, which waits until somebody says what it is of. */
export interface SharedPicture {
  readonly address: string;
  readonly blob: Blob;
}

/** Absent on an insecure page; denied in some private windows. */
async function opened(): Promise<Cache | undefined> {
  try {
    return await globalThis.caches?.open(SHARED_CACHE);
  } catch {
    return undefined;
  }
}

async function addresses(cache: Cache | undefined): Promise<readonly string[]> {
  const requests = (await cache?.keys()) ?? [];
  return requests
    .map(({ url }) => url)
    .filter((url) => url.includes(SHARED_PATH))
    .sort();
}

/** How many wait. */
export async function countShared(): Promise<number> {
  return (await addresses(await opened())).length;
}

/** Those that wait, oldest first. */
export async function sharedPictures(): Promise<readonly SharedPicture[]> {
  const cache = await opened();
  const pictures: SharedPicture[] = [];
  for (const address of await addresses(cache)) {
    const blob = await (await cache?.match(address))?.blob();
    if (blob) pictures.push({ address, blob });
  }
  return pictures;
}

/** Forgets one, once it is kept with a thing or not wanted. */
export async function dropShared({ address }: SharedPicture): Promise<void> {
  await (await opened())?.delete(address);
}
