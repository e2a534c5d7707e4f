import { registerRoute } from 'workbox-routing';
import { type Refusal, SHARED_CACHE, SHARED_MAX, SHARED_MAX_MB, SHARED_PATH } from './messages.ts';

/** Where the manifest tells other apps to send pictures, below the scope. */
const TARGET = 'share';

/** Takes pictures that another app shares, with or without a network; a server never sees them. */
export function takeShares(scope: string): void {
  const target = new URL(TARGET, scope).pathname;
  registerRoute(
    ({ url }) => url.pathname === target,
    ({ request }) => keepShared(request, scope, Date.now()),
    'POST',
  );
}

/** Lays the shared pictures aside and opens the screen that asks what they are of; it is told what could not be kept, and why. */
export async function keepShared(request: Request, scope: string, now: number): Promise<Response> {
  let files: readonly File[];
  try {
    files = [...(await request.formData()).values()].filter((value) => value instanceof File);
  } catch {
    return toScreen(scope, 0, ['unread']);
  }
  if (files.length === 0) return toScreen(scope, 0, ['none']);
  const refused: Refusal[] = [];
  const pictures: File[] = [];
  for (const file of files) {
    const why = whyNot(file) ?? (pictures.length < SHARED_MAX ? undefined : 'many');
    if (why) refused.push(why);
    else pictures.push(file);
  }
  let kept = 0;
  try {
    const cache = await caches.open(SHARED_CACHE);
    for (const [i, picture] of pictures.entries()) {
      const address = new URL(`${SHARED_PATH}${now}-${String(i).padStart(2, '0')}`, scope);
      await cache.put(address.href, new Response(picture, { headers: { 'content-type': picture.type } }));
      kept += 1;
    }
  } catch {
    // Those kept so far are shown, and the others are told of.
    refused.push(...pictures.slice(kept).map((): Refusal => 'room'));
  }
  return toScreen(scope, kept, refused);
}

function whyNot({ type, size }: File): Refusal | undefined {
  if (!type.startsWith('image/')) return 'kind';
  if (size === 0) return 'empty';
  return size > SHARED_MAX_MB * 1024 * 1024 ? 'large' : undefined;
}

/** 303: the picture is sent once, going on or back fetches a page. */
function toScreen(scope: string, kept: number, refused: readonly Refusal[]): Response {
  const told = new URLSearchParams();
  for (const why of new Set(refused)) told.set(why, String(refused.filter((each) => each === why).length));
  if (refused.length > 0) told.set('kept', String(kept));
  return Response.redirect(`${scope}#/shared${refused.length > 0 ? `?${told}` : ''}`, 303);
}
