import { registerRoute } from 'workbox-routing';
import { SHARED_CACHE, SHARED_PATH } from './messages.ts';

/** Where the manifest tells other apps to send pictures, below the scope. */
const TARGET = 'share';
/** More at once is a slip of the thumb in a gallery. */
const PICTURES_MAX = 20;
const BYTES_MAX = 60 * 1024 * 1024;

/** Takes pictures that another app shares, with or without a network; a server never sees them. */
export function takeShares(scope: string): void {
  const target = new URL(TARGET, scope).pathname;
  registerRoute(
    ({ url }) => url.pathname === target,
    ({ request }) => keepShared(request, scope, Date.now()),
    'POST',
  );
}

/** Lays the shared pictures aside and opens the screen that asks what they are of; it is told how many could not be kept. */
export async function keepShared(request: Request, scope: string, now: number): Promise<Response> {
  let files: readonly File[];
  try {
    files = [...(await request.formData()).values()].filter((value) => value instanceof File);
  } catch {
    return toScreen(scope, 1);
  }
  const pictures = files.filter(({ type, size }) => type.startsWith('image/') && size > 0 && size <= BYTES_MAX).slice(0, PICTURES_MAX);
  let kept = 0;
  try {
    const cache = await caches.open(SHARED_CACHE);
    for (const [i, picture] of pictures.entries()) {
      const address = new URL(`${SHARED_PATH}${now}-${String(i).padStart(2, '0')}`, scope);
      await cache.put(address.href, new Response(picture, { headers: { 'content-type': picture.type } }));
      kept += 1;
    }
  } catch {
    // No room left: those kept so far are shown, and the others are told of.
  }
  return toScreen(scope, files.length - kept);
}

/** 303: the picture is sent once, going on or back fetches a page. */
function toScreen(scope: string, refused: number): Response {
  return Response.redirect(`${scope}#/shared${refused > 0 ? `?refused=${refused}` : ''}`, 303);
}
