/** Thumbnails that are ready to be drawn, the last used last: as many as some screens of a list show. */
const KEPT = 400;
const urls = new Map<string, string>();

/** The address of a thumbnail that was shown lately, so that a list that is opened again shows it at once. */
export function thumbUrl(sha: string): string | undefined {
  const url = urls.get(sha);
  if (url !== undefined) {
    urls.delete(sha);
    urls.set(sha, url);
  }
  return url;
}

/** Keeps a thumbnail at hand; the one not used for longest gives way. */
export function keepThumb(sha: string, thumb: Blob): string {
  const known = thumbUrl(sha);
  if (known !== undefined) return known;
  const url = URL.createObjectURL(thumb);
  urls.set(sha, url);
  for (const [oldest, unused] of urls) {
    if (urls.size <= KEPT) break;
    urls.delete(oldest);
    URL.revokeObjectURL(unused);
  }
  return url;
}

const waiting = new WeakMap<Element, () => void>();
let watch: IntersectionObserver | undefined;

/** Calls once an element is within some two screens of being seen. Gives how to stop waiting for that. */
export function whenNear(element: Element, near: () => void): () => void {
  if (typeof IntersectionObserver === 'undefined') {
    near();
    return () => undefined;
  }
  watch ??= new IntersectionObserver(
    (changes) => {
      for (const { target, isIntersecting } of changes) {
        if (!isIntersecting) continue;
        watch?.unobserve(target);
        waiting.get(target)?.();
      }
    },
    { rootMargin: '1500px' },
  );
  waiting.set(element, near);
  watch.observe(element);
  return () => watch?.unobserve(element);
}
