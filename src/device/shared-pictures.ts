import { REFUSALS, type Refusal, SHARED_CACHE, SHARED_MAX, SHARED_MAX_MB, SHARED_PATH } from '../../sw/messages.ts';
import { sayCount } from '../domain/measure-words.ts';
import { type Problem, problem } from '../domain/problem.ts';

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
export async function sharedPictures(): Promise<readonly SharedPicture[] | Problem> {
  try {
    const cache = await opened();
    const pictures: SharedPicture[] = [];
    for (const address of await addresses(cache)) {
      const blob = await (await cache?.match(address))?.blob();
      if (blob) pictures.push({ address, blob });
    }
    return pictures;
  } catch {
    return problem(
      'This device does not give out the shared pictures just now.',
      'They were left where they are. Close Mouldkeep and open it again.',
    );
  }
}

const WHY: Readonly<Record<Refusal, (count: number) => string>> = {
  kind: (count) => (count === 1 ? '1 file is no picture.' : `${count} files are no pictures.`),
  empty: (count) => `${sayCount(count, 'file')} ${count === 1 ? 'is' : 'are'} empty.`,
  large: (count) => `${sayCount(count, 'picture')} ${count === 1 ? 'is' : 'are'} larger than ${SHARED_MAX_MB} MB.`,
  many: (count) => `${sayCount(count, 'picture')} ${count === 1 ? 'is' : 'are'} too many: ${SHARED_MAX} can be taken at once.`,
  room: (count) => `There is no room on this device for ${sayCount(count, 'picture')}.`,
  unread: () => 'What was shared could not be read.',
  none: () => 'No picture came with what was shared.',
};

/** What the service worker could not take of what was shared, as it told the screen in its address; nothing when all was taken. */
export function refusedShares(told: URLSearchParams): Problem | undefined {
  const countOf = (name: string) => (/^\d{1,4}$/.test(told.get(name) ?? '') ? Number(told.get(name)) : 0);
  const refused = REFUSALS.filter((why) => countOf(why) > 0);
  if (refused.length === 0) return undefined;
  const kept = countOf('kept');
  const left = refused.includes('none') ? '' : 'What was not taken is still where it was shared from. ';
  return problem(
    refused.map((why) => WHY[why](countOf(why))).join(' '),
    `${left}${kept > 0 ? `${sayCount(kept, 'picture was', 'pictures were')} taken.` : 'Nothing was changed.'}`,
  );
}

/** Forgets one, once it is kept with a thing or not wanted. */
export async function dropShared({ address }: SharedPicture): Promise<void> {
  await (await opened())?.delete(address);
}
